import type { BotanicalKind, PlantState } from '../botanical.ts'

/** Least and most, as shares of the plant by mass as weighed in. */
export type ExtractRange = readonly [least: number, most: number]

type Usual = { readonly [State in PlantState]?: ExtractRange }

/** Fresh leaves, flowers and roots: a tenth to a fifth of them is dry, and a fifth of that dissolves. */
const FRESH_LEAF: ExtractRange = [0.01, 0.05]
/** Acids and what else of ripe fruit is no sugar. */
const FRESH_FRUIT: ExtractRange = [0.005, 0.03]
/** Dried herbs, flowers and roots: pharmacopoeias ask for a sixth to a third, of gentian for 33 %, as extractable matter. */
const DRIED_HERB: ExtractRange = [0.15, 0.4]

/**
 * What water and spirit dissolve of a plant beside the sugars that are counted: acids, gums, minerals, colours, bitters, and
 * sugars too few to be counted. It hides strength from a hydrometer as sugar does.
 * Estimated: nobody has published it for cold spirit. Roasted coffee gives hot water 28 to 32 % and cold water 15 to 24 %,
 * tea leaves 32 % and more, gentian root a third, dried roselle calyces half (all from memory).
 */
const USUAL: { readonly [Kind in BotanicalKind]: Usual } = {
  citrus: { fresh: [0.01, 0.04], dried: DRIED_HERB },
  coffee_tea_cocoa: { dried: [0.2, 0.4], roasted: [0.05, 0.2] },
  root: { fresh: FRESH_LEAF, dried: DRIED_HERB, roasted: [0.4, 0.7] },
  herb: { fresh: FRESH_LEAF, dried: DRIED_HERB },
  spice: { fresh: FRESH_FRUIT, dried: [0.05, 0.25], cured: [0.2, 0.45] },
  bitter: { fresh: FRESH_LEAF, dried: DRIED_HERB },
  flower: { fresh: FRESH_LEAF, dried: DRIED_HERB },
  berry: { fresh: FRESH_FRUIT, dried: [0.02, 0.1] },
  fruit: { fresh: FRESH_FRUIT, dried: [0.02, 0.1] },
  vegetable: { fresh: [0.01, 0.05] },
  nut: { fresh: [0.02, 0.08], dried: [0.01, 0.06] },
  wood: { fresh: [0.01, 0.06], dried: [0.02, 0.1] },
}

/** Where nothing is known of such a plant in such a state. */
const UNKNOWN: ExtractRange = [0, 0.4]

/** Of a plant whose row says nothing else. */
export const usualExtract = (kind: BotanicalKind, state: PlantState): ExtractRange => USUAL[kind][state] ?? UNKNOWN

/** No more than there is beside its water and its counted sugars, shares of the plant. */
export function extractOf([least, most]: ExtractRange, water: number, sugars: number): ExtractRange {
  const rest = Math.max(0, 1 - water - sugars)
  return [Math.min(least, rest), Math.min(most, rest)]
}
