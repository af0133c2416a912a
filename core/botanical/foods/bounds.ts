import type { Food, FoodKind } from '../food.ts'

/**
 * The most of a food in a litre of the steeping spirit, g: the largest dose that the catalogue has for a plant of that
 * kind (common practice). Derived, no limit of safety: a bound for what a maker may mean.
 */
const MOST_G_PER_L: Readonly<Record<FoodKind, number>> = {
  fruit: 1200, // sour cherries
  berry: 1200, // raspberries
  vegetable: 1000, // rhubarb
  root: 400, // ginger
  herb: 200, // basil
  leaf: 200, // basil
  flower: 200, // elderflowers
  nut: 300, // hazelnuts
  seed: 300, // hazelnuts
  cereal: 300, // hazelnuts
  legume: 300, // hazelnuts
  spice: 80, // fennel seed
  tea: 30, // black tea
  sap: 1000, // as a wet vegetable
  other: 30, // black tea
}

/** Of what is dried: raisins, dried chamomile and hibiscus, roots and leaves at a quarter of the fresh. */
const MOST_DRIED_G_PER_L: Readonly<Partial<Record<FoodKind, number>>> = {
  fruit: 400,
  berry: 400,
  root: 100,
  herb: 50,
  leaf: 50,
  flower: 60,
}

/** Of what is said to be strong: gentian root. */
const MOST_STRONG_G_PER_L = 30

/** Grams in a litre of steeping spirit, over 0. */
export const mostGPerL = ({ kind, part, notes }: Food, isDried: boolean): number => {
  const most = isDried || part === 'dried' ? (MOST_DRIED_G_PER_L[kind] ?? MOST_G_PER_L[kind]) : MOST_G_PER_L[kind]
  return notes.includes('a_little') ? Math.min(most, MOST_STRONG_G_PER_L) : most
}

/** About a quarter of the bound, as an example of an amount in a litre: 300 g of fruit, 50 g of a herb. */
export const exampleG = (food: Food): number => {
  const quarter = mostGPerL(food, false) / 4
  return quarter < 10 ? Math.round(quarter) : Math.round(quarter / 10) * 10
}
