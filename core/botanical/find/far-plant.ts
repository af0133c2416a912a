import { editDistance } from '../../spelling/edit-distance.ts'
import { nameWords } from '../../spelling/normalise-name.ts'
import { ORDINARY } from '../../spelling/ordinary-words.ts'
import { keyOf, spellings } from '../names/name-index.ts'
import { isFarNearRefused } from '../refuse/far-refused.ts'
import { isPlantWord } from './plant-said.ts'

/** So long a word with two slips is still like no other: `rasberies`, `blackbery`. */
const LETTERS = 8
const KNOWN_LETTERS = 8
const SLIPS = 2

/** The plant that a long word is two slips away from: its name as it is spelt, and its ids. */
export interface FarPlant {
  readonly name: string
  readonly ids: readonly string[]
}

/**
 * The only plant whose name of one word is two slips from a word of eight letters or more, or null; null too where a refused one is as
 * near. They begin alike, and of a word that means something else nothing is mended.
 */
export function farPlant(word: string): FarPlant | null {
  const key = keyOf(nameWords(word))
  if (word.length < LETTERS || key.includes(' ') || isPlantWord(word) || ORDINARY.has(key)) return null
  const near = spellings().filter(
    ([known]) =>
      known.length >= KNOWN_LETTERS &&
      known[0] === key[0] &&
      Math.abs(known.length - key.length) <= SLIPS &&
      !known.includes(' ') &&
      editDistance(key, known) <= SLIPS,
  )
  const [first] = near
  if (first === undefined || isFarNearRefused(key)) return null
  const idsOf = ([, found]: (typeof near)[number]): string =>
    JSON.stringify('choices' in found ? found.choices : [found.id])
  if (near.some((each) => idsOf(each) !== idsOf(first))) return null
  return { name: first[0], ids: JSON.parse(idsOf(first)) as readonly string[] }
}
