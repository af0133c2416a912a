import { ETHANOL_DENSITY_20C_G_PER_ML } from '../liquid/ethanol-water.ts'
import { ethanolG } from '../liquid/liquid.ts'
import type { Measured } from '../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../recipe/portion.ts'
import { propagate } from '../recipe/propagate.ts'
import type { DrinkSize } from './country.ts'

export interface Serving {
  readonly ethanolG: Measured
  /** Null where no size of a drink is known. */
  readonly drinks: Measured | null
}

/** What one standard drink holds, by its own definition: a UK unit is 10 ml of alcohol, 7.9 g rounded to 8 in print. */
const drinkG = ({ drinkG, pureMl }: DrinkSize): number =>
  pureMl === null ? drinkG : pureMl * ETHANOL_DENSITY_20C_G_PER_ML

/**
 * Grams of alcohol in a pour and how many standard drinks that is.
 * Error: that of the pour and of the strength; a drink's size is taken as exact.
 * Source: grams = ml × % vol/100 × 0.78924 g/mL (OIML R 22 at 20 °C); sizes in `countries.ts`.
 */
export function serving(pour: Portion, drink: DrinkSize | null): Serving {
  const { grams } = propagate({ pour }, (values) => ({ grams: ethanolG(liquidOf(values.pour)) }))
  const size = drink === null ? null : drinkG(drink)
  return {
    ethanolG: grams,
    drinks: size === null ? null : { value: grams.value / size, plusMinus: grams.plusMinus / size },
  }
}
