import { describe, expect, test } from 'vitest'
import { parseCount } from '../../../core/quantity/read/parse-count.ts'
import { parseRatio } from '../../../core/quantity/read/parse-ratio.ts'
import { parseTemperature } from '../../../core/quantity/read/parse-temperature.ts'
import { parseSpan } from '../../../core/quantity/time/parse-span.ts'
import { refusal, refusedValues } from './refusal.ts'

describe('a temperature', () => {
  test.each<[string, number]>([
    ['20 C', 20],
    ['20°C', 20],
    ['20 ℃', 20],
    ['20 gradi', 20],
    ['68°F', 20],
    ['68 F', 20],
    ['−18 °C', -18],
    ['-18,5 C', -18.5],
    ['-30 C', -30],
    ['-22 F', -30],
    ['100 C', 100],
    ['212 F', 100],
  ])('%s is %f °C', (text, tempC) => {
    expect(parseTemperature(text).tempC).toBeCloseTo(tempC, 9)
  })

  test.each([
    ['20', 'ambiguous celsius_or_fahrenheit'],
    ['20°', 'ambiguous celsius_or_fahrenheit'],
    ['-5 degrees', 'ambiguous celsius_or_fahrenheit'],
    ['-31 C', 'bad_value out_of_range'],
    ['101 C', 'bad_value out_of_range'],
    ['20 K', 'bad_value unknown_unit'],
    ['20±1 C', 'bad_value unexpected_text'],
    ['750 ml', 'bad_value wrong_kind'],
    ['--5 C', 'bad_value negative_number'],
    ['cold', 'bad_value no_number'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseTemperature(text))).toBe(refused)
  })
})

describe('a ratio of sugar to water', () => {
  test.each<[string, number]>([
    ['1:1', 1],
    ['2:1', 2],
    ['1.5:1', 1.5],
    ['1,5 : 1', 1.5],
    ['1.5', 1.5],
    ['3/2', 1.5],
    ['2 to 1', 2],
    ['2 a 1', 2],
    ['1.500:1', 1.5],
    ['20', 20],
    ['0.01', 0.01],
  ])('%s is %f', (text, ratio) => {
    expect(parseRatio(text).sugarGPerWaterG).toBe(ratio)
  })

  test.each([
    ['0', 'bad_value out_of_range'],
    ['1:0', 'bad_value out_of_range'],
    ['0:0', 'bad_value out_of_range'],
    ['21', 'bad_value out_of_range'],
    ['-1', 'bad_value negative_number'],
    ['1:', 'bad_value no_number'],
    ['2:1:1', 'bad_value unexpected_text'],
    ['two', 'bad_value no_number'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseRatio(text))).toBe(refused)
  })
})

describe('a span', () => {
  test.each<[string, number | null, number | null]>([
    ['25 days', 25, null],
    ['25 giorni', 25, null],
    ['3 weeks', 21, null],
    ['1 settimana', 7, null],
    ['36 hours', 1.5, null],
    ['12 ore', 0.5, null],
    ['2 months', null, 2],
    ['1.5 mesi', null, 1.5],
    ['11 months', null, 11],
    ['1 year', null, 12],
    ['half a year', null, 6],
    ['20 anni', null, 240],
    ['1 hour', 1 / 24, null],
  ])('%s: %f days, %f months', (text, days, months) => {
    expect(parseSpan(text)).toMatchObject({ kind: 'span', days, months })
  })

  test.each([
    ['25', 'bad_value no_unit'],
    ['21 years', 'bad_value out_of_range'],
    ['½ hour', 'bad_value out_of_range'],
    ['0 days', 'bad_value out_of_range'],
    ['30 minutes', 'bad_value unknown_unit'],
    ['-3 days', 'bad_value negative_number'],
    ['5-6 days', 'bad_value unexpected_text'],
    ['1,000 days', 'ambiguous two_readings'],
    ['3 l', 'bad_value wrong_kind'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseSpan(text))).toBe(refused)
  })
})

describe('a count', () => {
  test.each<[string, number, string | null, string]>([
    ['10 lemons', 10, null, 'lemons'],
    ['10 limoni', 10, null, 'limoni'],
    ['10 Sorrento lemons (large)', 10, null, 'Sorrento lemons (large)'],
    ['1 stick cinnamon', 1, 'stick', 'cinnamon'],
    ['1 stick of cinnamon', 1, 'stick', 'cinnamon'],
    ['1 cinnamon stick', 1, 'stick', 'cinnamon'],
    ['2 stecche di cannella', 2, 'stick', 'cannella'],
    ['3 foglie d’alloro', 3, 'leaf', 'alloro'],
    ['1 vanilla bean', 1, 'bean', 'vanilla'],
    ['5 cloves', 5, null, 'cloves'],
    ['2 cloves garlic', 2, 'clove', 'garlic'],
    ['½ lemon', 0.5, null, 'lemon'],
    ['half a lemon', 0.5, null, 'lemon'],
    ['mezzo limone', 0.5, null, 'limone'],
    ['2½ limes', 2.5, null, 'limes'],
    ['10', 10, null, ''],
    ['10000 cherries', 10000, null, 'cherries'],
    ['0.1 lemon', 0.1, null, 'lemon'],
  ])('%s', (text, count, piece, noun) => {
    expect(parseCount(text)).toEqual({ kind: 'count', count, piece, noun, assumed: [] })
  })

  test.each([
    ['lemons', 'bad_value no_number'],
    ['0 lemons', 'bad_value out_of_range'],
    ['10001 lemons', 'bad_value out_of_range'],
    ['-2 lemons', 'bad_value negative_number'],
    ['1,000 lemons', 'ambiguous two_readings'],
    ['500 g ginger', 'bad_value wrong_kind'],
    ['2 cups', 'bad_value wrong_kind'],
    ['10 🍋', 'bad_value unexpected_text'],
    ['10 lemons 3 limes', 'bad_value unexpected_text'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseCount(text))).toBe(refused)
  })

  test('the unit that was typed is named', () => {
    expect(refusedValues(() => parseCount('500 g ginger'))).toMatchObject({ got: 'mass', wanted: 'count' })
  })
})
