import type { UnitSystem } from '../quantity/read/parse-units.ts'

/** In which sizes things are sold where somebody lives. */
export interface Sold {
  /** Bottles of spirit, ml. */
  readonly spiritMl: readonly number[]
  /** A bag of white sugar, g. */
  readonly sugarG: number
}

/**
 * Bottles of spirit that may be sold in the European Union and the United Kingdom hold 100, 200, 350, 500, 700 ml, 1, 1.5, 1.75 or
 * 2 l (Directive 2007/45/EC, annex, section 1); in the United States among others 375, 750 ml, 1 and 1.75 l (27 CFR 5.203). Both
 * from memory. Of these the usual ones are taken; a bag of sugar of 1 kg, or 4 lb, is common practice without a source.
 */
const USUAL: Sold = { spiritMl: [700, 1000], sugarG: 1000 }
const IN_THE_US: Sold = { spiritMl: [750, 1000], sugarG: 4 * 453.59237 }

/** By the two letters (ISO 3166) of a country; where nobody said, null, by the measures that somebody pours in. */
export const soldIn = (country: string | null, system: UnitSystem = 'metric'): Sold =>
  country === 'US' || (country === null && system === 'us') ? IN_THE_US : USUAL

/** Bottles of one size. */
export interface BottlesBought {
  readonly count: number
  readonly sizeMl: number
}

/** A bottle that lacks so little is enough: less than a jug can tell. */
const NEAR_SHARE = 0.01

/** As many of one size as leave least over; of those that leave as little the fewest. */
export function bottlesBought(neededMl: number, sizesMl: readonly number[]): BottlesBought {
  const ways = sizesMl.map((sizeMl) => {
    const count = Math.max(1, Math.ceil(neededMl / sizeMl - NEAR_SHARE))
    return { count, sizeMl, overMl: Math.max(0, count * sizeMl - neededMl) }
  })
  const [best] = ways.toSorted((one, other) => one.overMl - other.overMl || one.count - other.count)
  return { count: best!.count, sizeMl: best!.sizeMl }
}

/** Last digits of a sum. */
const ROUNDING = 1e-6

/** Steps in which a shop weighs, g: finer for little. Judgement. */
const massStepG = (massG: number): number => {
  if (massG < 10) return 1
  if (massG < 50) return 5
  if (massG < 250) return 10
  return massG < 1000 ? 50 : 100
}

/** A mass rounded up to what is asked for in a shop, g. */
export function massBoughtG(massG: number): number {
  const stepG = massStepG(massG)
  return Math.ceil(massG / stepG - ROUNDING) * stepG
}

/** Whole pieces. */
export const countBought = (count: number): number => Math.ceil(count - ROUNDING)

/** Whole bags. */
export const bagsBought = (massG: number, bagG: number): number => Math.max(1, Math.ceil(massG / bagG - NEAR_SHARE))
