import { describe, expect, it } from 'vitest'
import { parseShare, writeShare } from '../../../core/quantity/read/parse-share.ts'
import { jarMlFor } from '../../../core/recipe/steep.ts'
import { jarDesk, LEMON, numberIn } from './desk.ts'

const volumeIn = async (desk: ReturnType<typeof jarDesk>, name: string): Promise<number> =>
  numberIn(await desk.ask(`/jar show ${name}`), 'volumeMl')

describe('a part of a jar', () => {
  it.each([
    ['half', 1 / 2],
    ['a third', 1 / 3],
    ['two thirds of it', 2 / 3],
    ['25 %', 1 / 4],
    ['1/4', 1 / 4],
    ['metà', 1 / 2],
  ])('%s is poured off', async (text, share) => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    const before = await volumeIn(desk, 'lemon')
    await desk.ask(`/jar split lemon amount:${text} into:two`)
    expect((await volumeIn(desk, 'two')) / before).toBeCloseTo(share, 6)
    expect((await volumeIn(desk, 'lemon')) / before).toBeCloseTo(1 - share, 6)
  })

  it('goes into another jar, too', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    await desk.ask('/jar start orange of:6 oranges spirit:1 l 60%')
    desk.at('2026-11-20')
    for (const name of ['lemon', 'orange']) await desk.ask(`/jar strain ${name} measured:900 ml`)
    const [lemon, orange] = [await volumeIn(desk, 'lemon'), await volumeIn(desk, 'orange')]
    await desk.ask('/jar combine lemon with:orange with-amount:half')
    expect((await volumeIn(desk, 'lemon')) / (lemon + orange / 2)).toBeCloseTo(1, 1)
  })

  it.each(['0%', '101 %', 'three halves', '5/4', 'a half measure', 'dozen'])('%s is none', (text) => {
    expect(parseShare(text)).toBeNull()
  })

  it.each([1 / 2, 1 / 3, 0.17, 2 / 7, 0.125, 1])('%d is written as it is read', (share) => {
    expect(parseShare(writeShare({ kind: 'share', share }))).toEqual({ kind: 'share', share })
  })

  it('is not all of it', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    expect((await desk.refused('/jar split lemon amount:100% into:two')).code).toBe('bad_value')
  })
})

describe('what is planned to sweeten a jar', () => {
  const startOf = async (desk: ReturnType<typeof jarDesk>) => (await desk.storyOf('lemon')).started

  it('is put right by its name, and the syrup is worked out of it', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    await desk.ask('/jar correct lemon sugar:honey')
    expect((await startOf(desk)).sweetener).toBe('honey')
    desk.at('2026-11-20')
    const { data } = await desk.ask('/jar strain lemon measured:950 ml')
    expect(data.syrup).toMatchObject({ sweetener: 'honey' })
    await desk.ask('/jar correct lemon entry:1 sugar:white sugar')
    expect((await startOf(desk)).sweetener).toBeUndefined()
  })

  it('is asked for an amount once something sweetened it', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    desk.at('2026-11-20')
    await desk.ask('/jar strain lemon measured:950 ml')
    await desk.ask('/jar sweeten lemon sugar:500 g water:1.5 l')
    const { message } = await desk.refused('/jar correct lemon sugar:honey')
    expect(message).toContain('sugar:500 g honey')
    await desk.ask('/jar correct lemon sugar:500 g honey')
    await desk.ask('/jar correct lemon entry:1 sugar:honey')
    expect((await startOf(desk)).sweetener).toBe('honey')
  })
})

it('takes a strength where the bottles say how much spirit there is', async () => {
  const desk = jarDesk()
  const plan = await desk.ask('/plan of:10 lemons spirit:95% bottles:4')
  expect(plan.data).toEqual((await desk.ask('/plan of:10 lemons strength:95% bottles:4')).data)
})

// Air browns fruit: 2.7 l of raspberries and spirit belong in a 3 l jar, not in one of 5 l. Common practice, no source.
it.each([
  [1500, 1200, 3000],
  [1000, 110, 1500],
  [700, 84, 1000],
  [2000, 1600, 4000],
  [900, 0, 1000],
])('%d ml of spirit and %d g of fruit go into a jar of %d ml', (liquidMl, fruitG, jarMl) => {
  expect(jarMlFor(liquidMl, [{ massG: { value: fruitG, plusMinus: 0 }, bulky: false }])).toBe(jarMl)
})
