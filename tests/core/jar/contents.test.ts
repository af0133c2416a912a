import { describe, expect, it, test } from 'vitest'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { asPortion, contentsOf } from '../../../core/jar/state/contents.ts'
import { abvPercent, ethanolG, massG, sugarG, volumeMl, waterG } from '../../../core/liquid/liquid.ts'
import { abvPercentAt20 } from '../../../core/liquid/measure/hydrometer.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { syrup } from '../../../core/recipe/solve/syrup.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { added, grams, ml, plant, started, storyFrom, strained, strength, sweetened } from './jars.ts'

const contents = (...happenings: readonly Happening[]) => contentsOf(storyFrom(...happenings))
const liquid = (...happenings: readonly Happening[]) => contents(...happenings).outcome.liquid

/*
 * A litre of 95 % vol at 20 °C (OIML R 22: 811.38 g, ethanol 789.24 g/L): 950 ml × 0.78924 = 749.8 g of ethanol, 61.6 g of water.
 * 150 g of lemon peel (USDA 09156: 81.6 % water, 4.17 % sugars), nine tenths of which join: 110.2 g and 5.6 g.
 */
describe('reckoned by hand from masses', () => {
  const jar = contents(started())

  it('holds spirit and the plants’ water and sugar while steeping', () => {
    expect(ethanolG(jar.outcome.liquid)).toBeCloseTo(749.8, 1)
    expect(Math.abs(waterG(jar.outcome.liquid) - (61.6 + 110.2))).toBeLessThan(0.1)
    expect(sugarG(jar.outcome.liquid)).toBeCloseTo(5.6, 1)
    expect(jar).toMatchObject({
      volume: 'estimated',
      strength: 'estimated',
      keptBackMl: null,
      bottledMl: 0,
      isEmpty: false,
    })
  })

  it('leaves in the peel what the peel keeps, 0.8 ml a gram, and 1.5 % in the filter', () => {
    const jarMl = jar.outcome.volumeMl.value
    const out = contents(started(), strained())
    expect(out.outcome.volumeMl.value).toBeCloseTo((jarMl - 120) * 0.985, 6)
    expect(out.outcome.abvPercent.value).toBeCloseTo(jar.outcome.abvPercent.value, 9)
    expect(out.keptBackMl!.value).toBeCloseTo(120 + 0.015 * (jarMl - 120), 6)
    // 0.6 to 1 ml a gram of 150 g, but for the filter’s part of it, and the jug’s.
    expect(out.keptBackMl!.plusMinus).toBeGreaterThan(29.5)
  })

  it('adds syrup gram by gram', () => {
    const before = liquid(started(), strained())
    const after = liquid(started(), strained(), sweetened(700, 400))
    expect(waterG(after) - waterG(before)).toBeCloseTo(700, 6)
    expect(sugarG(after) - sugarG(before)).toBeCloseTo(400, 6)
    expect(ethanolG(after)).toBe(ethanolG(before))
  })

  it('sweetens twice, and takes in spirit afterwards', () => {
    const once = liquid(started(), strained(), sweetened(700, 400))
    const twice = liquid(started(), strained(), sweetened(500, 300), sweetened(200, 100))
    expect(twice).toEqual(once)
    const stronger = liquid(started(), strained(), sweetened(700, 400), added({ spirits: [spirit(100, 95)] }))
    expect(ethanolG(stronger) - ethanolG(once)).toBeCloseTo(74.98, 2)
  })

  it('rinses by one full mixing: the peel keeps its 120 ml of what was kept and the water together', () => {
    const jarMl = jar.outcome.volumeMl.value
    const keptEthanolG = (749.78 * 120) / jarMl
    const rinsed = liquid(started(), strained({ rinseWaterG: exactly(200) }))
    // 120 ml of about 86 % and 200 g of water come to 313 to 320 ml, of which 120 stay.
    const drainedEthanolG = 749.78 - keptEthanolG
    const least = (drainedEthanolG + keptEthanolG * (1 - 120 / 312)) * 0.985
    const most = (drainedEthanolG + keptEthanolG * (1 - 120 / 320)) * 0.985
    expect(ethanolG(rinsed)).toBeGreaterThan(least)
    expect(ethanolG(rinsed)).toBeLessThan(most)
  })

  it('reckons with an unknown plant as with one that may give none of its water or all of it', () => {
    const { outcome } = contents(started({ plants: [plant(null, 100)] }))
    // 950 ml × 0.78924; half of 95 g of water, ±47.5 g, and half of 20 g of what may dissolve, ±10 g.
    expect(Math.abs(outcome.massG.value - (811.4 + 47.5 + 10))).toBeLessThan(0.1)
    expect(outcome.massG.plusMinus).toBeCloseTo(Math.hypot(47.5, 10), 6)
  })

  it('lets a plant of an id that is gone count as unknown', () => {
    const { outcome } = contents(started({ plants: [plant('gone_from_the_book', 100)] }))
    expect(outcome.massG.plusMinus).toBeCloseTo(Math.hypot(47.5, 10), 6)
  })
})

describe('plants that go in later', () => {
  const later = [plant('lemon_peel', 150), plant('basil', 30, { addOn: '2026-11-03' })]
  const both = started({ plants: [plant('lemon_peel', 150), plant('basil', 30)] })

  it('are not in before they were put in', () => {
    expect(liquid(started({ plants: later }))).toEqual(liquid(started()))
  })

  it('count once, as they were put in', () => {
    const put = added({ plants: [plant('basil', 40)] })
    const asPut = liquid(started(), put, strained())
    expect(liquid(started({ plants: later }), put, strained())).toEqual(asPut)
  })

  it('are taken to have been put in where nothing was said and their day had come when it was strained', () => {
    const shaken: Happening = { kind: 'shaken' }
    expect(liquid(started({ plants: later }), shaken, shaken, strained())).toEqual(
      liquid(both, shaken, shaken, strained()),
    )
    expect(liquid(started({ plants: later }), strained())).toEqual(liquid(started(), strained()))
  })
})

describe('measured beats estimated', () => {
  it('takes the volume that was read, with the ± of the jug alone', () => {
    const { outcome, volume, strength: known } = contents(started(), strained({ measured: ml(900, 18) }))
    expect(outcome.volumeMl.value).toBeCloseTo(900, 6)
    expect(Math.abs(outcome.volumeMl.plusMinus - 18)).toBeLessThan(0.1)
    expect([volume, known]).toEqual(['measured', 'estimated'])
    expect(outcome.abvPercent.value).toBeCloseTo(contents(started()).outcome.abvPercent.value, 9)
  })

  it('takes the mass that was weighed', () => {
    expect(massG(liquid(started(), strained({ measured: grams(760) })))).toBeCloseTo(760, 6)
  })

  it('brings a volume read warm to 20 °C: about 1 % at 30 °C', () => {
    const warm = contents(started(), strained({ measured: ml(900, 1, 30) })).outcome.volumeMl.value
    expect(warm).toBeGreaterThan(890)
    expect(warm).toBeLessThan(893)
  })

  it('takes the strength that was read, put right for the peel’s sugar and the temperature', () => {
    const clear = { plants: [plant('chamomile', 0.1)] }
    const read = contents(started(clear), strained({ measured: ml(900), strength: strength(94) }))
    expect(read.strength).toBe('measured')
    expect(Math.abs(read.outcome.abvPercent.value - 94)).toBeLessThan(0.02)
    expect(Math.abs(read.outcome.abvPercent.plusMinus - 0.5)).toBeLessThan(0.02)
    // Warm spirit is lighter: a fifth to a third of a per cent for each degree.
    const warm = contents(started(clear), strained({ measured: ml(900), strength: strength(94, 25) }))
    expect(Math.abs(warm.outcome.abvPercent.value - abvPercentAt20(94, 25))).toBeLessThan(0.02)
    expect(94 - warm.outcome.abvPercent.value).toBeGreaterThan(1)
    // 5.6 g of sugar and 3.75 of extract in 1.09 l weigh 4.2 g/L more than what they displace; at 84 % a per cent is 3.1 g/L,
    // which makes 1.35 % vol; they take 0.5 % of the room, which makes 0.45 % vol less as drunk.
    const sweet = contents(started(), strained({ measured: ml(900), strength: strength(84) }))
    expect(Math.abs(sweet.outcome.abvPercent.value - (84 + 1.35 - 0.45))).toBeLessThan(0.1)
    expect(sweet.outcome.abvPercent.plusMinus).toBeGreaterThan(0.52)
  })

  it('takes a strength without a volume', () => {
    const { outcome, volume, strength: known } = contents(started(), strained({ strength: strength(84) }))
    expect([volume, known]).toEqual(['estimated', 'measured'])
    expect(outcome.volumeMl.value).toBeCloseTo(contents(started(), strained()).outcome.volumeMl.value, 6)
  })

  it('scales to what was measured after filtering, and counts filters once', () => {
    const filtered: Happening = { kind: 'filtered', measured: null }
    expect(liquid(started(), strained(), filtered)).toEqual(liquid(started(), strained()))
    const measured = strained({ measured: ml(900) })
    expect(volumeMl(liquid(started(), measured, filtered))).toBeCloseTo(900 * 0.985, 6)
    expect(liquid(started(), measured, filtered, filtered)).toEqual(liquid(started(), measured, filtered))
    const after = contents(started(), measured, { kind: 'filtered', measured: ml(880) }, sweetened(0, 100))
    expect(after.volume).toBe('computed')
    expect(ethanolG(after.outcome.liquid)).toBeCloseTo((ethanolG(liquid(started(), measured)) * 880) / 900, 6)
  })
})

it('is not changed by bottling, opening, tasting, renaming or the end', () => {
  const made = [started(), strained(), sweetened(700, 400)] as const
  const bottled: Happening = {
    kind: 'bottled',
    bottles: [
      { count: 3, volumeMl: 500 },
      { count: 1, volumeMl: 250 },
    ],
  }
  const all = contents(...made, bottled, { kind: 'opened' }, { kind: 'renamed', name: 'sun' }, { kind: 'emptied' })
  expect(all.outcome).toEqual(contents(...made).outcome)
  expect(all.bottledMl).toBe(1750)
})

it('says that too much sugar will crystallise, without failing', () => {
  expect(contents(started(), strained(), sweetened(100, 2000)).sugarStays).toBe('refused')
})

it('says when there is no liquid at all', () => {
  expect(contents(started({ spirits: [], plants: [] })).isEmpty).toBe(true)
})

test('a jar’s liquid makes a syrup that reaches its targets', () => {
  const wish = { by: 'strength_and_sweetness', abvPercent: 30, sugarGPerL: 200 } as const
  const infusion = contents(started(), strained({ measured: ml(900), strength: strength(84) }))
  const { outcome, waterG: water, sugarG: sugar } = syrup(asPortion(infusion), wish)
  expect(abvPercent(outcome.liquid)).toBeCloseTo(30, 6)
  const after = contents(
    started(),
    strained({ measured: ml(900), strength: strength(84) }),
    sweetened(water.value, sugar.value),
  )
  expect(after.outcome.abvPercent.value).toBeCloseTo(30, 4)
  expect(after.outcome.sugarGPerL.value).toBeCloseTo(200, 3)
})
