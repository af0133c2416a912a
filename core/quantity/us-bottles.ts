/** Bottles of spirit as they are called in the United States, ml: 27 CFR 5.203 has both sizes. */
const CALLED: ReadonlyMap<string, number> = new Map([
  ['fifth', 750],
  ['fifths', 750],
  ['handle', 1750],
  ['handles', 1750],
])

/** Whether a unit is one of these, which a sentence says of other things too: `a fifth of the sugar`. */
export const isCalledBottle = (unitKey: string): boolean => CALLED.has(unitKey)

/** How much such a bottle holds, ml; null of any other word. */
export const calledBottleMl = (word: string): number | null => CALLED.get(word.toLowerCase()) ?? null
