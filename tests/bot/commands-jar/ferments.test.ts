import { describe, expect, it } from 'vitest'
import { linesOf } from '../call-typed.ts'
import { jarDesk, numberIn, type StepJson } from './desk.ts'

type Desk = ReturnType<typeof jarDesk>

const STAND_IT_COLD =
  'Stand it in the fridge, under a towel. When it’s cold, loosen the lid away from your face, with glasses on.' +
  ' Don’t seal it again. Don’t bottle it or give it away.'

const keysOf = ({ cautions }: StepJson) => cautions.map(({ key }) => key)

const expectWarned = (json: StepJson): void => {
  expect(json.cautions[0]!.key).toBe('jar_ferments')
  expect(json.cautions[0]!.text).toContain(STAND_IT_COLD)
  expect(json.cautions[0]!.text).toContain('can burst')
}

/** The whole line after the last colon of a sentence. */
const lineIn = (message: string): string => /(\/(?:jar|plan) .+)$/.exec(message.replaceAll('\u00a0', ' '))![1]!

const actionsOf = async (desk: Desk, line: string): Promise<readonly string[]> => {
  const outcome = await desk.run(line)
  if (!outcome.ok) throw new Error(line)
  return linesOf(outcome.reply.actions)
}

/** A jar of 9.7 % vol. */
const watered = async () => {
  const desk = jarDesk()
  await desk.ask('/jar start d of:200 g raspberries spirit:1 l 40%')
  await desk.ask('/jar add d water:3 l already:yes')
  return desk
}

describe('a jar that ferments', () => {
  it('is asked about before it is made so, once, and nothing is recorded until the answer', async () => {
    const desk = jarDesk()
    await desk.ask('/jar start d of:200 g raspberries spirit:1 l 40%')
    const before = await desk.person()
    const { code, message } = await desk.refused('/jar add d water:3 l')
    expect(code).toBe('ambiguous')
    expect(message).toContain('about 10 %')
    expect(await desk.person()).toBe(before)
    const added = await desk.ask(lineIn(message))
    expectWarned(added)
    expect(numberIn(added, 'abvPercent')).toBeCloseTo(9.7, 1)
    // The answer is of the line, not of the jar.
    expect(added.data.events).toMatchObject([{}, { typed: { water: '3 l' } }])
    expect(JSON.stringify(added.data.events)).not.toContain('already')
  })

  it('is asked about again where it comes nearer to it, and not where spirit helps', async () => {
    const desk = await watered()
    expect((await desk.refused('/jar add d of:1 kg raspberries')).code).toBe('ambiguous')
    expect((await desk.refused('/jar add d water:20 l')).code).toBe('ambiguous')
    expectWarned(await desk.ask('/jar add d spirit:100 ml 40%'))
  })

  it('says so in every step, view, tag and list', async () => {
    const desk = await watered()
    for (const line of [
      '/jar shake d',
      '/jar taste d rating:2',
      '/jar later d until:tomorrow',
      '/jar show d',
      '/jar list',
      '/notebook',
      '/calendar',
      '/jar tag d',
      '/jar shake all',
      '/jar undo d',
      '/jar strain d measured:4 l',
      '/jar filter d',
      '/jar sweeten d water:100 ml sugar:400 g',
      '/jar bottle d bottles:8 x 500 ml already:yes',
      '/jar open d',
      '/jar label d already:yes',
    ]) {
      expectWarned(await desk.ask(line))
    }
    expect((await desk.ask('/jar list')).data.jars).toMatchObject([{ dangers: ['ferments'], next: null }])
  })

  it('is not told to rest, to be drunk or to be strained meanwhile', async () => {
    const desk = await watered()
    await desk.ask('/jar strain d measured:4 l')
    await desk.ask('/jar sweeten d water:100 ml sugar:400 g')
    const text = await desk.textOf('/jar bottle d bottles:8 x 500 ml already:yes')
    expect(text).not.toMatch(/ready|rest \d|drink it soon/)
    desk.at('2027-06-01')
    expect(await desk.textOf('/jar list picture:no')).not.toContain('ready to drink')
  })

  it('is not bottled or labelled unless that has happened, and the spirit that is offered puts it right', async () => {
    const desk = await watered()
    await desk.ask('/jar strain d measured:4 l')
    await desk.ask('/jar sweeten d water:100 ml sugar:400 g')
    const before = await desk.person()
    const bottling = await desk.refused('/jar bottle d bottles:8 x 500 ml')
    const label = await desk.refused('/jar label d')
    expect([bottling.code, label.code]).toEqual(['ambiguous', 'ambiguous'])
    expect(await desk.person()).toBe(before)
    const fix = / (\/jar add .+?)\. /.exec(bottling.message.replaceAll('\u00a0', ' '))![1]!
    expect(label.message).toContain(fix)
    expect(await actionsOf(desk, '/jar show d')).toContain(fix)
    const mended = await desk.ask(fix)
    expect(keysOf(mended)).not.toContain('jar_ferments')
    expect(keysOf(mended)).not.toContain('jar_undecided')
    expect(mended.data.dangers).toEqual([])
    await desk.ask('/jar bottle d bottles:8 x 500 ml')
    await desk.ask('/jar label d')
    // The least that does: a tenth less would not.
    const [, amount, unit] = /spirit:([\d.]+) (ml|l)/.exec(fix)!
    const ml = Number(amount) * (unit === 'l' ? 1000 : 1)
    await desk.ask('/jar undo d')
    await desk.ask('/jar undo d')
    const less = await desk.ask(fix.replace(`${amount} ${unit}`, `${Math.round(ml * 0.9)} ml`))
    expect(less.data.dangers).not.toEqual([])
  })

  it('forgets it when the water is taken back', async () => {
    const desk = await watered()
    const undone = await desk.ask('/jar undo d')
    expect(keysOf(undone)).not.toContain('jar_ferments')
    expect(keysOf(await desk.ask('/jar show d'))).not.toContain('jar_ferments')
  })

  it('is asked about by a correction, of what was added and of the start', async () => {
    const desk = jarDesk()
    await desk.ask('/jar start d of:200 g raspberries spirit:1 l 40%')
    await desk.ask('/jar add d water:100 ml')
    for (const line of [
      '/jar correct d water:3 l',
      '/jar correct d spirit:1 l 12%',
      '/jar correct d spirit:100 ml 40%',
    ]) {
      const { code, message } = await desk.refused(line)
      expect([line, code]).toEqual([line, 'ambiguous'])
      expectWarned(await desk.ask(lineIn(message)))
      await desk.ask('/jar undo d')
    }
  })

  it('is recorded with what was read when it was strained', async () => {
    const desk = jarDesk('2028-11-01')
    await desk.ask('/jar start f of:200 g raspberries spirit:1 l 40% when:2 years ago')
    const strained = await desk.ask('/jar strain f measured:900 ml strength:8%')
    expectWarned(strained)
    expect(await desk.textOf('/jar show f')).not.toContain('sweeten tomorrow')
    const syrup = await desk.refused('/syrup jar:f to-strength:5%')
    expect(syrup.message).toContain('can ferment')
  })

  it('says nothing of what is thrown away', async () => {
    const desk = await watered()
    expect(keysOf(await desk.ask('/jar discard d'))).toEqual([])
    expect(keysOf(await desk.ask('/notebook'))).toEqual([])
  })

  it('is not shared, nor sweetened by its syrup', async () => {
    const desk = await watered()
    expect((await desk.refused('/share d')).code).toBe('refused')
  })
})

describe('a jar that may or may not keep', () => {
  it('goes into the fridge, and its own spirit decides it', async () => {
    const desk = jarDesk()
    await desk.ask('/jar start u of:200 g raspberries spirit:1 l 40%')
    const added = await desk.ask('/jar add u water:1.1 l')
    expect(numberIn(added, 'abvPercent')).toBeGreaterThan(16.7)
    expect(numberIn(added, 'abvPercent')).toBeLessThan(18.9)
    expect(added.cautions[0]!.key).toBe('jar_undecided')
    expect(added.cautions[0]!.text).toContain('fridge')
    expect(added.data.dangers).toEqual(['undecided'])
    const [fix] = await actionsOf(desk, '/jar show u')
    expect(fix).toMatch(/^\/jar add u spirit:\d+ ml 40%$/)
    expect((await desk.ask(fix!)).data.dangers).toEqual([])
  })

  it('of 20 % vol and more is nothing to say', async () => {
    const desk = jarDesk()
    await desk.ask('/jar start k of:500 g sloes spirit:700 ml 40% sugar:250 g')
    const shown = await desk.ask('/jar show k')
    expect(shown.cautions).toEqual([])
    expect(await desk.textOf('/jar show k')).not.toMatch(/keep it cold|may spoil/)
  })
})
