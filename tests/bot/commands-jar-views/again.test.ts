import { describe, expect, it } from 'vitest'
import { titleOf } from '../../../bot/commands/plan/written-amounts.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { steepsAtPercent } from '../../../core/recipe/code/recipe-wish.ts'
import { findPlants } from '../../../core/recipe/plan/find-plants.ts'
import { sugarsInG } from '../../../core/recipe/sweetening.ts'
import { newAsker } from '../asker.ts'
import { startLine } from '../start-line.ts'
import { testDesk } from '../test-desk.ts'
import { deskWith, jarOf, NOW_MS, startedAs } from './jars.ts'

const deskAfter = async (...lines: readonly string[]) => {
  const desk = testDesk({ asker: newAsker(), nowMs: NOW_MS, width: 200 })
  for (const line of lines) expect((await desk.jsonOf(line)).error, line).toBeUndefined()
  return desk
}

type Desk = ReturnType<typeof testDesk>

/** Plans a jar once more, and starts it by the line that is offered. */
const begunAgain = async (desk: Desk, line: string) => {
  const { jars: before } = await desk.asker.store.read('local')
  const start = await startLine(desk, line)
  const { jars } = await desk.asker.store.read('local')
  expect(jars, line).toEqual(before)
  expect((await desk.jsonOf(start)).error, start).toBeUndefined()
  return lastStart(desk)
}

/** How the person's last jar was started. */
const lastStart = async ({ asker }: Awaited<ReturnType<typeof deskAfter>>) => {
  const { jars } = await asker.store.read(asker.userId)
  return jarStateOf(jars.at(-1)!.entries)!.started
}

const LEMON =
  '/jar start lemon of:10 lemons + 30 g dried ginger spirit:1 l 95% to-strength:32% to-sweetness:220 g/L sugar:100 g bottles:4 x 500 ml'

describe('/again', () => {
  it('makes a jar as that one was, by the alcohol of the spirit at hand', async () => {
    const desk = await deskAfter(LEMON)
    const after = await begunAgain(desk, '/again lemon spirit:700 ml 60% name:weaker')
    const [first] = (await desk.asker.store.read('local')).jars
    const before = jarStateOf(first!.entries)!.started
    // % vol is defined by volume of alcohol, so that the ratio needs no density.
    const factor = (700 * 60) / (1000 * 95)
    expect(after.name).toBe('weaker')
    expect(after.targets).toEqual({ abvPercent: 32, sugarGPerL: 220 })
    expect(after.plants.map(({ id }) => id)).toEqual(before.plants.map(({ id }) => id))
    after.plants.forEach(({ massG }, index) => {
      const share = massG.value / (before.plants[index]!.massG.value * factor)
      // A count is rounded to what a cook can cut.
      expect(Math.abs(share - 1)).toBeLessThan(0.025)
    })
    expect(sugarsInG(after.sweetenings)).toBeCloseTo(100 * factor, 1)
    expect(after.spirits).toHaveLength(1)
    expect(after.spirits[0]).toMatchObject({ amount: { value: 700 }, abvPercent: { value: 60 } })
    expect(after.bottles).toEqual([{ count: null, volumeMl: 500 }])
    expect(after.plants[0]!.count).toBe(4.5)
    const planned = await desk.run('/again lemon spirit:700 ml 60% name:weakest')
    const as = planned.ok ? planned.reply.notes.find(({ key }) => key === 'again_as') : undefined
    expect(as?.values).toEqual({
      name: 'lemon',
      isOtherwise: false,
      factor: expect.closeTo(factor, 6),
      by: 'spirit',
      id: null,
      pouredIn: [],
    })
    expect(desk.faults()).toEqual([])
  })

  it('takes the same amounts without spirit, and a name that is free', async () => {
    const desk = await deskAfter(LEMON)
    const after = await begunAgain(desk, '/again lemon')
    const [first] = (await desk.asker.store.read('local')).jars
    const before = jarStateOf(first!.entries)!.started
    expect(after.name).toBe('lemon 2')
    const { plants, spirits, sweetenings, days } = before
    expect(after.plants).toEqual(plants)
    expect(after.spirits).toEqual(spirits)
    expect(after.sweetenings).toEqual(sweetenings)
    expect(after.days).toEqual(days)
  })

  it('counts what was added while it steeped, and what the start was corrected to', async () => {
    const desk = await deskAfter(
      '/jar start mix of:80 g lemon peel spirit:1 l 95% to-strength:30% to-sweetness:250 g/L sugar:90 g when:2026-11-01',
      '/jar add mix of:20 g ginger when:2026-11-03',
      '/jar correct mix entry:1 sugar:60 g',
    )
    const { plants, sweetenings } = await begunAgain(desk, '/again mix spirit:500 ml 95%')
    expect(sugarsInG(sweetenings)).toBe(30)
    expect(plants.map(({ id, massG }) => [id, massG.value])).toEqual([
      ['lemon_peel', 40],
      [expect.stringContaining('ginger'), 10],
    ])
  })

  it('steeps at the strength of before, where the spirit is stronger than that', async () => {
    const start = '/jar start herb of:10 g rosemary spirit:1 l 95% steep-at:60% to-strength:30% to-sweetness:200 g/L'
    const strong = await begunAgain(await deskAfter(start), '/again herb spirit:1 l 80%')
    expect(steepsAtPercent(strong)).toBeCloseTo(60, 1)
    const weak = await begunAgain(await deskAfter(start), '/again herb spirit:1 l 50%')
    expect(weak.waterG.value).toBe(0)
  })

  it('brings stronger spirit down to where that one steeped, as its code does, and keeps its days', async () => {
    const desk = await deskAfter(
      '/jar start lemon of:100 g lemon peel spirit:1 l 40% to-strength:25% to-sweetness:200 g/L when:30 days ago',
      '/jar strain lemon when:16 days ago',
    )
    const { code } = (await desk.jsonOf('/share lemon')).data
    const plan = await desk.jsonOf(`/plan from:${code} spirit:750 ml 75.5%`)
    const text = await desk.textOf('/again lemon spirit:750 ml 75.5% name:strong')
    const strong = await begunAgain(desk, '/again lemon spirit:750 ml 75.5% name:strong')
    // 750 ml of 75.5 % hold the alcohol of 1,416 ml of 40 %.
    expect(steepsAtPercent(strong)).toBeCloseTo(40, 1)
    expect(strong.plants[0]!.massG.value).toBeCloseTo((100 * 750 * 75.5) / 40_000, 6)
    expect(strong.plants[0]!.massG.value).toBeCloseTo(plan.data.botanicals[0].massG, 6)
    expect(strong.days.strainBy).toBe(plan.data.dates.strainBy)
    expect(text).toContain('so you’ll dilute it to 40 % first, as that batch was')
    expect(text).toContain('14 days on the plants, the same as that batch')
    expect(await desk.textOf('/again lemon name:same')).toContain('14 days on the plants, the same as that batch')
    expect((await begunAgain(desk, '/again lemon name:same')).days.strainBy).toBe(strong.days.strainBy)
  })

  it('says where there is more of a plant to the spirit than is usual', async () => {
    const desk = await deskAfter('/jar start lemon of:285 g lemon peel spirit:1 l 95%')
    expect((await desk.jsonOf('/again lemon')).notes.map(({ key }: { key: string }) => key)).toContain(
      'plan_more_than_usual',
    )
  })

  it('says what spirit too weak for it does reach, and takes another wish', async () => {
    const desk = await deskAfter(
      '/jar start lemon of:80 g lemon peel spirit:1 l 95% to-strength:40% to-sweetness:250 g/L',
    )
    const { error } = await desk.jsonOf('/again lemon spirit:1 l 40%')
    expect(error.code).toBe('unreachable')
    const [, line] = /This works: (\/again lemon .*to-strength:\d\d(?:\.\d)?%)$/.exec(error.message)!
    expect((await desk.jsonOf(line!)).error).toBeUndefined()
    expect((await desk.asker.store.read('local')).jars).toHaveLength(1)
    const { data } = await desk.jsonOf('/again lemon spirit:1 l 40% to-strength:28%')
    expect(data).toMatchObject({ name: 'lemon 2', abvPercent: expect.closeTo(28, 1) })
  })

  it('asks for the strength of the spirit, and for a jar that is there', async () => {
    const desk = await deskAfter(LEMON)
    expect((await desk.jsonOf('/again lemon spirit:1 l')).error).toMatchObject({
      code: 'missing_option',
      option: 'strength',
    })
    expect((await desk.jsonOf('/again lemon spirit:1 l strength:80%')).data.name).toBe('lemon 2')
    expect((await desk.jsonOf('/again quince spirit:1 l 80%')).error.code).toBe('not_found')
  })

  it('starts again with a plant that only its maker knows', async () => {
    const desk = await deskAfter(
      '/jar start own of:40 g jaboticaba spirit:1 l 60% unknown-ok:yes days:10 to-strength:30% to-sweetness:100 g/L',
    )
    const { plants, days } = await begunAgain(desk, '/again own spirit:500 ml 60%')
    expect(plants).toMatchObject([{ id: null, name: 'jaboticaba', massG: { value: 20 } }])
    expect(days.strainFrom).toBe('2026-11-30')
  })

  it('reads back the title of every plant of the catalogue', () => {
    for (const botanical of catalogue) {
      const title = titleOf(botanical)
      expect(
        findPlants(`12.34 g ${title}`).map((found) => found.botanical),
        title,
      ).toEqual([botanical])
    }
  })

  it('knows how to say any spirit again', async () => {
    const spirits = [
      { ...startedAs('x').spirits[0]!, atC: 28, abvAtC: 28 },
      { ...startedAs('x').spirits[0]!, amount: { value: 300, plusMinus: 2 }, by: 'mass' as const },
      { ...startedAs('x').spirits[0]!, abvPercent: { value: 75.5, plusMinus: 0.5 }, abvAtC: 25, readsProof: true },
    ]
    const desk = await deskWith({ jars: [jarOf('aaaa1', [{ ...startedAs('lemon', { spirits }), on: '2026-11-01' }])] })
    const after = await begunAgain(desk, '/again lemon')
    after.spirits.forEach((spirit, index) => {
      const { amount, abvPercent, ...rest } = spirits[index]!
      expect(spirit).toMatchObject({ ...rest, amount: { value: amount.value } })
      expect(spirit.abvPercent.value).toBeCloseTo(abvPercent.value, 2)
    })
  })
})
