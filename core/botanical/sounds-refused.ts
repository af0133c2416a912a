import { DomainError } from '../domain-error.ts'
import { shown } from '../quantity/typed-text.ts'
import { allRefusedNames } from './all-refused.ts'
import { editDistance } from './edit-distance.ts'
import { ORDINARY } from './ordinary-words.ts'
import { plainWords } from './plain-words.ts'

/** Letters of a refused name for each slip that is forgiven; two slips from nine letters on. */
const LETTERS_PER_SLIP = 4.5

const keyOf = (name: string): string => plainWords(name).join('')

const names = allRefusedNames.map((each) => ({ ...each, key: keyOf(each.name) }))

/**
 * Asks back where a plant that is not in the catalogue may be a refused one, misspelt more than once. Wider than what
 * `expectNotRefused` forgives, since here nothing else is known of the plant.
 */
export const expectUnlikeRefused = (typed: string): void => {
  const key = keyOf(typed)
  if (ORDINARY.has(key)) return
  const near = names.find(
    (each) =>
      each.key.length >= each.typoLetters &&
      editDistance(key, each.key) <= Math.floor(each.key.length / LETTERS_PER_SLIP),
  )
  if (near === undefined) return
  throw new DomainError('ambiguous', 'near_refused', { typed: shown(typed), id: near.refused.id, name: near.name })
}
