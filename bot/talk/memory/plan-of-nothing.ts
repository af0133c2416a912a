import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { liquidsIn, spiritText } from '../frames/liquids.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from './remembered.ts'
import { lacking } from './rule.ts'

/** `Plan that with`, `make it from`, `lo stesso con`. */
const OF_THAT =
  /^(?:(?:and|so|ok|now|please|then|can (?:i|we|you)|could (?:i|we|you)|lets|let s|i d like to|id like to|e|ora|puoi) )*(?:(?:plan|replan|do|make|try|redo|repeat|brew|pianifica|fai|fallo|prova) )?(?:it|that|this|the same(?: one| thing)?|same(?: thing)?|that one|this one|lo stesso|quello|questo)(?: again| one)? (?:with|using|from|on|con)\b/u

/** `Ok start it`. */
const START_IT =
  /^(?:(?:ok|okay|right|yes|yeah|great|good|so|now|then|please|lets|let s|i ll|ill|si|va bene|allora|bene) )*(?:start|begin|inizia|iniziamo|iniziamol[oa]|comincia|cominciamo|avvia)(?: (?:it|this|that|this one|that one|the jar|this jar|it then|lo|la))?(?: (?:now|then|please|today|adesso|ora|oggi))*$/u

/** `Plan that with 2 bottles of rum` where nothing was planned and no jar spoken of: asked what goes in, as of `start it`; null where there is something that it is of. */
export function planOfNothing(
  sentence: Sentence,
  { call, worked, question }: Pick<Remembered, 'call' | 'worked' | 'question'>,
): TalkReading | null {
  const { bits, typed } = sentence
  if (worked !== null || call !== null) return null
  const isAsked = typed.tokens.some(({ text }) => text === '?')
  if (question === null && !isAsked && START_IT.test(wordsFrom(typed)))
    return lacking({ command: 'jar start', options: {} }, 'of')
  if (!OF_THAT.test(wordsFrom(typed))) return null
  if (bits.some(({ kind }) => kind === 'plant' || kind === 'jar')) return null
  const liquids = liquidsIn(sentence).filter(({ word, strength }) => word !== null || strength !== null)
  if (liquids.length === 0) return null
  const used = new Set(liquids.flatMap(({ amount, strength, word }) => [amount, strength, word]))
  if (bits.some((bit) => !used.has(bit))) return null
  return lacking({ command: 'plan', options: { spirit: liquids.map(spiritText).join(' + ') } }, 'of')
}
