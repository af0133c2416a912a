import { once } from '../../../core/once.ts'
import { isJuice, materialIds, materialOf } from '../../../core/quantity/materials.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'
import { wordSet } from '../lexicon/concepts.ts'
import type { Lexicon } from '../lexicon/lexicon.ts'

interface Thing {
  readonly words: readonly string[]
  readonly kind: 'spirit' | 'sugar' | 'water'
  /** Of a spirit: the strength meant where none is said; 0 where it has to be said. */
  readonly abvPercent: number
}

const listed = (list: string, kind: Thing['kind'], abvPercent = 0): readonly Thing[] =>
  list.split(',').map((phrase) => ({ words: phrase.trim().split(/\s+/), kind, abvPercent }))

/**
 * What sweetens, by its own names of several words, so that a new one is understood as soon as it is known; those of one word are
 * a language's. Between Italian ones `di` is said and not written here: `sciroppo di datteri`.
 */
const sweeteners = materialIds
  .filter((id) => !isJuice(id))
  .flatMap((id) => materialOf(id).names)
  .filter((name) => name.includes(' '))
  .flatMap((name) => [name, ...[' di ', ' d '].map((of) => name.replace(/(?<=^(?:sciroppo|zucchero|nettare)) /, of))])

const thingsOf = once((lexicon: Lexicon): ReadonlyMap<string, readonly Thing[]> => {
  const all = [
    ...lexicon.spirits.flatMap(([words, abv]) => listed(words, 'spirit', abv)),
    ...listed([lexicon.sugars, ...sweeteners].join(), 'sugar'),
    ...listed(lexicon.waters, 'water'),
  ]
  const index = new Map<string, Thing[]>()
  for (const thing of all) index.set(thing.words[0]!, [...(index.get(thing.words[0]!) ?? []), thing])
  return index
})

/** The spirit, sugar or water that begins at a piece, the longest; null where none does. */
export function thingAt(tokens: readonly Token[], at: number, lexicon: Lexicon) {
  const found = (thingsOf(lexicon).get(tokens[at]?.text ?? '') ?? [])
    .filter(({ words }) => words.every((word, more) => tokens[at + more]?.text === word))
    .toSorted((one, other) => other.words.length - one.words.length)[0]
  return found === undefined ? null : { ...found, next: at + found.words.length }
}

/** What `a` and `half` before it make a number: a bottle, a dozen, whatever is counted loosely. */
export const countable = (lexicon: Lexicon): ReadonlySet<string> => wordSet(`${lexicon.bottles} ${lexicon.loose}`)

interface Drink {
  readonly words: readonly string[]
  readonly plant: string
  readonly spirit: string
}

/** By the first of their words, in one or in several; in their order. */
const drinksOf = once(({ drinks }: Lexicon): ReadonlyMap<string, readonly Drink[]> => {
  const index = new Map<string, Drink[]>()
  for (const [names, plant, spirit] of drinks) {
    for (const name of names.split(', ')) {
      const words = name.split(' ')
      for (const first of [words[0]!, `${words[0]}s`])
        index.set(first, [...(index.get(first) ?? []), { words, plant, spirit }])
    }
  }
  return index
})

/** A drink that is called otherwise than what it is made of, and its plant; null where none begins. */
export function drinkAt(
  tokens: readonly Token[],
  at: number,
  lexicon: Lexicon,
): { plant: string; spirit: string; next: number } | null {
  for (const { words, plant, spirit } of drinksOf(lexicon).get(tokens[at]?.text ?? '') ?? []) {
    if (words.every((word, more) => tokens[at + more]?.text === word || tokens[at + more]?.text === `${word}s`))
      return { plant, spirit, next: at + words.length }
  }
  return null
}
