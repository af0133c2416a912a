import { describe, expect, it } from 'vitest'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { givenPerLitre, plantOf } from '../../../core/recipe/plan/plant-of.ts'

describe('what plants give beside water', () => {
  const given = (id: string) => givenPerLitre(botanicalById(id))

  // 90 g of cracked coffee: cold water takes 15 to 24 % of it (from memory), spirit perhaps less.
  it('is told for their usual dose, not as a share of the plant', () => {
    expect(given('coffee_cracked').extractGPerL.value).toBeCloseTo(14.4, 9)
    expect(given('coffee_cracked').sugarsGPerL.value).toBe(0)
    // 4.42 % of 700 g (USDA NDB 09302), of which a half to all joins.
    expect(given('raspberry').sugarsGPerL.value).toBeCloseTo(0.0442 * 700 * 0.75, 9)
    expect(given('raspberry').sugarsGPerL.plusMinus).toBeGreaterThan(0.3 * given('raspberry').sugarsGPerL.value)
  })

  // An estimate, no source.
  it('has sugars within 30 % of the table’s', () => {
    const { value, plusMinus } = plantOf(botanicalById('raspberry'), exactly(1)).sugarShare
    expect(value).toBeCloseTo(0.0442, 12)
    expect(plusMinus / value).toBeCloseTo(0.3, 12)
  })

  it('is as uncertain as an even spread over its range', () => {
    const { value, plusMinus } = plantOf(botanicalById('coffee_cracked'), exactly(1)).extractShare
    expect(value).toBeCloseTo(0.16, 12)
    // Half of the range times 1.96/√3 (GUM 4.3.7).
    expect(plusMinus).toBeCloseTo((0.06 * 1.96) / Math.sqrt(3), 12)
  })

  it('is never more than is dry in them', () => {
    for (const botanical of catalogue) {
      const { extractShare } = plantOf(botanical, exactly(1))
      expect(extractShare.value - extractShare.plusMinus, botanical.id).toBeGreaterThanOrEqual(0)
      const dry = 1 - botanical.waterFraction.value - (botanical.sugarsFraction?.value ?? 0)
      expect(botanical.extractFraction.max, botanical.id).toBeLessThanOrEqual(dry + 1e-12)
    }
  })
})
