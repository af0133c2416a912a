import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import { isAllowedName, keyOf, LONGEST_NAME_WORDS } from '../names/name-index.ts'
import * as table from './drink-words.ts'
import { phrases } from './phrases.ts'
import { undrinkables } from './undrinkable.ts'

/** What a word of a drink is. */
export type DrinkKind =
  | 'drink'
  | 'alcohol'
  | 'sweet'
  | 'asked'
  | 'filler'
  | 'water'
  | 'unsweetened'
  | 'plant'
  | 'unknown'

/** Where two are as long, the first one holds. */
const tables: readonly (readonly [DrinkKind, ReturnType<typeof phrases>])[] = [
  ['drink', phrases(table.drinks)],
  ['sweet', phrases(table.sweetDrinks)],
  ['alcohol', phrases(table.alcohols)],
  ['asked', phrases(table.asked)],
  ['unsweetened', phrases(table.unsweetened)],
  // What was made at home was judged before.
  ['filler', phrases([table.fillers, ...undrinkables.map(({ made }) => made ?? '')].join())],
  ['water', phrases(table.waters)],
]

/** Drinks of one word, to find what a slip of the pen meant: as they are shown and as they are compared. */
export const drinkNames: readonly { readonly shown: string; readonly word: string }[] = [
  table.drinks,
  table.sweetDrinks,
]
  .flatMap((list) => list.split(','))
  .flatMap((name) => {
    const [word, ...others] = plainWords(name)
    return word === undefined || others.length > 0 || name.includes('*') ? [] : [{ shown: name.trim(), word }]
  })

/** How many words from `at` on are a plant of the catalogue. */
const plantAt = (words: readonly string[], at: number): number => {
  const most = Math.min(LONGEST_NAME_WORDS, words.length - at)
  for (let length = most; length > 0; length--) {
    if (isAllowedName(keyOf(nameWords(words.slice(at, at + length).join(' '))))) return length
  }
  return 0
}

/** What each word is, taken together with its neighbours where they make a longer name. */
export const classify = (words: readonly string[]): readonly DrinkKind[] => {
  const kinds: DrinkKind[] = []
  while (kinds.length < words.length) {
    const at = kinds.length
    const known = tables.map(([kind, each]) => ({ kind, length: each.longestAt(words, at) }))
    const found = [...known, { kind: 'plant' as const, length: plantAt(words, at) }].reduce((best, each) =>
      each.length > best.length ? each : best,
    )
    const length = Math.max(1, found.length)
    kinds.push(...Array.from({ length }, () => (found.length === 0 ? ('unknown' as const) : found.kind)))
  }
  return kinds
}

/** Whether one of the words is a drink of the trade, whatever else is said. */
export const isDrink = (text: string): boolean =>
  classify(plainWords(text)).some((kind) => kind === 'drink' || kind === 'sweet' || kind === 'alcohol')
