import { DomainError } from '../../domain-error.ts'
import { ethanolG, type Liquid, liquidFrom } from '../../liquid/liquid.ts'
import { findRoot } from '../../liquid/root.ts'
import type { Targets } from '../targets.ts'

interface Search {
  /** The strained infusion that so much spirit makes. */
  readonly infusionOf: (spiritMl: number) => Liquid
  readonly targetsOf: (infusion: Liquid) => Targets
  readonly wantedMl: number
}

const MOST_SPIRIT_ML = 1e6
/** No spirit has no strength, so a search begins just above. */
const NEARLY_NONE = 1e-9
/** Targets that were not named follow the infusion; they settle in one or two rounds. */
const MOST_ROUNDS = 8

/** The spirit, ml, that ends as so much liqueur; throws `spirit_out_of_range` where none does. */
export function spiritForBottles({ infusionOf, targetsOf, wantedMl }: Search): number {
  let spiritMl = wantedMl
  let before: Targets | null = null
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const targets = targetsOf(infusionOf(spiritMl))
    if (before?.abvPercent === targets.abvPercent && before.sugarGPerL === targets.sugarGPerL) return spiritMl
    spiritMl = spiritFor(infusionOf, targets, wantedMl)
    before = targets
  }
  return spiritMl
}

function spiritFor(infusionOf: Search['infusionOf'], targets: Targets, wantedMl: number): number {
  const neededG = ethanolG(liquidFrom({ volumeMl: wantedMl, ...targets }))
  const surplusG = (spiritMl: number) => ethanolG(infusionOf(spiritMl)) - neededG
  let high = wantedMl
  while (surplusG(high) < 0) {
    high *= 2
    if (high > MOST_SPIRIT_ML) throw new DomainError('unreachable', 'spirit_out_of_range', { wantedMl })
  }
  return findRoot({ f: surplusG, low: NEARLY_NONE * high, high, tolerance: 1e-12 * high })
}
