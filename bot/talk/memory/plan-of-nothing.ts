import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { liquidsIn, spiritText } from '../frames/liquids.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from './remembered.ts'
import { lacking } from './rule.ts'

/** `Plan that with`, `make it from`, `lo stesso con`. */
const OF_THAT =
  /^(?:(?:and|so|ok|now|please|then|can (?:i|we|you)|could (?:i|we|you)|lets|let s|i d like to|id like to|e|ora|puoi) )*(?:(?:plan|replan|do|make|try|redo|repeat|brew|pianifica|fai|fallo|prova) )?(?:it|that|this|the same(?: one| thing)?|same(?: thing)?|that one|this one|lo stesso|quello|questo)(?: again| one)? (?:with|using|from|on|con)\b/u

/** `Plan that with 2 bottles of rum` where nothing was planned and no jar spoken of: asked what goes in; null where there is something that it is of. */
export function planOfNothing(
  sentence: Sentence,
  { call, worked }: Pick<Remembered, 'call' | 'worked'>,
): TalkReading | null {
  const { bits, typed } = sentence
  if (worked !== null || call !== null || !OF_THAT.test(wordsFrom(typed))) return null
  if (bits.some(({ kind }) => kind === 'plant' || kind === 'jar')) return null
  const liquids = liquidsIn(sentence).filter(({ word, strength }) => word !== null || strength !== null)
  if (liquids.length === 0) return null
  const used = new Set(liquids.flatMap(({ amount, strength, word }) => [amount, strength, word]))
  if (bits.some((bit) => !used.has(bit))) return null
  return lacking({ command: 'plan', options: { spirit: liquids.map(spiritText).join(' + ') } }, 'of')
}
