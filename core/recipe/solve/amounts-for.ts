import { DomainError } from '../../domain-error.ts'
import { ethanolG, extractG, type Liquid, liquidFrom, massG, part, sugarG, water, waterG } from '../../liquid/liquid.ts'
import type { Targets } from '../targets.ts'

export interface Amounts {
  readonly waterG: number
  /** Of what sweetens, its own water included. */
  readonly sugarG: number
}

export const WATER = water(1)

const MOST_ROUNDS = 60
/** So little change between two rounds, as a share of the infusion, is none. */
const SETTLED_SHARE = 1e-14

/**
 * At the strength wished for its alcohol tells the volume, and that the sugars and the water. What else comes with them takes room of
 * the water: closed where that is known from the sugars alone, else found again until it settles.
 */
export function amountsFor(infusion: Liquid, targets: Targets, gram: Liquid, filler: Liquid = WATER): Amounts {
  const litres = ethanolG(infusion) / ethanolG(liquidFrom({ volumeMl: 1000, ...targets, sugarGPerL: 0 }))
  const lackG = targets.sugarGPerL * litres - sugarG(infusion)
  const found = (extract: number): Amounts => {
    const made = part(liquidFrom({ volumeMl: 1000, ...targets, extractGPerL: Math.max(0, extract) / litres }), litres)
    const dryG = waterG(made) - waterG(infusion)
    const both = sugarG(gram) * waterG(filler) - sugarG(filler) * waterG(gram)
    return {
      sugarG: (lackG * waterG(filler) - dryG * sugarG(filler)) / both,
      waterG: (dryG * sugarG(gram) - lackG * waterG(gram)) / both,
    }
  }
  const extractIn = (amounts: Amounts): number =>
    extractG(infusion) + amounts.sugarG * extractG(gram) + amounts.waterG * extractG(filler)
  let amounts = found(extractIn({ sugarG: lackG / sugarG(gram), waterG: 0 }))
  const isOpen = sugarG(filler) > 0 || extractG(filler) > 0
  for (let round = 0; isOpen; round++) {
    if (round === MOST_ROUNDS) throw new DomainError('internal', 'no_convergence', { low: 0, high: MOST_ROUNDS })
    const before = amounts
    amounts = found(extractIn(before))
    if (Math.abs(amounts.waterG - before.waterG) <= SETTLED_SHARE * massG(infusion)) break
  }
  return amounts
}
