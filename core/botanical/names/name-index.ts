import { lazily } from '../../once.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import type { AskBack } from '../ask-back.ts'
import type { Botanical } from '../botanical.ts'
import { catalogue } from '../catalogue/catalogue.ts'
import { askBacks } from './ambiguous-names.ts'
import { asksElsewhere, namesElsewhere } from './foreign-names.ts'

/** The Italian endings of one word, singular to plural and back: `limone`, `limoni`. */
const ENDINGS: readonly (readonly [string, string])[] = [
  ['co', 'chi'],
  ['go', 'ghi'],
  ['ca', 'che'],
  ['ga', 'ghe'],
  ['cia', 'ce'],
  ['gia', 'ge'],
  ['io', 'i'],
  ['o', 'i'],
  ['a', 'e'],
  ['e', 'i'],
]

/** Stones of fruit, which would else be hazelnuts in another number. */
const FRUIT_STONES = new Set(['nocciolo', 'noccioli'])

/** `pesca`, `pesche`: a hard c or g keeps its sound before the e of the plural. */
const isOffered = (one: string, many: string): boolean =>
  !(/[cg]a$/.test(one) && /[cg]e$/.test(many)) && !FRUIT_STONES.has(many)

const otherNumbers = (word: string): readonly string[] =>
  ENDINGS.flatMap(([one, many]) => [
    ...(word.endsWith(one) ? [word.slice(0, -one.length) + many] : []),
    ...(word.endsWith(many) ? [word.slice(0, -many.length) + one] : []),
  ]).filter((other) => isOffered(word, other) && isOffered(other, word))

/** What a name is looked up by. */
export const keyOf = (words: readonly string[]): string => words.join(' ')

/** The same for any order of the words. */
export const looseKeyOf = (words: readonly string[]): string => [...words].sort().join(' ')

const written = (name: string): string => keyOf(plainWords(name))

const listed = (names: string | undefined): readonly string[] => names?.split(', ') ?? []

const allNames = ({ id, names }: Botanical): readonly string[] => [
  names.title,
  ...names.en,
  ...names.it,
  ...names.latin,
  ...listed(namesElsewhere[id]),
]

const askedAs = ({ id, words }: AskBack): readonly string[] => [...listed(words), ...listed(asksElsewhere[id])]

type Index<Value> = ReadonlyMap<string, readonly Value[]>

const indexOf = <Value>(entries: readonly (readonly [string, Value])[]): Index<Value> => {
  const index = new Map<string, Value[]>()
  for (const [key, value] of entries) {
    const known = index.get(key) ?? []
    if (!known.includes(value)) index.set(key, [...known, value])
  }
  return index
}

const named = catalogue.flatMap((botanical) => allNames(botanical).map((name) => [nameWords(name), botanical] as const))

/** The plants of a name, exactly as it stands. */
export const byName: Index<Botanical> = indexOf(named.map(([words, botanical]) => [keyOf(words), botanical] as const))

const asked = askBacks.flatMap((ask) =>
  askedAs(ask)
    .map((word) => [nameWords(word), ask] as const)
    .filter(([words]) => ask.yields !== true || !byName.has(keyOf(words))),
)

/** The plants of a name in any order of its words. */
export const byLooseName: Index<Botanical> = indexOf(
  named.map(([words, botanical]) => [looseKeyOf(words), botanical] as const),
)

/** The plants of an Italian name in the other number, where the catalogue does not give it. */
export const byOtherNumber: Index<Botanical> = indexOf(
  catalogue.flatMap((botanical) =>
    botanical.names.it.flatMap((name) => {
      const [first = '', ...rest] = nameWords(name)
      return otherNumbers(first).map((other) => [looseKeyOf([other, ...rest]), botanical] as const)
    }),
  ),
)

/** The question that a word calls for when it stands alone. */
export const byAskWord = indexOf(asked.map(([words, ask]) => [keyOf(words), ask] as const))

/** Every spelling a typo may sit in: names as compared and as written, each with what it stands for. Most names have no typo. */
export const spellings = lazily((): readonly (readonly [string, Botanical | AskBack])[] =>
  [
    ...byName,
    ...[...byAskWord].map(([key, asks]) => [key, asks.filter(({ yields }) => yields !== true)] as const),
    ...indexOf(
      catalogue.flatMap((botanical) => allNames(botanical).map((name) => [written(name), botanical] as const)),
    ),
    ...indexOf(
      askBacks
        .filter(({ yields }) => yields !== true)
        .flatMap((ask) => askedAs(ask).map((word) => [written(word), ask] as const)),
    ),
  ].flatMap(([key, values]) => values.map((value) => [key, value] as const)),
)

/** Everything that may be typed of a plant: names and words that are asked about. */
export const isAllowedName = (key: string): boolean => byName.has(key) || byAskWord.has(key)

const lengths = [...byName.keys(), ...byAskWord.keys()].map((key) => key.split(' ').length)
export const LONGEST_NAME_WORDS = Math.max(...lengths)
