import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { unitsCounted } from '../../../bot/text/en/units-counted.ts'
import { talkerFor } from './told.ts'

const PLAN = '/plan of:8 lemons spirit:1 pint 190 proof'

// A cup of sugar is 200 g and one of honey 339 g (USDA FoodData Central); a US gallon is 3785.41 ml (NIST Handbook 44, appendix C), a
// pound 453.59 g.
describe('an amount in another unit', () => {
  it.each([
    ['how much is 2 cups of sugar in grams', 'g', 400],
    ['how many grams in half a cup of sugar?', 'g', 100],
    ['two and a half cups of sugar in g', 'g', 500],
    ['what is 500 g sugar in cups', 'cup', 2.5],
    ['how many g is 3 tbsp honey', 'g', 63.6],
    ['how many ml is 3 US cups', 'ml', 709.8],
    ['how many cups is a litre of water', 'cup', 4.227],
    ['1 lb 4 oz in grams', 'g', 567],
    ['convert 750 ml to cups', 'cup', 3.17],
    ['quanti grammi sono 2 tazze di zucchero', 'g', 400],
    ['2 cups of sugar to ounces please', 'oz', 14.1],
  ])('%s', async (text, unit, count) => {
    for (const after of [null, PLAN]) {
      const { data, code } = await (await talkerFor({ after })).say(text)
      expect(code).toBeNull()
      expect(data).toMatchObject({ said: 'talk_converted', unit })
      expect(data.count).toBeGreaterThan(count * 0.985)
      expect(data.count).toBeLessThan(count * 1.015)
    }
  })

  it.each([
    // Nothing tells how heavy a cup of it is, and nothing is asked for in it.
    'how much is 3 cups of flour in grams',
    'how many grams is 2 cups',
    'how much sugar for 2 cups of infusion at 80 % in grams',
    '8 lemons, a pint of 190 proof and 2 cups of sugar in grams',
    'strained it, 3 cups',
  ])('is not %s', async (text) => {
    const { data } = await (await talkerFor({ after: null })).say(text)
    expect(data.said).not.toBe('talk_converted')
  })

  it('is said as a kitchen measures it', () => {
    const format = en.format('metric')
    expect(unitsCounted(2.54, 'cup', format)).toBe('2\u00a0½\u00a0cups')
    expect(unitsCounted(0.13, 'cup', format)).toBe('⅛\u00a0cup')
    expect(unitsCounted(0.4023, 'kg', format)).toBe('0.4\u00a0kg')
    expect(unitsCounted(14.1, 'oz', format)).toBe('14\u00a0oz')
    expect(unitsCounted(2, 'imp_pint', format)).toBe('2\u00a0imp pints')
  })
})
