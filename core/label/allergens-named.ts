import { describe } from '../botanical/names/descriptors.ts'
import { nameWords } from '../spelling/normalise-name.ts'
import { ALLERGEN_LEXICON, DRIED, NO_ALLERGEN, SULPHURED_FRUIT, UNSULPHURED } from './allergen-lexicon.ts'
import { type Allergen, allergens, inOrder } from './allergens.ts'

const keysOf = (names: string): readonly string[] => names.split(', ').map((name) => nameWords(name).join(' '))

/** Several where it is made of several; none where the words mean nothing that a label names. */
const byName: ReadonlyMap<string, readonly Allergen[]> = (() => {
  const found = new Map<string, readonly Allergen[]>(keysOf(NO_ALLERGEN).map((key) => [key, []]))
  for (const [allergen, names] of Object.entries(ALLERGEN_LEXICON)) {
    for (const key of keysOf(names)) found.set(key, [...(found.get(key) ?? []), allergen as Allergen])
  }
  return found
})()

const LONGEST = Math.max(...[...byName.keys()].map((key) => key.split(' ').length))

const dried = new Set(keysOf(DRIED))
const fruit = new Set(keysOf(SULPHURED_FRUIT))
const unsulphured = keysOf(UNSULPHURED)

/** Words that say what of a plant it is, and nothing of what it brings. */
const PARTS = new Set(
  keysOf(
    'seed, peel, zest, leaf, root, stalk, kernel, bean, flour, flake, butter, paste, grain, skin, shell, nut, semi, seme, foglia, foglie, farina, costa, coste, granella, in, raw, salted, golden, black, white, brown, yellow, red, green',
  ),
)

export interface AllergensNamed {
  readonly allergens: readonly Allergen[]
  /** True where every word is accounted for, so that the plant brings nothing else. */
  readonly isWhole: boolean
}

/** The name without what it says of sulphur, for whoever looks the plant up; null where it says nothing of it. */
export const withoutUnsulphured = (name: string): string | null => {
  const words = nameWords(name)
  for (const key of unsulphured) {
    const said = key.split(' ')
    const at = words.findIndex((_, index) => said.every((word, more) => words[index + more] === word))
    if (at >= 0) return [...words.slice(0, at), ...words.slice(at + said.length)].join(' ')
  }
  return null
}

/** Whether a sort is found beside its kind and says more: `macadamia nuts`, `rye bread`. */
const isToldBySort = (kind: Allergen, found: readonly Allergen[]): boolean =>
  (kind === 'nut' || kind === 'gluten') &&
  found.some(
    (each) => each !== kind && allergens[each].is === 'certain' && allergens[each].group === allergens[kind].group,
  )

/** The allergens that a plant's name tells, in any of its words; the longest name wins: `noce moscata` is no walnut. */
export const allergensNamed = (name: string): AllergensNamed => {
  const bare = withoutUnsulphured(name)
  const words = nameWords(bare ?? name)
  const found: Allergen[] = []
  const rest: string[] = []
  for (let at = 0; at < words.length; ) {
    const length = lengthAt(words, at)
    found.push(...(byName.get(words.slice(at, at + length).join(' ')) ?? []))
    if (length === 0) rest.push(words[at]!)
    at += Math.max(1, length)
  }
  const isDriedFruit = words.some((word) => dried.has(word)) && words.some((word) => fruit.has(word))
  const all = isDriedFruit ? [...found, 'sulphites' as const] : found
  const left = describe(rest).words.filter(
    (word) => !PARTS.has(word) && !(isDriedFruit && (dried.has(word) || fruit.has(word))),
  )
  const brought = inOrder(all).filter((each) => !isToldBySort(each, all) && (each !== 'sulphites' || bare === null))
  return { allergens: brought, isWhole: all.length > 0 && left.length === 0 }
}

/** Words of the longest name that begins there; 0 where none does. */
function lengthAt(words: readonly string[], at: number): number {
  for (let length = Math.min(LONGEST, words.length - at); length > 0; length--) {
    if (byName.has(words.slice(at, at + length).join(' '))) return length
  }
  return 0
}
