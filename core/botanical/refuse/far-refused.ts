import { DomainError } from '../../domain-error.ts'
import { lazily } from '../../once.ts'
import { editDistance } from '../../spelling/edit-distance.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import { ORDINARY } from '../../spelling/ordinary-words.ts'
import { foodByName, foodsByLatin } from '../foods/foods.ts'
import { byName } from '../names/name-index.ts'
import { isGood, type Named, spelled } from './near-refused.ts'

/** From so many letters on two slips are looked through: shorter names have too many neighbours. */
const LETTERS = 8
const SLIPS = 2

/** As it is compared: gaps are slips of the pen as well (`penny royale`). */
const joinedOf = (words: readonly string[]): string => words.join('')

interface Refused {
  readonly each: Named
  readonly key: string
}

/** By their first letter, in their order. */
function byFirst(all: readonly Refused[]): ReadonlyMap<string, readonly Refused[]> {
  const found = new Map<string, Refused[]>()
  for (const refused of all) {
    const first = refused.key[0]!
    const same = found.get(first)
    if (same === undefined) found.set(first, [refused])
    else same.push(refused)
  }
  return found
}

const known = lazily(() => ({
  refused: byFirst(
    spelled.flatMap(({ each, keys }) =>
      [...new Set(keys.map((key) => key.replaceAll(' ', '')))]
        .filter((key) => key.length >= LETTERS)
        .map((key) => ({ each, key })),
    ),
  ),
  good: [...byName.keys(), ...foodByName.keys(), ...foodsByLatin.keys()].map((key) => key.replaceAll(' ', '')),
}))

const isWithin = (one: string, other: string, slips: number): boolean =>
  Math.abs(one.length - other.length) <= slips && editDistance(one, other) <= slips

/**
 * A refused name of eight letters or more that a text is one or two slips away from (`wolfsbain`, `lilly of the vally`), or null;
 * null too where a good plant is as near. Asked of words that are nothing that is known. They begin alike: hardly anybody
 * slips in the first letter.
 */
export function farNameIn(text: string): Named | null {
  const typed = [...new Set([joinedOf(nameWords(text)), joinedOf(plainWords(text))])]
  if (typed.some((key) => isGood(key) || ORDINARY.has(key))) return null
  const { refused, good } = known()
  const looked = typed
    .filter(({ length }) => length >= LETTERS - 1)
    .map((key) => ({ key, near: refused.get(key[0]!)?.filter(({ key: name }) => isWithin(key, name, SLIPS)) ?? [] }))
  // Most words are near nothing that is refused: then there is no need to know what good plants they are near.
  if (looked.every(({ near }) => near.length === 0)) return null
  for (let slips = 1; slips <= SLIPS; slips++) {
    for (const { key, near } of looked) {
      if (good.some((name) => isWithin(key, name, slips))) return null
      const found = near.find(({ key: name }) => isWithin(key, name, slips))
      if (found !== undefined) return found.each
    }
  }
  return null
}

/** So short a refused name is hardly meant by a word that is two slips from it. */
const LEAST_REFUSED = 6

const shortRefused = lazily(() =>
  spelled.flatMap(({ keys }) =>
    keys.map((key) => key.replaceAll(' ', '')).filter(({ length }) => length >= LEAST_REFUSED),
  ),
)

/** Whether any refused name is two slips or less from a word, whatever good plant is as near. */
export const isFarNearRefused = (word: string): boolean => shortRefused().some((key) => isWithin(word, key, SLIPS))

/** Throws `near_refused` where a noun that no plant goes by is two slips from a refused name. `typed` as it is shown. */
export function expectNotFar(noun: string, typed: string): void {
  const far = farNameIn(noun)
  if (far === null) return
  throw new DomainError('ambiguous', 'near_refused', { typed, id: far.refused.id, name: far.name })
}
