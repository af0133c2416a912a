import { exactly } from '../../../core/quantity/measured/measured.ts'
import { writeAmount } from '../../../core/quantity/write/write-quantity.ts'
import type { DrinkPart } from '../../../core/recipe/drinks-in.ts'
import type { UsualDose } from '../../../core/recipe/plan/usual-dose.ts'
import { steepUnjudged } from '../../../core/recipe/steep.ts'
import type { Data } from '../../chat/reply.ts'
import { spiritPortions } from '../options/input-to-portion.ts'

export const LITRE_ML = 1000

/** How much spirit was said, as it was typed; what it is called where all of it is called the same. */
export interface PouredSpirit {
  readonly volumeMl: number
  readonly amount: string
  readonly drink: string | null
}

/** What is weighed takes room by its strength, which then has to be said. */
const volumeOf = (part: DrinkPart): number =>
  part.amount.kind === 'volume'
    ? part.amount.volumeMl
    : steepUnjudged({ spirits: spiritPortions([part], undefined), waterG: exactly(0), sweetenings: [], plants: [] })
        .pouredMl

export function pouredOf(parts: readonly DrinkPart[]): PouredSpirit {
  const [first, ...others] = parts.map(({ drink }) => drink)
  return {
    volumeMl: parts.reduce((sum, part) => sum + volumeOf(part), 0),
    amount: parts.map(({ amount }) => writeAmount(amount)).join(' + '),
    drink: others.every((drink) => drink === first) ? (first ?? null) : null,
  }
}

/** The dose for the spirit that was said, else for a litre. */
export const doseData = (
  { leastG, usualG, mostG, pieces }: UsualDose,
  poured: PouredSpirit | null,
): { readonly [name: string]: Data } => ({
  spiritMl: poured?.volumeMl ?? LITRE_ML,
  dose: { minG: leastG, typicalG: usualG, maxG: mostG, pieces: pieces?.count ?? null },
})
