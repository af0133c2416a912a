import fc from 'fast-check'
import { expect } from 'vitest'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import type { Portion } from '../../../core/recipe/portion.ts'

/** The same to nine digits. */
export const expectClose = (is: number, wanted: number): void =>
  expect(Math.abs(is - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, wanted))

/** A liquid by volume at 20 °C, with no ± unless one is given. */
export const portion = (
  volumeMl: number,
  abvPercent: number,
  sugarGPerL = 0,
  plusMinus: { readonly volume?: number; readonly strength?: number; readonly sweetness?: number } = {},
): Portion => ({
  amount: { value: volumeMl, plusMinus: plusMinus.volume ?? 0 },
  by: 'volume',
  atC: 20,
  abvPercent: { value: abvPercent, plusMinus: plusMinus.strength ?? 0 },
  abvAtC: 20,
  sugarGPerL: { value: sugarGPerL, plusMinus: plusMinus.sweetness ?? 0 },
})

/** The same by mass. */
export const weighed = (massG: number, abvPercent: number, sugarGPerL = 0): Portion => ({
  ...portion(1, abvPercent, sugarGPerL),
  amount: exactly(massG),
  by: 'mass',
})

/** Plain water at 20 °C. */
export const waterPortion = (amount: Measured, by: Portion['by']): Portion => ({ ...portion(1, 0), amount, by })

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true })

export const strength = number(5, 96)
const volume = number(50, 5000)

/** Read at any kitchen temperature, by jug or by scale. */
export const readings = (sugar: fc.Arbitrary<number>): fc.Arbitrary<Portion> =>
  fc
    .record({
      amount: volume,
      by: fc.constantFrom<Portion['by']>('volume', 'mass'),
      atC: fc.constantFrom(20, 5, 28.5),
      abvPercent: number(5, 60),
      abvAtC: fc.constantFrom(20, 12, 27),
      sugarGPerL: sugar,
    })
    .map((read) => ({
      ...read,
      amount: exactly(read.amount),
      abvPercent: exactly(read.abvPercent),
      sugarGPerL: exactly(read.sugarGPerL),
    }))

/** Never so sweet that it could crystallise at 60 % vol. */
export const anyReading = readings(fc.oneof(fc.constant(0), number(1, 170)))
export const plainReading = readings(fc.constant(0))

/** A strained infusion, and a wish below it that sugar and water can always meet. */
export const infusionAndTargets = fc
  .record({ volumeMl: volume, abvPercent: strength, share: number(0.1, 0.7), sugarGPerL: number(10, 350) })
  .map(({ volumeMl, abvPercent, share, sugarGPerL }) => ({
    infusion: portion(volumeMl, abvPercent),
    targets: { abvPercent: Math.min(45, abvPercent * share), sugarGPerL },
  }))
  .filter(({ targets }) => targets.sugarGPerL < 0.85 * (800 - 10 * targets.abvPercent))

export const share = (min: number, max: number) => number(min, max)

/** None, or a real one. */
export const sweetness = (max: number) => fc.oneof(fc.constant(0), number(1, max))

export const relative = (one: number, other: number): number =>
  one === other ? 0 : Math.abs(one - other) / Math.max(Math.abs(one), Math.abs(other))

/** What a maker would pour: an amount without its ±. */
export const poured = ({ value }: Measured): Measured => exactly(value)
