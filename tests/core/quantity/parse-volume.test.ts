import { describe, expect, test } from 'vitest'
import { parseVolume } from '../../../core/quantity/read/parse-volume.ts'
import { refusal, refusedValues } from './refusal.ts'

const CUP_ML = 236.5882365

describe('a volume is read', () => {
  test.each<[string, number, string?]>([
    ['1.5 l', 1500],
    ['1,5 L', 1500],
    ['750ml', 750],
    ['75 cl', 750],
    ['2 dl', 200],
    ['2 litri', 2000],
    ['1 litre', 1000],
    ['3 liters', 3000],
    ['mezzo litro', 500],
    ['50 millilitri', 50],
    ['2 cups', 2 * CUP_ML, 'us_measure'],
    ['2 us cups', 2 * CUP_ML],
    ['1 tazza', CUP_ML, 'us_measure'],
    ['3 tazze', 3 * CUP_ML, 'us_measure'],
    ['¾ cup', 0.75 * CUP_ML, 'us_measure'],
    ['3/4 cup', 0.75 * CUP_ML, 'us_measure'],
    ['1 1/2 cups', 1.5 * CUP_ML, 'us_measure'],
    ['1½ cups', 1.5 * CUP_ML, 'us_measure'],
    ['1 ½ cups', 1.5 * CUP_ML, 'us_measure'],
    ['1 1⁄2 cups', 1.5 * CUP_ML, 'us_measure'],
    ['half a cup', 0.5 * CUP_ML, 'us_measure'],
    ['1 cup 2 tbsp', 1.125 * CUP_ML, 'us_measure'],
    ['25 fl oz', (25 * CUP_ML) / 8, 'us_measure'],
    ['25 Fl. Oz.', (25 * CUP_ML) / 8, 'us_measure'],
    ['1 fluid ounce', CUP_ML / 8, 'us_measure'],
    ['1 pt', 2 * CUP_ML, 'us_measure'],
    ['1 quart', 4 * CUP_ML, 'us_measure'],
    ['1 gal', 16 * CUP_ML, 'us_measure'],
    ['3 tbsp', (3 * CUP_ML) / 16],
    ['2 cucchiai', CUP_ML / 8],
    ['1 tsp', CUP_ML / 48],
    ['1 imp pint', 568.26125],
    ['1 imperial quart', 1136.5225],
    ['1 imp. gallon', 4546.09],
    ['10 imp fl oz', 284.130625],
    ['1,234.5 ml', 1234.5],
    ['1.234,5 ml', 1234.5],
    ['123.456,5 ml', 123456.5],
    ['999,999.5 ml', 999999.5],
    ['1 500 ml', 1500],
    ['1\u00a0500\u2009ml', 1500],
    ['1234.567 ml', 1234.567],
    ['0,750 l', 750, 'decimal_point'],
    ['0.750 l', 750, 'decimal_point'],
    ['1,500 l', 1500, 'decimal_point'],
    ['.5 l', 500],
    ['0.1 ml', 0.1],
    ['1000 l', 1e6],
  ])('%s', (text, ml, assumed) => {
    const volume = parseVolume(text)
    expect(volume.volumeMl).toBeCloseTo(ml, 6)
    expect(volume.assumed).toEqual(assumed === undefined ? [] : [assumed])
    expect(volume.atC).toBeNull()
  })

  test.each<[string, number | null, number | null]>([
    ['930±5 ml', 5, null],
    ['930 ± 5 ml', 5, null],
    ['930 +- 5 ml', 5, null],
    ['930+/-5 ml', 5, null],
    ['930 ml ± 5', 5, null],
    ['930 ml ± 5 ml', 5, null],
    ['93±0,5 cl', 5, null],
    ['930 ml at 28 C', null, 28],
    ['930±5 ml at 28 °C', 5, 28],
    ['930 ml a 28 gradi', null, 28],
    ['930 ml @ -5 C', null, -5],
    ['930 ml at 86 F', null, 30],
  ])('%s: its precision and temperature', (text, statedMl, atC) => {
    const volume = parseVolume(text)
    expect(volume.volumeMl).toBeCloseTo(930, 9)
    if (statedMl === null) expect(volume.statedMl).toBeNull()
    else expect(volume.statedMl).toBeCloseTo(statedMl, 9)
    if (atC === null) expect(volume.atC).toBeNull()
    else expect(volume.atC).toBeCloseTo(atC, 9)
  })

  test.each<[string, number]>([
    ['930 ml', 0.5],
    ['930.0 ml', 0.05],
    ['1000 ml', 0.5],
    ['1.250 l', 0.5],
    ['1.5 l', 50],
    ['1 l', 20], // half a litre, capped at 2 %
    ['3/4 l', 15], // a fraction of a large unit: 2 %
    ['2 dl', 4], // a unit of 100 ml is large: 2 %
    ['3 cl', 1.5], // one of 10 ml is not: 5 %
    ['2 fl oz', 0.05 * 2 * 29.5735295625], // nor is one of 30 ml; 27 CFR 30 and NIST HB 44: a US fluid ounce
  ])('%s: half of its last digit is %f ml', (text, halfDigitMl) => {
    expect(parseVolume(text).halfDigitMl).toBeCloseTo(halfDigitMl, 9)
  })
})

describe('no volume', () => {
  test.each([
    ['', 'bad_value empty_text'],
    ['   ', 'bad_value empty_text'],
    ['750', 'bad_value no_unit'],
    ['ml', 'bad_value no_number'],
    ['imp pint', 'bad_value no_number'],
    ['NaN', 'bad_value no_number'],
    ['Infinity ml', 'bad_value no_number'],
    ['🍋', 'bad_value no_number'],
    ['+5 ml', 'bad_value no_number'],
    ['750 foo', 'bad_value unknown_unit'],
    ['1 imp cup', 'bad_value unknown_unit'],
    ['750 🍋', 'bad_value unexpected_text'],
    ['750 ml vodka', 'bad_value unexpected_text'],
    ['5-6 ml', 'bad_value unexpected_text'],
    ['500 g', 'bad_value wrong_kind'],
    ['250 g/L', 'bad_value wrong_kind'],
    ['20 C', 'bad_value wrong_kind'],
    ['40%', 'bad_value wrong_kind'],
    ['-5 ml', 'bad_value negative_number'],
    ['−5 ml', 'bad_value negative_number'],
    ['0 ml', 'bad_value out_of_range'],
    ['0.09 ml', 'bad_value out_of_range'],
    ['1001 l', 'bad_value out_of_range'],
    ['1000 l 1 ml', 'bad_value out_of_range'],
    [`${'9'.repeat(190)} ml`, 'bad_value out_of_range'],
    ['9'.repeat(400), 'bad_value text_too_long'],
    ['1e3 ml', 'bad_value exponent_number'],
    ['1E+3 ml', 'bad_value exponent_number'],
    ['1.2.3 l', 'bad_value bad_number'],
    ['1,23,456 ml', 'bad_value bad_number'],
    ['1.234,567,8 ml', 'bad_value bad_number'],
    ['5. ml', 'bad_value bad_number'],
    ['1/0 l', 'bad_value unexpected_text'],
    ['930±1000 ml', 'bad_value wide_plus_minus'],
    ['930± ml', 'bad_value no_number'],
    ['750\u0000 ml', 'bad_value hidden_characters'],
    ['\u001b[31m750 ml', 'bad_value hidden_characters'],
    ['\u200e750 ml', 'bad_value hidden_characters'],
    ['750\u202e ml', 'bad_value hidden_characters'],
    ['750 \u2066ml', 'bad_value hidden_characters'],
    ['７５０ ml', 'bad_value foreign_digits'],
    ['٧٥٠ ml', 'bad_value foreign_digits'],
    ['1,000 ml', 'ambiguous two_readings'],
    ['1.000 ml', 'ambiguous two_readings'],
    ['2.500 ml', 'ambiguous two_readings'],
    ['25 oz', 'ambiguous ounces'],
    ['930 ml at 28', 'bad_value no_unit'],
    ['930 ml at 280 C', 'bad_value out_of_range'],
  ])('%j', (text, refused) => {
    expect(refusal(() => parseVolume(text))).toBe(refused)
  })

  test('what is asked back can be typed as it is offered', () => {
    expect(refusedValues(() => parseVolume('1,000 ml'))).toEqual({ typed: '1,000 ml', choices: ['1 ml', '1000 ml'] })
    expect(refusedValues(() => parseVolume('1.255 ml'))).toEqual({
      typed: '1.255 ml',
      choices: ['1.2550 ml', '1255 ml'],
    })
    expect(parseVolume('1.2550 ml').volumeMl).toBe(1.255)
    expect(refusedValues(() => parseVolume('25 oz'))).toEqual({ typed: '25 oz', fluid: '25 fl oz', weight: null })
  })

  test('what was typed is shown without control characters and cut at 40 characters', () => {
    expect(refusedValues(() => parseVolume(`\u0007${'x'.repeat(100)}`))).toEqual({ typed: `${'x'.repeat(39)}…` })
    expect(refusedValues(() => parseVolume('750 foo'))).toEqual({ typed: '750 foo', unit: 'foo', wanted: 'volume' })
    expect(refusedValues(() => parseVolume('500 g'))).toEqual({ typed: '500 g', got: 'mass', wanted: 'volume' })
  })
})
