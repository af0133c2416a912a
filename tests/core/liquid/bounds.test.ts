import { expect, it } from 'vitest'
import { ethanolWaterDensityKgPerM3 } from '../../../core/liquid/ethanol-water.ts'
import { STRONG_PERCENT } from '../../../core/liquid/flash-point.ts'
import { FREEZER_C, inFreezer, leastAbvIceFree } from '../../../core/liquid/freezer.ts'
import { keepingAt } from '../../../core/liquid/keeping.ts'
import { densityGPerMl, type Liquid, liquidFrom, sugar } from '../../../core/liquid/liquid.ts'
import { abvOfKnownSugar, gaugeByTwoInstruments, sugarOfBoiledGPerL } from '../../../core/liquid/measure/gauge.ts'
import { strengthPercentFromReading } from '../../../core/liquid/measure/hydrometer.ts'
import { brixByRefraction } from '../../../core/liquid/measure/refraction.ts'
import { refusal } from '../quantity/refusal.ts'

const at20 = (densityKgPerM3: number) => ({ densityKgPerM3, tempC: 20 })
const kgPerM3 = (liquid: Liquid) => 1000 * densityGPerMl(liquid, 20)
const ofMass = (ethanolG: number, sugarG: number): Liquid => ({
  ...sugar(sugarG),
  ethanolG,
  waterG: 100 - ethanolG - sugarG,
})
const WATER_KG_PER_M3 = ethanolWaterDensityKgPerM3(0, 20)
const ETHANOL_KG_PER_M3 = ethanolWaterDensityKgPerM3(1, 20)

/** Passes where a call gives a number and should, or is refused and should be. */
const expectTaken = (call: () => unknown, isTaken: boolean, problem: string) =>
  isTaken ? expect(call).not.toThrow() : expect(refusal(call)).toBe(`bad_value ${problem}`)

// Regulation (EU) 2019/787, annex I: vodka, gin and rum have 37.5 % vol at least (from memory).
it('flame is warned of from the weakest spirit that is widely sold', () => {
  expect(STRONG_PERCENT).toBe(37.5)
})

it.each([
  [14.951, 'keeps'],
  [14.949, 'ferments'],
])('%s %% vol is 15 where it rounds to that: %s', (percent, word) => {
  expect(keepingAt(percent, 300)).toBe(word)
})

// Common practice, no source: a hydrometer's own error is 0.0015 of gravity, a refractometer's 0.5 Brix.
it.each([
  [1.49, true],
  [1.51, false],
])('a density %s kg/m³ beyond water or alcohol is the end itself: %s', (beyond, isTaken) => {
  expectTaken(() => abvOfKnownSugar(at20(WATER_KG_PER_M3 + beyond), 0), isTaken, 'readings_do_not_fit')
  expectTaken(() => abvOfKnownSugar(at20(ETHANOL_KG_PER_M3 - beyond), 0), isTaken, 'readings_do_not_fit')
  expectTaken(() => sugarOfBoiledGPerL(at20(WATER_KG_PER_M3 - beyond)), isTaken, 'readings_do_not_fit')
})

it.each([
  [0.49, true],
  [0.51, false],
])('%s Brix less than the sugar of the hydrometer is no alcohol: %s', (less, isTaken) => {
  const syrup = ofMass(0, 20)
  const shown = brixByRefraction(syrup, 20) - less
  expectTaken(() => gaugeByTwoInstruments(shown, 20, at20(kgPerM3(syrup))), isTaken, 'readings_do_not_fit')
})

it.each([
  [69.9, true],
  [70.1, false],
])('a search for sugar ends at seven tenths of the mass: %s %% is found: %s', (percent, isTaken) => {
  expectTaken(() => sugarOfBoiledGPerL(at20(kgPerM3(ofMass(0, percent)))), isTaken, 'readings_do_not_fit')
})

it.each([
  [94.9, true],
  [95.1, false],
])('a search for alcohol ends at 95 %% of the mass: %s %% is found: %s', (percent, isTaken) => {
  const strong = ofMass(percent, 0)
  const call = () => gaugeByTwoInstruments(brixByRefraction(strong, 20) - 0.2, 20, at20(kgPerM3(strong)))
  expectTaken(call, isTaken, 'readings_do_not_fit')
})

// Common practice, no source: a stem is read up to 2 % vol beyond its scale, and a result 0.5 % vol beyond is the end.
it.each([
  [101.99, 30, true],
  [102.01, 30, false],
  [100.49, 20, true],
  [100.51, 20, false],
  [-0.49, 20, true],
  [-0.51, 20, false],
])('a stem that shows %s %% vol at %s °C is read: %s', (readingPercent, tempC, isTaken) => {
  const call = () => strengthPercentFromReading({ readingPercent, tempC, scaleC: 20 })
  expectTaken(call, isTaken, 'reading_out_of_scale')
})

// EU Directive 89/108/EEC, article 1: frozen food is kept at -18 °C or colder (from memory).
it('a home freezer has -18 °C', () => {
  expect(FREEZER_C).toBe(-18)
  expect(leastAbvIceFree(200)).toBe(leastAbvIceFree(200, -18))
})

// The freezing point of ethanol, -114 °C (from memory): below it the tables end.
it.each([
  [-115, true],
  [-115.1, false],
])('a freezer of %s °C is reckoned with: %s', (tempC, isTaken) => {
  expectTaken(() => leastAbvIceFree(200, tempC), isTaken, 'temperature_out_of_range')
})

it('is slush until six tenths of the water are ice, and solid from there', () => {
  const states = Array.from({ length: 400 }, (_, at) =>
    inFreezer(liquidFrom({ volumeMl: 1000, abvPercent: 14 + at / 50, sugarGPerL: 0 })),
  )
  const iceWhere = (wanted: string) =>
    states.filter(({ state }) => state === wanted).map(({ iceFraction }) => iceFraction)
  expect(Math.min(...iceWhere('solid'))).toBeGreaterThanOrEqual(0.6)
  expect(Math.min(...iceWhere('solid'))).toBeLessThan(0.61)
  expect(Math.max(...iceWhere('slush'))).toBeLessThan(0.6)
  expect(Math.max(...iceWhere('slush'))).toBeGreaterThan(0.59)
})
