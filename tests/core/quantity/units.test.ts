import { expect, test } from 'vitest'
import { unitsByKind } from '../../../core/quantity/read/units.ts'

const NIST = 'NIST Handbook 44 (2024), Appendix C: gallon 231 cubic inches, inch 2.54 cm'
const UK = 'UK Weights and Measures Act 1985, Schedule 1: gallon 4.54609 l'
const POUND = 'International yard and pound agreement, 1959: 0.45359237 kg'

// Typed from the definitions, exact.
test.each<['volume' | 'mass', string, number, string]>([
  ['volume', 'cup', 236.5882365, NIST],
  ['volume', 'fl oz', 29.5735295625, NIST],
  ['volume', 'pint', 473.176473, NIST],
  ['volume', 'quart', 946.352946, NIST],
  ['volume', 'gallon', 3785.411784, NIST],
  ['volume', 'tbsp', 14.78676478125, NIST],
  ['volume', 'tsp', 4.92892159375, NIST],
  ['volume', 'imp fl oz', 28.4130625, UK],
  ['volume', 'imp pint', 568.26125, UK],
  ['volume', 'imp quart', 1136.5225, UK],
  ['volume', 'imp gallon', 4546.09, UK],
  ['mass', 'lb', 453.59237, POUND],
  ['mass', 'oz', 28.349523125, POUND],
])('%s: one %s is %f ml or g (%s)', (kind, phrase, factor) => {
  expect(unitsByKind[kind].get(phrase)?.factor).toBeCloseTo(factor, 9)
})

test('every phrase is in lower case and no longer than what is looked for', () => {
  for (const units of Object.values(unitsByKind)) {
    for (const phrase of units.keys()) {
      expect(phrase).toBe(phrase.toLowerCase())
      expect(phrase.split(' ').length).toBeLessThanOrEqual(5)
    }
  }
})
