import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import type { AskBack, AskId } from '../ask-back.ts'
import { byAskWord, byName, keyOf, LONGEST_NAME_WORDS } from '../names/name-index.ts'

/** Kitchen plants whose name in a garden is also that of one that kills. */
const DEADLY: ReadonlySet<AskId> = new Set(['laurel', 'wild_fennel', 'crocus', 'illicium', 'juniperus', 'conifer'])

/** Bay is such a one where it grows, not where it is sold. */
const GROWING =
  /\b(?:garden|hedge|hedgerow|tree|bush|shrub|outside|wild|park|neighbou?rs?|giardino|siepe|albero|cespuglio|pianta|parco|vicin[oa]|selvatic[oa]|orto)\b/

/** The word at a place that is asked about, the longest; nothing where it is part of a name that is told. */
function askedAt(words: readonly string[], at: number): { readonly ask: AskBack | null; readonly next: number } {
  for (let count = Math.min(LONGEST_NAME_WORDS, words.length - at); count > 0; count--) {
    const [first, last] = [words[at]!, words[at + count - 1]!]
    if (nameWords(first).length === 0 || nameWords(last).length === 0) continue
    const key = keyOf(nameWords(words.slice(at, at + count).join(' ')))
    if (byName.has(key)) return { ask: null, next: at + count }
    const ask = byAskWord.get(key)?.[0]
    if (ask !== undefined) return { ask, next: at + count }
  }
  return { ask: null, next: at + 1 }
}

/**
 * What is to be asked of a plant in a sentence that may be one that kills, or null: `laurel leaves, may I use them?`. Bay is
 * asked about where it grows, and anywhere with `isBayAsked`. Never throws.
 */
export function mistakenIn(text: string, isBayAsked: boolean): DomainError<'unclear_botanical'> | null {
  const words = plainWords(text)
  const isBay = isBayAsked || GROWING.test(words.join(' '))
  for (let at = 0; at < words.length; ) {
    const { ask, next } = askedAt(words, at)
    if (ask !== null && (DEADLY.has(ask.id) || (isBay && ask.id === 'bay'))) {
      const { id, choices, refused } = ask
      return new DomainError('ambiguous', 'unclear_botanical', { typed: shown(text), ask: id, choices, refused })
    }
    at = next
  }
  return null
}
