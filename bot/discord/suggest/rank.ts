const RANKS = [0, 1, 2, 3] as const

/** Two letters are inside of too many names; two signs of another script may be half of one. */
const isTelling = (typed: string): boolean => typed.length > 2 || /\P{ASCII}/u.test(typed)

/** How well what was typed fits a name: all of it, its beginning, that of one of its words, any part; null: not at all. */
export const rankOf = (key: string, typed: string): number | null => {
  if (key === typed) return 0
  if (key.startsWith(typed)) return 1
  if (key.includes(` ${typed}`)) return 2
  return isTelling(typed) && key.includes(typed) ? 3 : null
}

/** Those that fit, the best first, else in the order in which they came. */
export const ranked = <Item>(items: readonly Item[], rank: (item: Item) => number | null): readonly Item[] => {
  const all = items.map((item) => ({ item, rank: rank(item) }))
  return RANKS.flatMap((each) => all.filter((one) => one.rank === each).map(({ item }) => item))
}
