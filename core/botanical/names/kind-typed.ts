import type { Botanical } from '../botanical.ts'

/** A name for one of it and for several. */
export type OneAndSeveral = readonly [one: string, several: string]

/** Parts and states, which make no kind. */
const PART =
  /^(?:leaf|leaves|flowers?|seeds?|roots?|buds?|pods?|sticks?|blossoms?|peels?|zests?|rinds?|beans?|tips?|heads?|stalks?|petals?|berry|berries|nuts?|fruits?|fresh|dried|dry|whole|ripe|flesh|sprigs?|garden|sweet|stems?|shoots?|kernels?|shelled|powder|ground|threads?|green|young|raw|black|white|red|plain|bark|blades?)$/

const stemOf = (word: string): string =>
  word
    .toLowerCase()
    .replace(/(?:ies|y)$/, 'i')
    .replace(/(?:es|s)$/, '')

/** Words that a name has beside those of its entry and the parts of a plant. */
const isOwn = (alias: string, of: readonly string[]): boolean => {
  const known = new Set(of.flatMap((name) => name.split(/[\s_(),/-]+/)).map(stemOf))
  return alias.split(/\s+/).some((word) => !PART.test(word.toLowerCase()) && !known.has(stemOf(word)))
}

const isPlural = (one: string, other: string | undefined): other is string =>
  other !== undefined && other !== one && other.endsWith('s') && other.startsWith(one.slice(0, -1))

const pairAt = (names: readonly string[], at: number): OneAndSeveral => {
  const [before, name, next] = [names[at - 1], names[at]!, names[at + 1]]
  if (isPlural(name, next)) return [name, next]
  return before !== undefined && isPlural(before, name) ? [before, name] : [name, name]
}

/** The name of an entry that stands in what was typed, the longest. */
const nameIn = (names: readonly string[], noun: string): number => {
  const said = ` ${noun.toLowerCase()} `
  return names.reduce(
    (best, name, at) =>
      said.includes(` ${name.toLowerCase()} `) && name.length > (names[best]?.length ?? 0) ? at : best,
    -1,
  )
}

/** How an entry is called first of all. */
export const entryName = ({ names }: Botanical): OneAndSeveral => pairAt(names.en, 0)

/** The kind that was typed, damsons of plums, by its English name; null where it is the entry itself, by whatever name. */
export function kindTyped({ id, names }: Botanical, noun: string): OneAndSeveral | null {
  const at = nameIn(names.en, noun)
  return at === -1 || !isOwn(names.en[at]!, [id, names.en[0]!]) ? null : pairAt(names.en, at)
}
