import type { Botanical, SourcedShare } from '../../botanical/botanical.ts'
import type { Trust } from '../../botanical/evidence/trust.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { propagate } from '../propagate.ts'
import type { Plant } from '../steep.ts'
import { between, evenly } from './between.ts'

/**
 * Half of the 95 % interval of a plant's water where no range of it is known, as a share of the plant: what one fruit or leaf
 * differs from the table's, and more where the figure was not read in a table. Estimated.
 */
const WATER_PLUS_MINUS: { readonly [By in Trust]: number } = {
  published: 0.02,
  derived: 0.03,
  common_practice: 0.04,
  estimated: 0.05,
  memory: 0.05,
  not_found: 0.05,
}

/** How far the sugars of fruit and peel lie from the table's, as a share of them. Estimated. */
const SUGAR_SHARE = 0.3

/** The range as it is known, else as far as such a figure is trusted; never below nothing nor above the whole plant. */
function waterOf({ value, range, trust }: SourcedShare): Measured {
  const plusMinus = range === null ? WATER_PLUS_MINUS[trust] : Math.max(range[1] - value, value - range[0])
  return { value, plusMinus: Math.min(plusMinus, value, 1 - value) }
}

/** A plant as a steep reckons with it: what it exchanges and what it keeps, over their ranges. */
export function plantOf(botanical: Botanical, massG: Measured): Plant {
  const { waterFraction, sugarsFraction, extractFraction, waterExchange, retainedMlPerG, bulky } = botanical
  const sugar = sugarsFraction?.value ?? 0
  return {
    massG,
    waterShare: waterOf(waterFraction),
    sugarShare: sugar === 0 ? exactly(0) : { value: sugar, plusMinus: SUGAR_SHARE * sugar },
    extractShare: evenly(extractFraction.min, extractFraction.max),
    exchangeShare: between(waterExchange.min, waterExchange.max),
    keptMlPerG: between(retainedMlPerG.min, retainedMlPerG.max),
    bulky,
  }
}

/** What a plant gives, beside water, to a litre of the spirit it steeps in, g at its usual dose. */
export function givenPerLitre(botanical: Botanical): {
  readonly sugarsGPerL: Measured
  readonly extractGPerL: Measured
} {
  return propagate(plantOf(botanical, exactly(botanical.dose.typicalGPerL)), (plant) => ({
    sugarsGPerL: plant.massG * plant.sugarShare * plant.exchangeShare,
    extractGPerL: plant.massG * plant.extractShare,
  }))
}
