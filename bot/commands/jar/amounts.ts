import type { BottlesOf, ReadStrength } from '../../../core/jar/event.ts'
import { massG } from '../../../core/liquid/liquid.ts'
import { exactly, type Measured } from '../../../core/quantity/measured.ts'
import { abvPercent } from '../../../core/quantity/precision.ts'
import type { Mass, Strength, Volume } from '../../../core/quantity/quantities.ts'
import { fillBottles } from '../../../core/recipe/plan/fill-bottles.ts'
import type { Bottles } from '../../../core/recipe/plan/parse-bottles.ts'
import { liquidOf } from '../../../core/recipe/portion.ts'
import { propagate } from '../../../core/recipe/propagate.ts'
import type { Given } from '../fields.ts'
import { waterOf } from '../portions.ts'

/** Grams of water, poured or weighed; none where nothing was given. */
export const waterG = (given: Given<Volume | Mass> | undefined): Measured =>
  given === undefined
    ? exactly(0)
    : propagate({ poured: waterOf(given.is) }, ({ poured }) => ({ massG: massG(liquidOf(poured)) })).massG

/** What a hydrometer showed of a strained liquid. */
export const strengthRead = (strength: Strength): ReadStrength => ({
  abvPercent: abvPercent(strength, 'hydrometer'),
  abvAtC: strength.atC,
  readsProof: strength.unit === 'proof',
})

/** Bottles filled; of a size without a count as many as the batch fills, at least one. */
export function bottlesFilled(
  bottles: readonly Pick<Bottles, 'count' | 'volumeMl'>[],
  batchMl: number,
): readonly BottlesOf[] {
  const filled = fillBottles(batchMl, bottles).bottles
  return bottles.map(({ count, volumeMl }, index) => ({
    count: count ?? Math.max(1, filled[index]!.count),
    volumeMl,
  }))
}
