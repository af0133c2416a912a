import { lazily } from '../../once.ts'
import type { Botanical } from '../botanical.ts'
import { botanicalById } from '../catalogue/catalogue.ts'
import type { HazardKey } from '../evidence/hazards.ts'
import { byAskWord, byName, keyOf } from '../names/name-index.ts'
import { DOUBLES } from '../refuse/foraged.ts'

const MOST = 3

const pairsOf = (word: string): ReadonlySet<string> =>
  new Set(Array.from({ length: Math.max(0, word.length - 1) }, (_, at) => word.slice(at, at + 2)))

/** The share of neighbouring letters that two words have in common, 0 to 1. */
const likeness = (one: ReadonlySet<string>, other: ReadonlySet<string>): number => {
  const shared = [...one].filter((pair) => other.has(pair)).length
  return one.size + other.size === 0 ? 0 : (2 * shared) / (one.size + other.size)
}

const names = [
  ...byName,
  ...[...byAskWord].map(([key, asks]) => [key, asks.flatMap(({ choices }) => choices.map(botanicalById))] as const),
]

/** Most names are known. */
const known = lazily(() => names.map(([key, plants]) => ({ pairs: pairsOf(key), words: key.split(' '), plants })))

const LEAST_LIKENESS = 0.55

/** A name that is all there comes before one that has more words than were typed. */
const scoreOf = (words: readonly string[], ownWords: readonly string[]): number | null => {
  if (ownWords.every((word) => words.includes(word))) return 1 + ownWords.length
  return words.length > 0 && words.every((word) => ownWords.includes(word)) ? 1 : null
}

/** Hazards of plants whose names poisons share: `devil's cherry`, `meadow saffron`, `elder twig`, `Chinese almond`. */
const NAMESAKES: readonly HazardKey[] = [...DOUBLES, 'bitter_almond', 'elder', 'saffron_dose', 'stone_kernels']

/** Deadly nightshade is called a blueberry in places; from memory. */
const BERRIES = ['blueberry']

/** Whether a name that is not known may be proposed as this plant: never as the double of a deadly one. */
const isSafeToPropose = ({ id, hazards }: Botanical): boolean =>
  !BERRIES.includes(id) && !NAMESAKES.some((namesake) => hazards.includes(namesake))

/** Up to three ids, never of a deadly plant's double, whose names hold the same words or nearly the same letters, best first. */
export const nearestIds = (words: readonly string[]): readonly string[] => {
  const pairs = pairsOf(keyOf(words).slice(0, 60))
  const scored = known()
    .map(({ pairs: own, words: ownWords, plants }) => ({
      plants,
      score: scoreOf(words, ownWords) ?? likeness(own, pairs),
    }))
    .filter(({ score }) => score >= LEAST_LIKENESS)
    .sort((one, other) => other.score - one.score)
  const safe = scored.flatMap(({ plants }) => plants.filter(isSafeToPropose))
  return [...new Set(safe.map(({ id }) => id))].slice(0, MOST)
}
