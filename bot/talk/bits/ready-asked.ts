import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import type { Sentence } from './bit.ts'
import { jarsNamed, runningAmong } from './jars-of.ts'

/** Of a batch that is still to be begun: `will a cherry one be done for Easter`. */
const TO_BEGIN =
  /\b(?:an?|una?) (?:\p{L}+ )?one\b|\b(?:start|begin|made|make (?:an?|some|one)|put (?:on|up)|inizi|cominci|prepar|facc)\p{L}*/u

const READY =
  /\b(?:ready|done|drinkable|finished|(?:drink|open|serve|have|give|pour) (?:it|them|this|that)|make it|will it make|(?:too|enough) (?:soon|late|early|time)|time enough|pront[oaie]|berl[oaie]|bere|bevibil[ei]|servirl[oaie]|regalarl[oaie]|(?:in|a) tempo)\b/

/** Whether it is asked of what can be drunk. */
export const isOfReady = (words: string): boolean => READY.test(words) && !TO_BEGIN.test(words)

const PAST = /^(?:today|yesterday|ieri|oggi)$|\b(?:ago|fa)$/

/** `Ready for the 20th?`, `will the ginger be done by Christmas`: whether a jar that stands there will be; nothing is planned by it. */
export function isReadyAsked({
  bits,
  jars,
  spans,
  typed,
}: Pick<Sentence, 'bits' | 'jars' | 'spans' | 'typed'>): boolean {
  const running = runningAmong(jars)
  const says = (...concepts: readonly string[]): boolean => spans.some(({ concept }) => concepts.includes(concept))
  const isDay = bits.some(({ kind, text }) => kind === 'date' && !PAST.test(text))
  const isAsked = says('asking', 'hypothesis', 'would_it', 'may_i') || typed.tokens.some(({ text }) => text === '?')
  if (running.length === 0 || !isDay || !isAsked || [...DEEDS].some((deed) => says(deed)) || says('remind', 'put_off'))
    return false
  const named = jarsNamed(bits, running)
  const isOwn = bits.every(
    (bit) => bit.kind === 'date' || bit.role === 'gone' || named.some((each) => each.bit === bit),
  )
  const words = wordsFrom(typed)
  return isOwn && isOfReady(words)
}
