import type { Botanical } from '../../core/botanical/botanical.ts'
import { catalogue } from '../../core/botanical/catalogue/catalogue.ts'
import { byAskWord, byName, keyOf } from '../../core/botanical/name-index.ts'
import { nameWords, plainWords } from '../../core/botanical/plain-words.ts'
import type { Offer } from './offer.ts'
import { rankOf } from './rank.ts'

interface Name {
  readonly name: string
  /** What it is compared by, without and with the plant's state. */
  readonly keys: readonly string[]
}

/** Words before a plant: `2 stick of`, `30 g`. */
const MOST_WORDS_BEFORE = 6
/** A plant's name is shorter. */
const LONGEST = 100

const plain = (text: string): string => plainWords(text).join(' ')

/** Names that mean this plant and no other, the usual ones first. */
const namesOf = ({ names }: Botanical): readonly string[] =>
  [...names.en, names.title, ...names.it, ...names.latin].filter((name) => {
    const key = keyOf(nameWords(name))
    return byName.get(key)?.length === 1 && !byAskWord.has(key)
  })

/** A plant that is not planned without its state is two. */
const offered = (plant: Botanical): readonly (readonly Name[])[] => {
  const isSaid = plant.ceiling !== null && plant.driedPerFresh !== null
  const states = isSaid ? ['fresh ', 'dried '] : ['']
  return states.map((state) =>
    namesOf(plant).map((name) => ({ name: state + name, keys: [plain(name), plain(state + name)] })),
  )
}

let memo: readonly (readonly Name[])[] | null = null

/** Built when it is first asked for. */
const plants = (): readonly (readonly Name[])[] => {
  memo ??= catalogue.flatMap(offered)
  return memo
}

interface Fit {
  readonly name: string
  readonly rank: number
  /** Where the name stands among the plant's: those in English come first. */
  readonly at: number
}

const better = (one: Fit, other: Fit): number => one.rank - other.rank || one.at - other.at

const fitOf = (names: readonly Name[], key: string): readonly Fit[] =>
  names
    .map(({ name, keys }, at) => ({ name, at, rank: Math.min(...keys.map((each) => rankOf(each, key) ?? Infinity)) }))
    .filter(({ rank }) => rank < Infinity)
    .sort(better)
    .slice(0, 1)

/** One name of each plant that what was typed fits, the best fits first. */
const named = (typed: string): readonly string[] => {
  const key = plain(typed.slice(0, LONGEST))
  if (key === '' && typed.trim() !== '') return []
  return plants()
    .flatMap((names) => fitOf(names, key))
    .sort(better)
    .map(({ name }) => name)
}

/** A comma after a word joins plants as a plus does, but only the plus is read. */
const joined = (text: string): string => text.replace(/(?<=[\p{L}\p{M}])\s*,\s*/gu, ' + ')

/** The plants that the end of a text may be the beginning of: all of it, else without its first words, the amount. */
const ended = (text: string): readonly string[] => {
  const words = [...text.matchAll(/[\s,]+(?=[^\s,]|$)/g)].map(({ index, 0: space }) => index + space.length)
  for (const start of [0, ...words.slice(-MOST_WORDS_BEFORE)]) {
    const found = named(text.slice(start))
    if (found.length > 0) return found.map((name) => joined(text.slice(0, start)) + name)
  }
  return []
}

const offer = (text: string): Offer => ({ name: text, value: text })

/** The last plant of `8 lemons + 30 g ginger`, or the only one; what stands before it stays. */
export const suggestBotanicals = (typed: string): readonly Offer[] => {
  const end = typed.lastIndexOf('+') + 1
  const before = end === 0 ? '' : `${typed.slice(0, end).trimStart()} `
  return ended(typed.slice(end).trimStart()).map((text) => offer(before + text))
}
