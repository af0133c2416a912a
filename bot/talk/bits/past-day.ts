import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { Bit } from './bit.ts'

/** A day that can only be over: `three days ago`, `ieri`, `last Friday`. */
const PAST = /^(?:yesterday|ieri|last|l altro ieri)\b|\b(?:ago|back|fa|scors[oa])$/

export const isPastDay = ({ kind, text }: Bit): boolean => kind === 'date' && PAST.test(text.toLowerCase())

const TO_COME = /^(?:tomorrow|domani|next|prossim|dopodomani)/
/** Before a day that is to come. */
const UP_TO =
  /(?:^| )(?:by|for|until|till|til|before|next|entro|per|prossim[oa]|(?:this|quest[oa]) (?!morning|afternoon|evening|week|mattina|sera|pomeriggio|settimana)\p{L}+)(?: |$)/u

/** A day that may be over where what happened on it is told as over: `on Sunday`, `this morning`; never `by Sunday`, `this Friday`. */
export function mayBeOver(bit: Bit, tokens: readonly Token[]): boolean {
  if (isPastDay(bit)) return true
  const around = tokens.slice(Math.max(0, bit.from - 1), bit.to).map(({ text }) => text)
  return bit.kind === 'date' && !TO_COME.test(bit.text.toLowerCase()) && !UP_TO.test(around.join(' '))
}
