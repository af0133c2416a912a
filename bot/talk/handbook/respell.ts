import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { isOneTypo } from '../../../core/spelling/one-typo.ts'
import type { Handbook } from '../../text/messages/handbook.ts'
import { type FoundEntry, findEntry } from './find-entry.ts'
import { indexOf } from './handbook-index.ts'
import { otherMatters } from './other-matters.ts'
import { termOf } from './same-words.ts'
import { smallWords } from './small-words.ts'
import { termsOf } from './terms.ts'

/** Shorter words have too many neighbours. */
const LEAST_LETTERS = 5

const lettersOf = (word: string): string => [...new Set(word)].sort().join('')

/** The one word that this is a slip of, be it in several forms; a first letter is seldom wrong, so that `blight` is not `light`. */
const meantBy = (word: string, words: ReadonlySet<string>): string | null => {
  if (word.length < LEAST_LETTERS || words.has(word) || smallWords.has(word)) return null
  if (otherMatters.has(termOf(word))) return null
  const near = [...words].filter((other) => other[0] === word[0] && isOneTypo(word, other))
  if (new Set(near.flatMap(termsOf)).size === 1) return near[0]!
  // Of several the one with its letters in another order, or one of them doubled, is meant rather than another word.
  const same = near.filter((other) => lettersOf(other) === lettersOf(word))
  return new Set(same.flatMap(termsOf)).size === 1 ? same[0]! : null
}

export interface RespeltEntry extends FoundEntry {
  readonly respelt: readonly { readonly from: string; readonly to: string }[]
}

/** The same with one slip mended in each word that no entry knows: for a sentence that nothing else has understood. */
export function findEntryRespelt(text: string, handbook: Handbook): RespeltEntry | null {
  const { words } = indexOf(handbook)
  const meant = plainWords(text).map((from) => ({ from, to: meantBy(from, words) ?? from }))
  const respelt = meant.filter(({ from, to }) => from !== to)
  if (respelt.length === 0) return null
  const found = findEntry(meant.map(({ to }) => to).join(' '), handbook)
  return found && { ...found, respelt }
}
