import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import { symptomIn } from '../frames/symptoms.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { isAsked } from './is-told.ts'

const NOT = /^(?:not|no|nope|non|neither|macchi?e|mica)$/
/** Told as not done, whatever the deed's own word is. */
const NOT_DONE = /^(?:didnt|havent|hasnt|hadnt)$/
const DONE = /^(?:did|have|has|had|got|ho|abbiamo|ha|was|been)$/
const ARTICLE = /^(?:the|my|our|il|lo|la|l|i|gli|le|al|allo|alla|yet|today|still|ancora)$/
const SEPARATOR = /^(?:[,;.&+]|and|but|only|just|ma|e|invece|solo|soltanto)$/

/** `Not the lemon`, `macché limone`, `ma che limone`. */
function isDismissed({ typed: { tokens } }: Sentence, { from }: Bit): boolean {
  let before = from - 1
  while (ARTICLE.test(tokens[before]?.text ?? '')) before--
  const said = tokens[before]?.text ?? ''
  return NOT.test(said) || (/^(?:che|quale)$/.test(said) && tokens[before - 1]?.text === 'ma')
}

/** `Macché limone, ho filtrato lo zenzero, 610 ml`: what is told behind a jar that it was not; null where that tells of a deed itself. */
function behindDismissed(sentence: Sentence, not: Bit, other: Bit): string | null {
  const { typed, spans } = sentence
  const isNext = typed.tokens[not.to]?.kind === 'sign' && not.to < other.from
  const isToldBefore = spans.some(({ concept, from }) => DEEDS.has(concept) && from < not.from)
  const isToldBehind = spans.some(({ concept, from }) => DEEDS.has(concept) && from >= not.to)
  const isBare = isNext && isToldBehind && !isToldBefore && isDismissed(sentence, not) && !isAsked(sentence)
  return isBare ? textFrom(typed, not.to + 1, typed.tokens.length) : null
}

/** Whether it is said of a jar that it was not done: `not the lemon`, `the lemon not yet`, `didn't shake the lemon, …`. */
function isDenied(sentence: Sentence, bit: Bit, other: Bit): boolean {
  const { tokens } = sentence.typed
  const { from, to } = bit
  if (isDismissed(sentence, bit) || NOT.test(tokens[to]?.text ?? '')) return true
  const isSeparator = (at: number): boolean => SEPARATOR.test(tokens[at]?.text ?? ',')
  let [begin, end] = [from, to]
  while (!isSeparator(begin - 1)) begin--
  while (!isSeparator(end)) end++
  if (begin <= other.from && other.to <= end) return false
  const clause = tokens.slice(begin, end)
  return clause.some(({ text }, at) => NOT_DONE.test(text) || (NOT.test(text) && DONE.test(clause[at + 1]?.text ?? '')))
}

/** `I didn't shake the lemon, the ginger I did`: which of two was shaken, or what else was done, as a sentence of that one; null where it is not so told. */
export function notTheOther(sentence: Sentence): string | null {
  const { bits, jars, typed, has, lexicon } = sentence
  const [one, other, another] = jarsNamed(bits, jars)
  if (one === undefined || other === undefined || another !== undefined) return null
  const behind = one.bit.from < other.bit.from ? behindDismissed(sentence, one.bit, other.bit) : null
  if (behind !== null) return behind
  const isPast = has('shook') || typed.tokens.some(({ text }) => NOT_DONE.test(text) || DONE.test(text))
  if (!has('shook', 'shake') || !isPast || isAsked(sentence)) return null
  // What else is told of either is read for itself.
  if (has('taste_word') || symptomIn(sentence) !== null) return null
  const [isOneDenied, isOtherDenied] = [isDenied(sentence, one.bit, other.bit), isDenied(sentence, other.bit, one.bit)]
  if (isOneDenied === isOtherDenied) return null
  const shaken = isOneDenied ? other : one
  const day = bits.find(({ kind, text }) => kind === 'date' && text !== 'today')
  return [lexicon.id === 'it' ? 'ho scosso' : 'shook', shaken.jar.name, day?.text ?? ''].join(' ').trim()
}
