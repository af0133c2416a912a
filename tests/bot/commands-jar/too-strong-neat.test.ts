import { describe, expect, it } from 'vitest'
import { jarDesk, LEMON } from './desk.ts'

const UNSWEET = ['/jar strain lemon measured:940 ml strength:86.4%']
const bottledAfter = async (steps: readonly string[], start = LEMON) => {
  const desk = jarDesk('2026-11-01')
  await desk.ask(start)
  desk.at('2026-11-25')
  for (const step of steps) await desk.ask(step)
  const bottle = '/jar bottle lemon bottles:1 x 500 ml'
  return { desk, bottle, said: await desk.ask(bottle) }
}

const isWarned = ({ cautions }: { readonly cautions: readonly { readonly key: string }[] }): boolean =>
  cautions.some(({ key }) => key === 'jar_not_neat')

describe('what is bottled undiluted', () => {
  it('is not to be drunk neat, as bottle, open and show all say every time', async () => {
    const { desk, said } = await bottledAfter(UNSWEET)
    const [caution] = said.cautions.filter(({ key }) => key === 'jar_not_neat')
    expect(caution!.text.replaceAll('\u00a0', ' ')).toMatch(/8[67]\.?\d? %, undiluted/)
    expect(isWarned(await desk.ask('/jar show lemon'))).toBe(true)
    desk.at('2027-02-01')
    for (const line of ['/jar show lemon', '/jar list', '/jar open lemon', '/jar show lemon']) {
      expect(await desk.textOf(line)).not.toMatch(/ready to drink/i)
    }
    expect(isWarned(await desk.ask('/jar open lemon'))).toBe(true)
  })

  it('has rested when its day has come, in the list and of one jar', async () => {
    const { desk, bottle } = await bottledAfter(UNSWEET)
    expect(await desk.textOf(bottle.replace('500', '250'))).toMatch(/Next +rested on 25 Dec/)
    desk.at('2027-02-01')
    expect(await desk.textOf('/jar list')).toMatch(/Rested, but don’t drink it neat: lemon\./)
    expect(await desk.textOf('/jar show lemon')).toMatch(/^Lemon has rested\. Dilute it before you drink it\./)
  })

  it('is warned of no more once it is empty', async () => {
    const { desk } = await bottledAfter(UNSWEET)
    expect(isWarned(await desk.ask('/jar empty lemon'))).toBe(false)
    expect(isWarned(await desk.ask('/jar show lemon'))).toBe(false)
  })

  it('says that it was diluted where it was, and nothing up to 60 % vol', async () => {
    const little = await bottledAfter([...UNSWEET, '/jar sweeten lemon water:200 ml'])
    const [caution] = little.said.cautions.filter(({ key }) => key === 'jar_not_neat')
    expect(caution!.text).not.toContain('undiluted')
    const much = await bottledAfter([...UNSWEET, '/jar sweeten lemon water:500 ml'])
    expect(isWarned(much.said)).toBe(false)
    much.desk.at('2027-02-01')
    expect(await much.desk.textOf('/jar list')).toMatch(/Ready to drink: lemon\./)
  })

  it('is no matter while it steeps, or before it is bottled', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    expect(isWarned(await desk.ask('/jar show lemon'))).toBe(false)
    await desk.ask(UNSWEET[0]!)
    expect(isWarned(await desk.ask('/jar show lemon'))).toBe(false)
  })
})
