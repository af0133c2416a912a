import { lazily } from '../../once.ts'
import { plainWords } from '../../spelling/normalise-name.ts'
import { ORDINARY } from '../../spelling/ordinary-words.ts'
import type { BotanicalKind } from '../botanical.ts'
import { catalogue } from '../catalogue/catalogue.ts'
import { nearRefusedSaid } from '../refuse/near-said.ts'
import { isPlantWord } from './plant-said.ts'

/** A fruit's name as it is spelt, and the ids that it may be. */
export interface FruitSlip {
  readonly name: string
  readonly ids: readonly string[]
}

const FRUITS: readonly BotanicalKind[] = ['citrus', 'fruit', 'berry', 'nut']

/** Shorter words are too often something else. */
const LETTERS = 5
const KNOWN_LETTERS = 4

/** English and Italian names of one word, in both numbers, with what they stand for. */
const fruitNames = lazily((): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, readonly string[]>()
  for (const { id, kind, names } of catalogue) {
    if (!FRUITS.includes(kind)) continue
    for (const name of [...names.en, ...names.it]) {
      const [word = '', another] = plainWords(name)
      if (another !== undefined || word.length < KNOWN_LETTERS) continue
      found.set(word, [...new Set([...(found.get(word) ?? []), id])])
    }
  }
  return found
})

/** English and Italian words that such a slip would make of a fruit's name, and names of other things; chosen from memory. */
const OTHERWISE: ReadonlySet<string> = new Set(
  'gripe gripes grope gropes prone lemma lemmas molars loaned lined limey pearly peaty plumb plumbs plump plumps apply cherub meals meles pesce peers piers'.split(
    ' ',
  ),
)

const without = (word: string, at: number): string => word.slice(0, at) + word.slice(at + 1)

const VOWEL = /^[aeiou]$/

/** One letter doubled, missing, another vowel, or its neighbour's in its place: `lemmons`, `limmes`, `peches`, `peeches`, `aplles`. */
function isFruitSlip(typed: string, name: string): boolean {
  if (typed[0] !== name[0]) return false
  let at = 0
  while (at < typed.length && typed[at] === name[at]) at++
  if (typed.length === name.length + 1) return without(typed, at) === name && typed[at] === typed[at - 1]
  if (typed.length === name.length - 1) return typed === without(name, at)
  if (typed.length !== name.length || without(typed, at) !== without(name, at)) return false
  const letter = typed[at]!
  return letter === typed[at - 1] || letter === typed[at + 1] || (VOWEL.test(letter) && VOWEL.test(name[at]!))
}

/**
 * The one common fruit whose name, of four letters or more, a word is such a slip of; null where it is a word itself, near a name
 * that is refused, or of several. Asked of what stands right behind a count or a mass. Common practice, no source.
 */
export function fruitSlip(word: string): FruitSlip | null {
  const typed = plainWords(word).join('')
  if (typed.length < LETTERS || isPlantWord(word) || ORDINARY.has(typed) || OTHERWISE.has(typed)) return null
  const near = [...fruitNames()].filter(([name]) => isFruitSlip(typed, name))
  const [first] = near
  if (first === undefined || nearRefusedSaid(word) !== null) return null
  const [name, ids] = first
  return near.every(([, other]) => other.join() === ids.join()) ? { name, ids } : null
}
