import { expect, test } from 'vitest'
import { countryNamed, parseCountry } from '../../../core/label/parse-country.ts'
import { serving } from '../../../core/label/serving.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import type { Portion } from '../../../core/recipe/portion.ts'
import table from './serving-table.json' with { type: 'json' }

const pour = (volumeMl: Measured, abvPercent: Measured): Portion => ({
  amount: volumeMl,
  by: 'volume',
  atC: 20,
  abvPercent,
  abvAtC: 20,
  sugarGPerL: exactly(0),
})

const drinkOf = (country: string) => countryNamed(country)?.drink ?? null

const drinksIn = (volumeMl: number, abvPercent: number, country: string): number =>
  serving(pour(exactly(volumeMl), exactly(abvPercent)), drinkOf(country)).drinks?.value ?? Number.NaN

// Two decimals each; the drinks were divided from grams already rounded, which adds 0.005/12.
test.each(table.rows)(`%d ml at %d percent: grams, UK units, US and Italian drinks (${table.source})`, (...row) => {
  const [ml = 0, abv = 0, ethanolG = 0, uk = 0, us = 0, italy = 0] = row
  const { ethanolG: grams } = serving(pour(exactly(ml), exactly(abv)), null)
  expect(Math.abs(grams.value - ethanolG)).toBeLessThanOrEqual(table.tolerance)
  expect(Math.abs(drinksIn(ml, abv, 'UK') - uk)).toBeLessThanOrEqual(table.tolerance)
  expect(Math.abs(drinksIn(ml, abv, 'US') - us)).toBeLessThanOrEqual(table.tolerance)
  expect(Math.abs(drinksIn(ml, abv, 'Italy') - italy)).toBeLessThanOrEqual(table.tolerance)
})

test('US 1.5 fl oz of 40 % vol hold 14.0 ± 0.1 g, one US drink (check case 4; USDA: 42 g × 33.4 %)', () => {
  const { ethanolG, drinks } = serving(pour(exactly(1.5 * 29.5735295625), exactly(40)), drinkOf('US'))
  expect(Math.abs(ethanolG.value - 14)).toBeLessThanOrEqual(0.1)
  expect(Math.abs((drinks?.value ?? 0) - 1)).toBeLessThanOrEqual(0.1 / 14)
})

test('0.6 US fl oz of pure alcohol are the 14 g of a US drink (definition), within half a gram', () => {
  const { ethanolG } = serving(pour(exactly(0.6 * 29.5735295625), exactly(100)), null)
  expect(Math.abs(ethanolG.value - 14)).toBeLessThanOrEqual(0.05)
})

test('25 ml of 40 % vol are exactly one UK unit of 10 ml (check case 5; UK Chief Medical Officers 2016)', () => {
  expect(drinksIn(25, 40, 'UK')).toBeCloseTo(1, 12)
  expect(drinkOf('UK')).toMatchObject({ drinkG: 8, pureMl: 10 })
})

test.each([
  ['US', 14],
  ['UK', 8],
  ['Ireland', 10],
  ['Italy', 12],
  ['France', 10],
  ['Germany', 12],
  ['Spain', 10],
  ['Australia', 10],
  ['New Zealand', 10],
  ['Canada', 13.45],
  ['Japan', 20],
  ['Austria', 20],
  ['Iceland', 8],
  ['Mexico', 13],
  ['Argentina', 14],
  ['Chile', 14],
  ['Hong Kong', 10],
  ['India', 8],
  ['Poland', 10],
  ['Sweden', 12],
  ['Denmark', 12],
  ['Switzerland', 12],
  ['WHO AUDIT', 10],
])('a standard drink in %s is %d g (reference/drinks.json, by its own sources)', (country, drinkG) => {
  expect(drinkOf(country)?.drinkG).toBe(drinkG)
})

test('the ± is that of the pour (2 %) and of the strength, in quadrature', () => {
  const { ethanolG, drinks } = serving(
    pour({ value: 30, plusMinus: 0.6 }, { value: 30, plusMinus: 0.3 }),
    drinkOf('Italy'),
  )
  expect(ethanolG.plusMinus / ethanolG.value).toBeCloseTo(Math.hypot(0.02, 0.01), 4)
  expect(drinks?.plusMinus).toBeCloseTo(ethanolG.plusMinus / 12, 12)
})

test.each([
  ['Italia', 'italy'],
  ['IT', 'italy'],
  ['ITA', 'italy'],
  ['U.S.A.', 'us'],
  ["Stati Uniti d'America", 'us'],
  ['Regno Unito', 'uk'],
  ['GB', 'uk'],
  ['Irlanda', 'ireland'],
  ['Irlanda del Nord', 'uk'],
  ['España', 'spain'],
  ['Österreich', 'austria'],
  ['the Netherlands', 'netherlands'],
  ['Éire', 'ireland'],
  ['hong-kong', 'hong_kong'],
])('%s is %s', (typed, id) => {
  expect(parseCountry(typed).country?.id).toBe(id)
})

test.each(['Itly', 'Mordor', '', '🍋', 'constructor'])('%s is no country, and no error', (typed) => {
  expect(parseCountry(typed).country).toBeNull()
})
