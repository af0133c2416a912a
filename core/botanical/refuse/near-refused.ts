import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import { isOneTypo } from '../../spelling/one-typo.ts'
import { ORDINARY } from '../../spelling/ordinary-words.ts'
import { isFoodName, LONGEST_FOOD_WORDS } from '../foods/foods.ts'
import { isAllowedName, keyOf, LONGEST_NAME_WORDS } from '../names/name-index.ts'
import { allRefusedNames, type RefusedName } from './all-refused.ts'

export interface Named extends RefusedName {
  readonly words: readonly string[]
}

export const named: readonly Named[] = allRefusedNames.map((each) => ({ ...each, words: nameWords(each.name) }))

/** Kinds whose names are everyday words: a word like them is nothing to ask about. */
const EVERYDAY = new Set([
  'dairy_egg',
  'medicines',
  'florist_flowers',
  'unnamed_plant',
  'plant_milk',
  'chemicals',
  'cracked_stones',
  'poisonous_raw',
  'poppy_seed',
])
/** As compared and as written, since a typo may sit in an ending or in a small word. */
export const spelled = named
  .filter(({ refused }) => !EVERYDAY.has(refused.id))
  .map((each) => ({ each, keys: [keyOf(each.words), plainWords(each.name).join(' ')] }))
  .filter(({ each, keys: [key = ''] }) => key.replaceAll(' ', '').length >= each.typoLetters)

/** Places in `spelled`, in its order, by the first two letters of a spelling and by its last two. */
interface ByEnds {
  readonly first: Map<string, number[]>
  readonly last: Map<string, number[]>
}

const headOf = (key: string): string => key.slice(0, 2)
const tailOf = (key: string): string => key.slice(-2)

function put(places: Map<string, number[]>, letters: string, place: number): void {
  const known = places.get(letters)
  if (known === undefined) places.set(letters, [place])
  else if (known.at(-1) !== place) known.push(place)
}

/**
 * One typo in five letters or more leaves the first two or the last two as they are, so that spellings which may be one typo
 * apart share one of these; by length too, since that differs by one at most.
 */
const spelledByLength: ReadonlyMap<number, ByEnds> = (() => {
  const lengths = new Map<number, ByEnds>()
  spelled.forEach(({ keys }, place) => {
    for (const key of keys) {
      const ends = lengths.get(key.length) ?? { first: new Map(), last: new Map() }
      lengths.set(key.length, ends)
      put(ends.first, headOf(key), place)
      put(ends.last, tailOf(key), place)
    }
  })
  return lengths
})()

/** The first refused name that is one typo away from one of these. */
const firstNear = (keys: readonly string[]): Named | null => {
  let first = spelled.length
  for (const key of keys) {
    const [head, tail] = [headOf(key), tailOf(key)]
    for (let length = key.length - 1; length <= key.length + 1; length++) {
      const ends = spelledByLength.get(length)
      for (const places of [ends?.first.get(head), ends?.last.get(tail)]) {
        for (const place of places ?? []) {
          if (place < first && spelled[place]!.keys.some((each) => isOneTypo(key, each))) first = place
        }
      }
    }
  }
  return spelled[first]?.each ?? null
}

/** Where words stand, as typed or as names are compared, that may be a slip of a refused name: a first look, which finds nothing in most sentences. */
export const nearSpans = (words: readonly string[], most: number): readonly Pick<NameSpan, 'from' | 'to'>[] => {
  const compared = words.map((word) => keyOf(nameWords(word)))
  const found: Pick<NameSpan, 'from' | 'to'>[] = []
  for (let from = 0; from < words.length; from++) {
    let [typed, key] = ['', '']
    for (let to = from + 1; to <= Math.min(words.length, from + most); to++) {
      const [word, other] = [words[to - 1]!, compared[to - 1]!]
      typed = typed === '' ? word : `${typed} ${word}`
      if (other !== '') key = key === '' ? other : `${key} ${other}`
      if (firstNear(key === typed ? [key] : [key, typed]) !== null) found.push({ from, to })
    }
  }
  return found
}

export const LONGEST = Math.max(LONGEST_NAME_WORDS, LONGEST_FOOD_WORDS, ...named.map(({ words }) => words.length)) + 1

export interface NameSpan {
  readonly from: number
  readonly to: number
  readonly key: string
}

export const spansOf = (words: readonly string[]): readonly NameSpan[] =>
  words.flatMap((_, from) =>
    Array.from({ length: Math.min(LONGEST, words.length - from) }, (_each, more) => {
      const to = from + more + 1
      return { from, to, key: keyOf(words.slice(from, to)) }
    }),
  )

export const lengthOf = ({ from, to }: NameSpan): number => to - from
export const holds = (outer: NameSpan, inner: NameSpan): boolean => outer.from <= inner.from && inner.to <= outer.to
export const touches = (one: NameSpan, other: NameSpan): boolean => one.from < other.to && other.from < one.to

/** Species of a refused genus that are food, beside those of the catalogue and of the list of foods. */
const EDIBLE_SPECIES: ReadonlySet<string> = new Set(
  ['Solanum tuberosum', 'Solanum melongena', 'Lonicera japonica', 'Lupinus albus'].map((name) =>
    keyOf(nameWords(name)),
  ),
)

export const isGood = (key: string): boolean => isAllowedName(key) || isFoodName(key) || EDIBLE_SPECIES.has(key)

/** A refused name that is one typo away from some of the words, unless those words are an allowed name. */
export const nearNameIn = (part: string): Named | null => {
  for (const words of [nameWords(part), plainWords(part)]) {
    const spans = spansOf(words)
    const allowed = spans.filter(({ key }) => isGood(keyOf(nameWords(key))) || ORDINARY.has(key))
    const open = spans.filter((span) => !allowed.some((other) => holds(other, span)))
    const found = firstNear(open.map(({ key }) => key))
    if (found !== null) return found
  }
  return null
}
