import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import { SHORT_ORDINARY } from '../../spelling/ordinary-words.ts'
import { keyOf } from '../names/name-index.ts'
import type { RefusalId } from '../refused.ts'
import { farNameIn } from './far-refused.ts'
import { nearNameIn, nearSpans } from './near-refused.ts'
import { byName, isDeniedAt, TALKED_OF, TELLING_LETTERS, withoutLikeness } from './refused-words.ts'

/** Words of a name that are looked at together. */
const MOST_WORDS = 4

/**
 * A refused plant that some words of a sentence are a slip away from, or null: `hemlok root`, `lilly of the valley`. Asked
 * of sentences that are not understood; a name that is written right, and was denied, is none.
 */
export function nearRefusedIn(text: string): DomainError | null {
  const words = plainWords(withoutLikeness(text))
  const near = nearSpans(words, MOST_WORDS)
  if (near.length === 0) return null
  for (let at = 0; at < words.length; at++) {
    for (let count = 1; count <= Math.min(MOST_WORDS, words.length - at); count++) {
      if (!near.some(({ from, to }) => at <= from && to <= at + count)) continue
      const said = words.slice(at, at + count).join(' ')
      if (said.replaceAll(' ', '').length < TELLING_LETTERS - 2 || byName.has(keyOf(nameWords(said)))) continue
      if (isDeniedAt(words, at) || nameWords(words[at]!).length + nameWords(words[at + count - 1]!).length < 2) continue
      const named = nearNameIn(said)
      if (named === null || TALKED_OF.has(named.refused.id) || named.name.length < TELLING_LETTERS - 1) continue
      const own = nameWords(said)
      if (named.words.length !== own.length) continue
      if (own.some((word, place) => word !== named.words[place] && SHORT_ORDINARY.has(word))) continue
      return nearProblem(said, named.refused.id, named.name)
    }
  }
  return null
}

/** The same of a word that is two slips away: asked of sentences of which nothing is understood. */
export function farRefusedIn(text: string): DomainError | null {
  const words = plainWords(withoutLikeness(text))
  for (let at = 0; at < words.length; at++) {
    const far = isDeniedAt(words, at) || byName.has(words[at]!) ? null : farNameIn(words[at]!)
    if (far !== null && !TALKED_OF.has(far.refused.id)) return nearProblem(words[at]!, far.refused.id, far.name)
  }
  return null
}

const nearProblem = (typed: string, id: RefusalId, name: string): DomainError =>
  new DomainError('ambiguous', 'near_refused', { typed: shown(typed), id, name })

/** A refused plant that one of a few words is a slip away from, or null: asked of the words that mean nothing else. */
export function nearRefusedSaid(words: string): DomainError | null {
  const near = nearNameIn(words) ?? farNameIn(words)
  if (near === null) return null
  return nearProblem(words, near.refused.id, near.name)
}
