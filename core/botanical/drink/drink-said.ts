import type { DrinkKind } from '../spirit/classify.ts'
import type { DrinkText } from '../spirit/drink-chunks.ts'

/** Words before a drink that tell which one to buy. */
const OF_ITS_KIND = new Set(
  'dark white black gold golden silver amber aged añejo reposado blanco dry london navy scotch irish'.split(' '),
)

/** After a place. */
const NAMED_AFTER = /\b(?:london|scotch|irish)\b/g

/** Spellings of one drink, the one that stands for all of them first; of drinks whose names are their own nothing is needed. */
const SPELLINGS: ReadonlyMap<string, string> = new Map(
  [
    'vodka vodkas voddy voddie vod wodka wódka votka водка водки',
    'gin gins ginebra джин cin',
    'rum rums rhum ron ром',
    'brandy brandies бренди',
    'whisky whiskey whiskies whiskeys виски wiski viski scotch',
    'grappa grappe',
  ].flatMap((row) => {
    const [first, ...others] = row.split(' ')
    return [first!, ...others].map((each) => [each, first!] as const)
  }),
)

/** Pet names of a drink, each with its name. */
const PET_NAMES: ReadonlyMap<string, string> = new Map([
  ['voddy', 'vodka'],
  ['voddie', 'vodka'],
  ['vod', 'vodka'],
])

/** What a drink of the trade is called, `dark rum`, `gin`: null of spirit as such, and of what is sweet. */
export function drinkSaid({ pieces, words }: DrinkText, kinds: readonly DrinkKind[]): string | null {
  const first = kinds.indexOf('drink')
  if (first === -1) return null
  const after = kinds.slice(first).findIndex((kind) => kind !== 'drink')
  const last = after === -1 ? kinds.length : first + after
  let from = first
  while (from > 0 && kinds[from - 1] === 'filler' && OF_ITS_KIND.has(words[from - 1]!.word)) from--
  const said = pieces.slice(words[from]!.piece, words[last - 1]!.piece + 1).join(' ')
  const named = said.toLowerCase().replaceAll(/\p{L}+/gu, (word) => PET_NAMES.get(word) ?? word)
  return named.replaceAll(NAMED_AFTER, (word) => word.charAt(0).toUpperCase() + word.slice(1))
}

/** By which two are one drink in whatever spelling and colour: `rum` of `white rum` and of `rhum`. */
export function kindOfDrink(drink: string): string {
  const words = drink.toLowerCase().split(' ')
  const own = words.filter((word, at) => at === words.length - 1 || !OF_ITS_KIND.has(word))
  return own.map((word) => SPELLINGS.get(word) ?? word).join(' ')
}
