import { expect, test } from 'vitest'
import { liquidFrom } from '../../../core/liquid/liquid.ts'
import {
  dissolvableSugarG,
  largestSweetnessGPerL,
  sucroseSaturationFraction,
  sugarLimitGPerL,
  sugarState,
} from '../../../core/liquid/solubility.ts'
import { compare, misprintsOf, readTable } from '../../published/table.ts'

const crc = readTable('solubility-water-crc')
test(`sucrose in water (${crc.source})`, () => {
  const { off } = compare(crc, 1, ([tempC]) => 100 * sucroseSaturationFraction(tempC!))
  expect(off).toEqual(misprintsOf(crc, 1))
})

const table = readTable('solubility-water')
test(`sucrose in water (${table.source})`, () => {
  expect(compare(table, 2, ([tempC]) => 100 * sucroseSaturationFraction(tempC!)).off).toEqual([])
  const within = ([, kgPerKg]: readonly number[]): number => 0.0036 * (1 + kgPerKg!) ** 2
  expect(compare(table, 1, ([tempC]) => dissolvableSugarG(1, tempC!), { tolerance: within }).off).toEqual([])
})

const liqueur = readTable('solubility-liqueur')
test(`sugar in a saturated liqueur at 14 °C (${liqueur.source})`, () => {
  expect(compare(liqueur, 1, ([abvPercent]) => sugarLimitGPerL(abvPercent!)).off).toEqual([])
})

test.each([
  [0.84, 'dissolved'],
  [0.86, 'may_crystallise'],
  [0.99, 'may_crystallise'],
  [1.01, 'not_known'],
  [1.09, 'not_known'],
  [1.11, 'refused'],
] as const)('%d of the limit at 35 %% vol: %s', (share, state) => {
  const liquid = liquidFrom({ volumeMl: 1000, abvPercent: 35, sugarGPerL: share * sugarLimitGPerL(35) })
  expect(sugarState(liquid)).toBe(state)
})

// Halfway between sucrose, 1, and invert sugar, 1.82 (CRC Handbook): judgement, no source.
test.each([
  [1.39, 'refused'],
  [1.41, 'not_known'],
] as const)('of sugars that are %d times sucrose on first ice, beyond the limit: %s', (besideSucrose, state) => {
  const sucrose = liquidFrom({ volumeMl: 1000, abvPercent: 35, sugarGPerL: 1.2 * sugarLimitGPerL(35) })
  expect(sugarState({ ...sucrose, sucroseEquivalentG: besideSucrose * sucrose.sugarG })).toBe(state)
})

test('the largest sweetness is the last one called dissolved', () => {
  const sugarGPerL = largestSweetnessGPerL(35)
  expect(sugarState(liquidFrom({ volumeMl: 1000, abvPercent: 35, sugarGPerL: sugarGPerL * 0.9999 }))).toBe('dissolved')
})

test.each([-1, 101])('%d °C and %% vol are refused', (value) => {
  expect(() => sucroseSaturationFraction(value)).toThrow('temperature_out_of_range')
  expect(() => sugarLimitGPerL(value)).toThrow('strength_out_of_range')
})
