/** Bottles of spirit as they are called in the United States, ml: 27 CFR 5.203 has both sizes. */
const CALLED: ReadonlyMap<string, number> = new Map([
  ['fifth', 750],
  ['fifths', 750],
  ['handle', 1750],
  ['handles', 1750],
])

/**
 * A bottle of spirit whose size nobody says, ml: 750 in the United States (27 CFR 5.203), 700 elsewhere (Directive 2007/45/EC); which is
 * usual of them common practice.
 */
export const US_SPIRIT_BOTTLE_ML = 750
export const SPIRIT_BOTTLE_ML = 700

/** Whether a unit is one of these, which a sentence says of other things too: `a fifth of the sugar`. */
export const isCalledBottle = (unitKey: string): boolean => CALLED.has(unitKey)

/** How much such a bottle holds, ml; null of any other word. */
export const calledBottleMl = (word: string): number | null => CALLED.get(word.toLowerCase()) ?? null
