import { describe, expect, test } from 'vitest'
import { POURED_SUGAR_G_PER_ML } from '../../../core/quantity/materials.ts'
import type { Assumption } from '../../../core/quantity/quantities.ts'
import { parseAmount } from '../../../core/quantity/read/parse-amount.ts'
import { parseSugar } from '../../../core/quantity/read/parse-sugar.ts'
import { parseMass } from './parse-mass.ts'
import { refusal, refusedValues } from './refusal.ts'

const OUNCE_G = 28.349523125

describe('a mass', () => {
  test.each<[string, number, string?]>([
    ['500 g', 500],
    ['500 gr', 500],
    ['500 grammi', 500],
    ['0,5 kg', 500],
    ['1 chilo', 1000],
    ['2 chili', 2000],
    ['mezzo chilo', 500],
    ['2 etti', 200],
    ['250 mg', 0.25],
    ['1 lb', 16 * OUNCE_G],
    ['1 lb 4 oz', 20 * OUNCE_G],
    ['2 pounds 1/2 oz', 32.5 * OUNCE_G],
    ['8 oz', 8 * OUNCE_G],
    ['1.250 kg', 1250, 'decimal_point'],
    ['5.000 mg', 5, 'thousands_separator'],
    ['0.01 g', 0.01],
    ['1000 kg', 1e6],
  ])('%s is read', (text, grams, assumed) => {
    const mass = parseMass(text)
    expect(mass.massG).toBeCloseTo(grams, 8)
    expect(mass.assumed).toEqual(assumed === undefined ? [] : [assumed])
    expect(mass.byVolume).toBe(false)
  })

  test.each([
    ['3 cups', 'bad_value wrong_kind'],
    ['8 fl oz', 'bad_value wrong_kind'],
    ['250 g/L', 'bad_value wrong_kind'],
    ['0 g', 'bad_value out_of_range'],
    ['0.009 g', 'bad_value out_of_range'],
    ['1001 kg', 'bad_value out_of_range'],
    ['1,000 g', 'ambiguous two_readings'],
    ['500', 'bad_value no_unit'],
    ['5 stones', 'bad_value unknown_unit'],
    ['-1 g', 'bad_value negative_number'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseMass(text))).toBe(refused)
  })

  test('a stated ± is kept in grams', () => {
    expect(parseMass('1.2±0.1 kg')).toMatchObject({ massG: 1200, statedG: 100, halfDigitG: 50 })
  })
})

describe('an amount', () => {
  test('is a volume or a mass', () => {
    expect(parseAmount('750 ml')).toMatchObject({ kind: 'volume', volumeMl: 750 })
    expect(parseAmount('500 g')).toMatchObject({ kind: 'mass', massG: 500 })
    expect(parseAmount('1 lb 4 oz')).toMatchObject({ kind: 'mass', unit: 'lb' })
  })

  test('bare ounces are asked back, and both answers are read', () => {
    expect(refusal(() => parseAmount('8 oz'))).toBe('ambiguous ounces')
    expect(refusedValues(() => parseAmount('8 oz'))).toEqual({
      typed: '8 oz',
      fluid: '8 fl oz',
      weight: '8 oz weight',
    })
    expect(parseAmount('8 fl oz').kind).toBe('volume')
    expect(parseAmount('8 oz weight')).toMatchObject({ kind: 'mass', massG: 8 * OUNCE_G })
  })
})

describe('sugar', () => {
  test('USDA SR Legacy 19335, granulated sugar: a cup of 236.588 ml is 200 g, 0.845 g/ml', () => {
    expect(POURED_SUGAR_G_PER_ML).toBeCloseTo(0.845, 3)
  })

  test.each<[string, number, string[]]>([
    ['500 g', 500, []],
    ['250g white sugar', 250, []],
    ['500 g of sugar', 500, []],
    ['1 kg zucchero semolato', 1000, []],
    ['2 cups', 400, ['us_measure', 'sugar_by_volume']],
    ['2 tazze di zucchero', 400, ['us_measure', 'sugar_by_volume']],
    ['4 tbsp caster sugar', 50, ['sugar_by_volume']],
    ['100 ml', 84.535, ['sugar_by_volume']],
  ])('%s is read', (text, grams, assumed) => {
    const mass = parseSugar(text)
    expect(mass.massG).toBeCloseTo(grams, 3)
    expect(mass.assumed).toEqual(assumed)
    expect(mass.byVolume).toBe(assumed.includes('sugar_by_volume'))
  })

  test.each([
    '1 tsp stevia',
    '200 g erythritol',
    '20 g xylitol',
    '300 g icing sugar',
    '200 g coconut sugar',
    '200 g corn sugar',
    '100 g vanilla honey',
    '100 g honey maple',
    '200 ml 3:2 syrup',
  ])('%s is not taken as sugar', (text) => {
    expect(refusal(() => parseSugar(text))).toBe('bad_value other_sweetener')
  })

  test.each<[text: string, massG: number, assumed: readonly Assumption[]]>([
    ['9 oz', 255.146, ['sugar_ounces']],
    ['8 ¾ oz sugar', 248.058, ['sugar_ounces']],
    ['9 oz weight', 255.146, []],
    ['1 lb 4 oz', 566.99, []],
    ['9 fl oz', 225, ['us_measure', 'sugar_by_volume']],
  ])('the ounces of %s', (text, massG, assumed) => {
    const mass = parseSugar(text)
    expect(mass.massG).toBeCloseTo(massG, 2)
    expect(mass.assumed).toEqual(assumed)
  })

  test('other refusals', () => {
    expect(refusedValues(() => parseSugar('1 cup icing sugar'))).toMatchObject({ sweetener: 'icing sugar' })
    expect(refusal(() => parseSugar('honey'))).toBe('bad_value no_number')
    expect(refusal(() => parseSugar('500 g foo'))).toBe('bad_value unexpected_text')
    expect(refusal(() => parseSugar('8 fl oz weight'))).toBe('bad_value unexpected_text')
    expect(refusal(() => parseSugar('250 g/L'))).toBe('bad_value wrong_kind')
    expect(refusal(() => parseSugar('0 g'))).toBe('bad_value out_of_range')
  })
})

// From memory: xylitol is deadly to dogs, and what is no sugar helps nothing to keep.
test.each([
  ['200 g xylitol', 'kills_dogs'],
  ['200 g xilitolo', 'kills_dogs'],
  ['5 g stevia', 'no_sugar'],
  ['200 g erythritol', 'no_sugar'],
  ['200 g eritritolo', 'no_sugar'],
  ['5 g saccharin', 'no_sugar'],
  ['200 g jaggery', null],
])('says why “%s” is not taken: %s', (text, why) => {
  expect(refusedValues(() => parseSugar(text))).toMatchObject({ why })
})
