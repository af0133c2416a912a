import { describe, expect, test } from 'vitest'
import { parseStrength } from '../../../core/quantity/read/parse-strength.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { refusal, refusedValues } from './refusal.ts'

describe('a strength', () => {
  test.each([
    '95%',
    '95 %',
    '95 % vol',
    '95 % vol.',
    '95% abv',
    '95 vol%',
    '95 abv',
    '95% alc./vol',
    '95% alc. vol.',
    '95 percent',
    '95 per cento',
    '95°',
    '95º',
    '95 gradi',
    '95,0 %',
  ])('%s is 95 %% vol, nothing assumed', (text) => {
    expect(parseStrength(text)).toMatchObject({ kind: 'strength', abvPercent: 95, assumed: [], atC: null })
  })

  test.each<[string, number, string[]]>([
    ['95', 95, ['percent_vol']],
    ['1,000', 1, ['percent_vol', 'decimal_point']],
    ['0.5%', 0.5, []],
    ['0.1%', 0.1, []],
    ['100%', 100, []],
  ])('%s', (text, percent, assumed) => {
    expect(parseStrength(text)).toMatchObject({ abvPercent: percent, assumed })
  })

  test('old British proof is 4/7 of its degrees in % vol, and strength by weight is more by volume', () => {
    // 100 British proof is 57.1 % vol (UK Customs and Excise Act 1952, section 172: from memory).
    expect(parseStrength('100 UK proof').abvPercent).toBeCloseTo(57.14, 2)
    expect(parseStrength('70 british proof').abvPercent).toBeCloseTo(40, 9)
    // 80-proof vodka is 33.4 g ethanol in 100 g (USDA National Nutrient Database SR28).
    expect(Math.abs(parseStrength('33.4% w/w').abvPercent - 40)).toBeLessThan(0.2)
    expect(parseStrength('100% by weight').abvPercent).toBeCloseTo(100, 9)
  })

  test('degrees of proof alone are asked back: 35 % vol in America, 40 in old Britain', () => {
    expect(refusal(() => parseStrength('70° proof'))).toBe('ambiguous us_or_uk_proof')
    expect(refusedValues(() => parseStrength('70° proof'))).toMatchObject({
      choices: ['70 US proof', '70 UK proof'],
      percents: [35, 40],
    })
  })

  test('proof is the US one, near half of it in % vol at 20 °C', () => {
    const strength = parseStrength('190 proof')
    // Between 60 °F and 20 °C the strength of a spirit moves by less than 0.1 % vol (27 CFR 30, Table 6).
    expect(Math.abs(strength.abvPercent - 95)).toBeLessThan(0.1)
    expect(strength).toMatchObject({ unit: 'proof', assumed: ['us_proof'], halfDigitPercent: 0.25 })
    expect(parseStrength('200 proof').abvPercent).toBeCloseTo(100, 6)
  })

  test('its temperature and its own ±', () => {
    expect(parseStrength('90.6% at 28 C')).toMatchObject({ abvPercent: 90.6, atC: 28, halfDigitPercent: 0.05 })
    expect(parseStrength('90,6 % a 28 °C')).toMatchObject({ abvPercent: 90.6, atC: 28 })
    expect(parseStrength('90.6 at 28 C')).toMatchObject({ abvPercent: 90.6, atC: 28, assumed: ['percent_vol'] })
    expect(parseStrength('30±0.5%')).toMatchObject({ abvPercent: 30, statedPercent: 0.5 })
    expect(parseStrength('30% ± 0.5%')).toMatchObject({ abvPercent: 30, statedPercent: 0.5 })
  })

  test.each([
    ['110%', 'bad_value out_of_range'],
    ['100.1%', 'bad_value out_of_range'],
    ['0.09%', 'bad_value out_of_range'],
    ['0%', 'bad_value out_of_range'],
    ['0', 'bad_value out_of_range'],
    ['201 proof', 'bad_value out_of_range'],
    ['0.95', 'ambiguous fraction_or_percent'],
    ['0,4', 'ambiguous fraction_or_percent'],
    ['0.4 abv', 'ambiguous fraction_or_percent'],
    ['½', 'ambiguous fraction_or_percent'],
    ['-40%', 'bad_value negative_number'],
    ['95 foo', 'bad_value unknown_unit'],
    ['95 °C', 'bad_value wrong_kind'],
    ['250 g/L', 'bad_value wrong_kind'],
    ['750 ml', 'bad_value wrong_kind'],
    ['strong', 'bad_value no_number'],
    ['4e1%', 'bad_value exponent_number'],
    ['40% gin', 'bad_value unexpected_text'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseStrength(text))).toBe(refused)
  })

  test('a fraction is offered both ways', () => {
    expect(refusedValues(() => parseStrength('0,4'))).toEqual({ typed: '0,4', choices: ['0.4%', '40%'] })
    expect(refusedValues(() => parseStrength('0.57'))).toEqual({ typed: '0.57', choices: ['0.57%', '57%'] })
  })
})

describe('a sweetness', () => {
  test.each<[string, number, string[]]>([
    ['250 g/L', 250, []],
    ['250g/l', 250, []],
    ['25 g/100 ml', 250, []],
    ['25g/100ml', 250, []],
    ['25 g/dl', 250, []],
    ['250 grammi per litro', 250, []],
    ['250 grams per litre', 250, []],
    ['250', 250, ['grams_per_litre']],
    ['dry', 120, []],
    ['Everyday', 190, []],
    ['rich', 270, []],
    ['0', 0, ['grams_per_litre']],
    ['0 g/L', 0, []],
    ['1200 g/L', 1200, []],
  ])('%s', (text, gPerL, assumed) => {
    expect(parseSweetness(text)).toMatchObject({ kind: 'sweetness', sugarGPerL: gPerL, assumed })
  })

  test('its own ±', () => {
    expect(parseSweetness('250±10 g/L')).toMatchObject({ sugarGPerL: 250, statedGPerL: 10 })
    expect(parseSweetness('25±1 g/100 ml')).toMatchObject({ sugarGPerL: 250, statedGPerL: 10, halfDigitGPerL: 5 })
  })

  test.each([
    ['1201', 'bad_value out_of_range'],
    ['1,200 g/L', 'ambiguous two_readings'],
    ['-1 g/L', 'bad_value negative_number'],
    ['250 g', 'bad_value wrong_kind'],
    ['20%', 'bad_value wrong_kind'],
    ['250 g/kg', 'bad_value wrong_kind'],
    ['sweet', 'bad_value no_number'],
    ['dry 5', 'bad_value unexpected_text'],
    ['constructor', 'bad_value no_number'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseSweetness(text))).toBe(refused)
  })
})
