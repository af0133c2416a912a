import { saidText } from '../../quantity/said/said-text.ts'
import { nameWords } from '../../spelling/normalise-name.ts'
import type { AskBack } from '../ask-back.ts'
import { askBacks } from '../names/ambiguous-names.ts'
import { byAskWord, keyOf } from '../names/name-index.ts'

/** The question that the name of a plant among its amounts calls for (`1 cinnamon stick`: which cinnamon); null where none does. */
export function askedWhich(item: string): AskBack | null {
  const words = saidText(item).tokens.flatMap(({ kind, text }) => (kind === 'word' ? nameWords(text) : []))
  for (let from = 0; from < words.length; from++) {
    const found = byAskWord.get(keyOf(words.slice(from)))?.[0]
    if (found !== undefined) return found
  }
  return null
}

/** The questions that a plant of the catalogue, by its id, is an answer of. */
export const asksFor = (id: string): readonly AskBack[] => askBacks.filter(({ choices }) => choices.includes(id))
