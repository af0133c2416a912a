import { expect, test } from 'vitest'
import {
  abvPercent,
  densityGPerMl,
  type Liquid,
  liquidFrom,
  sugar,
  sugarGPerL,
} from '../../../../core/liquid/liquid.ts'
import {
  abvOfKnownSugar,
  type DensityAt,
  gaugeByTwoInstruments,
  sugarOfBoiledGPerL,
} from '../../../../core/liquid/measure/gauge.ts'
import { brixByRefraction, refractiveIndex } from '../../../../core/liquid/measure/refraction.ts'
import { densityFromStemKgPerM3 } from '../../../../core/liquid/measure/stem.ts'
import type { StemScale } from '../../../../core/quantity/quantities.ts'
import { compare, misprintsOf, readTable } from '../../../published/table.ts'

const read = (value: number, scale: StemScale = 'sg', tempC = 20): DensityAt => ({
  densityKgPerM3: densityFromStemKgPerM3({ value, scale, tempC }),
  tempC,
})

/** Both steps of boiling off, as a jug that was filled up exactly has them. */
const gaugeByBoiling = (before: DensityAt, after: DensityAt) => {
  const sugarGPerL = sugarOfBoiledGPerL(after)
  return { abvPercent: abvOfKnownSugar(before, sugarGPerL), sugarGPerL }
}

const litreOf = (percent: number, sweetness: number): Liquid =>
  liquidFrom({ volumeMl: 1000, abvPercent: percent, sugarGPerL: sweetness })

const ofMass = (sugarPercent: number, ethanolPercent: number): Liquid => ({
  ...sugar(sugarPercent),
  ethanolG: ethanolPercent,
  waterG: 100 - sugarPercent - ethanolPercent,
})

const crc = readTable('refractive-index-crc')
test(`refractive index (${crc.source})`, () => {
  const { off } = compare(crc, 2, ([sugar, ethanol]) => refractiveIndex(ofMass(sugar!, ethanol!)))
  expect(off).toEqual(misprintsOf(crc, 2))
})

const zoecklein = readTable('sucrose-gravity-zoecklein')
test(`a Brix hydrometer shows the gravity of its sugar water (${zoecklein.source})`, () => {
  const waterKgPerM3 = read(1).densityKgPerM3
  const { off } = compare(zoecklein, 1, ([percent]) => read(percent!, 'brix').densityKgPerM3 / waterKgPerM3)
  expect(off).toEqual(misprintsOf(zoecklein, 1))
})

const wine = readTable('boiled-off-wine')
test(`strength of a wine by boiling (${wine.source})`, () => {
  // The tips ask for no sugar; 1.005 is a dry wine boiled and filled up.
  const { off } = compare(
    wine,
    1,
    ([less]) => gaugeByBoiling(read(1.005 - less! / 998.2), read(1.005, 'sg')).abvPercent,
  )
  expect(off).toEqual(misprintsOf(wine, 1))
})

test('SG 0.992 before and 1.008 after is 12.3 ± 1.8 % vol (home-wine notebook of 23 April 2013, jdesbonnet.blogspot.com)', () => {
  expect(Math.abs(gaugeByBoiling(read(0.992), read(1.008)).abvPercent - 12.3)).toBeLessThanOrEqual(0.3)
})

test.each([
  [1.0572, 1.0938, 30, 250],
  [1.0067, 1.0367, 25, 100],
  [1.004, 1.0558, 40, 150],
])(
  '%d g/mL before and %d after boiling is %d %% vol and %d g/L (derived twice, not published)',
  (before, after, percent, sweetness) => {
    const found = gaugeByBoiling(read(before, 'g_per_ml'), read(after, 'g_per_ml'))
    expect(Math.abs(found.abvPercent - percent)).toBeLessThanOrEqual(0.1)
    expect(Math.abs(found.sugarGPerL - sweetness)).toBeLessThanOrEqual(0.3)
  },
)

const grid = readTable('gauged-liqueurs')
const [STRENGTH, SWEETNESS, GRAVITY, RESIDUE, BRIX, STEM_BRIX, MEAN] = [0, 1, 2, 3, 4, 5, 6]

test('a refractometer and either hydrometer tell the strength and the sugar (derived, not published)', () => {
  const by = (scale: 'sg' | 'brix', column: number, what: 'abvPercent' | 'sugarGPerL') => (row: readonly number[]) =>
    gaugeByTwoInstruments(row[BRIX]!, 20, read(row[column]!, scale))[what]
  expect(compare(grid, STRENGTH, by('sg', GRAVITY, 'abvPercent')).off).toEqual([])
  expect(compare(grid, SWEETNESS, by('sg', GRAVITY, 'sugarGPerL')).off).toEqual([])
  // Below water there is no Brix stem.
  const sweet = { ...grid, rows: grid.rows.filter((row) => row[STEM_BRIX]! >= 0) }
  expect(compare(sweet, STRENGTH, by('brix', STEM_BRIX, 'abvPercent')).off).toEqual([])
  expect(sweet.rows.length).toBe(24)
})

test('boiling tells them too (derived, not published)', () => {
  const { off } = compare(grid, SWEETNESS, (row) => gaugeByBoiling(read(row[GRAVITY]!), read(row[RESIDUE]!)).sugarGPerL)
  expect(off).toEqual([])
  expect(compare(grid, BRIX, (row) => brixByRefraction(litreOf(row[STRENGTH]!, row[SWEETNESS]!))).off).toEqual([])
})

test('the mean of both Brix is the sugar by mass (Poberezhets, Uman Nat. Univ. Hort. 86 (2014) 122–128), from 15 to 30 % vol', () => {
  for (const row of grid.rows as readonly (readonly number[])[]) {
    if (row[STRENGTH]! > 30 || row[SWEETNESS]! > 300) continue
    const liquid = litreOf(row[STRENGTH]!, row[SWEETNESS]!)
    const percent = (100 * row[SWEETNESS]!) / (1000 * densityGPerMl(liquid))
    expect(Math.abs(row[MEAN]! - percent)).toBeLessThanOrEqual(0.9)
    const found = gaugeByTwoInstruments(row[BRIX]!, 20, read(row[GRAVITY]!))
    const rule = (row[BRIX]! - row[STEM_BRIX]!) * (1.4 + 0.01065 * row[MEAN]!)
    // The rule of the difference is good to 0.31 % vol by its own maker.
    if (row[STRENGTH]! >= 20) expect(Math.abs(found.abvPercent - rule)).toBeLessThanOrEqual(0.5)
  }
})

test.each([0, 12, 20, 28, 38])('whatever a liqueur is, its instruments read at %d °C give it back', (tempC) => {
  for (const [percent, sweetness] of [
    [0, 250],
    [17, 200],
    [30, 250],
    [42, 60],
    [55, 400],
    [62, 0],
  ] as const) {
    const liquid = litreOf(percent, sweetness)
    const at = { densityKgPerM3: 1000 * densityGPerMl(liquid, tempC), tempC }
    const two = gaugeByTwoInstruments(brixByRefraction(liquid, tempC), tempC, at)
    expect(two.abvPercent).toBeCloseTo(abvPercent(liquid), 6)
    expect(two.sugarGPerL).toBeCloseTo(sugarGPerL(liquid), 5)
    const boiled = litreOf(0, sweetness)
    const after = { densityKgPerM3: 1000 * densityGPerMl(boiled, tempC), tempC }
    const one = gaugeByBoiling(at, after)
    expect(one.abvPercent).toBeCloseTo(percent, 6)
    expect(one.sugarGPerL).toBeCloseTo(sweetness, 6)
    expect(abvOfKnownSugar(at, sweetness)).toBeCloseTo(percent, 8)
  }
})

test('all scales of a stem mean the same liquid', () => {
  const { densityKgPerM3 } = read(1.0742, 'sg')
  expect(read(densityKgPerM3 / 1000, 'g_per_ml').densityKgPerM3).toBeCloseTo(densityKgPerM3, 9)
  // 10 degrees Baumé are a specific gravity of 145/135 = 1.0741.
  expect(read(10, 'baume').densityKgPerM3 / densityKgPerM3).toBeCloseTo(145 / 135 / 1.0742, 9)
  // Water at 60 °F weighs 0.99904 g/mL, and the glass has grown by 0.01 % at 20 °C.
  expect(read(1, 'sg_60f').densityKgPerM3).toBeCloseTo(999.04 * (1 - 25e-6 * (20 - 15.5556)), 1)
  expect(read(40, 'percent').densityKgPerM3).toBeCloseTo(948.05, 1)
})

test('what no liqueur shows is refused', () => {
  expect(() => gaugeByBoiling(read(0.99), read(0.985))).toThrow('readings_do_not_fit')
  expect(() => gaugeByTwoInstruments(5, 20, read(1.06))).toThrow('readings_do_not_fit')
  expect(() => gaugeByTwoInstruments(80, 20, read(0.99))).toThrow('readings_do_not_fit')
  expect(() => abvOfKnownSugar(read(1.2), 100)).toThrow('readings_do_not_fit')
  expect(() => abvOfKnownSugar(read(0.75), 100)).toThrow('readings_do_not_fit')
})

test('no alcohol within the error of a reading is none', () => {
  expect(gaugeByTwoInstruments(14.9, 20, read(15, 'brix')).abvPercent).toBe(0)
  expect(abvOfKnownSugar(read(1.0002), 0)).toBe(0)
})
