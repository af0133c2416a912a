import { textFrom } from '../../../core/quantity/read/tokens.ts'
import { withoutMarks } from '../lexicon/plain-text.ts'
import type { RolesAround } from './attach.ts'
import type { Bit } from './bit.ts'

/** What is not there, or not wished, by the words directly before it. */
const DENIED =
  /\b(?:no|without|minus|skip|except|senza|niente|tranne|escluso|non (?:ho|abbiamo|trovo|uso|voglio|mi piace|vendono|hanno|c e|si trova|esiste)(?: (?:trovato|piu))?(?: (?:la|il|l))?|(?:ran|run|running|am|are|were|im|all|right|clean|completely|but|and|so) out of|(?:cant|cannot|couldnt) (?:get|find|buy|use|stand)|(?:dont|doesnt|havent|hasnt|didnt) (?:have|got|get|like|want|use|drink|sell|stock|keep)|havent|ho finito(?: la| il)?|finit[oa] la|hate|odio(?: la| il)?|instead of|rather than|invece di|invece del|invece della|al posto di|al posto del|al posto della)(?: (?:any|the|more|some|strong|plain|enough|my|that|di|del|della|dell|alcuna?))?$/

/** Said behind it: `pure alcohol can’t be found here`, `l’alcol puro non si trova`. */
const IS_NOT_THERE =
  /^(?:(?:at|of|strength|stuff|here|round here|around here|over here|in this country|puro|pura|a|qui|da noi|in casa) )*(?:(?:cant|cannot|can not|couldnt) be (?:found|had|bought|got)|(?:isnt|is not|arent|wasnt|is never) (?:sold|for sale|available|stocked|to be had|to be found|in the shops?)|(?:is|was) (?:nowhere|unobtainable|impossible to (?:get|find|buy))|non (?:si (?:trova|vende|compra)|c e|lo vendono|la vendono|esiste|e in vendita))(?!\p{L})/u

const MOST_ON = 9

/** `Out of gin, only rum`; `damson liqueur out of gin` is made of it. */
const OUT_OF = /^out of(?: (?:any|the|my|that))?$/

const MOST_BACK = 6

/** `Not gin, rum`: only where another is named. */
const NOT = /\b(?:not|non)(?: (?:the|a|la|il))?$/

/** Between a drink and its strength. */
const OF = /^(?:at|of|a|al|da|di)$/

const NUMBER_OF = /^(?:no|number|numero)$/

const isSpirit = ({ kind, value }: Bit): boolean =>
  kind === 'spirit' ||
  (kind === 'strength' && value >= 35) ||
  // `They don’t sell 95`.
  (kind === 'bare' && value >= 90 && value <= 97)

/**
 * The bits without the spirits that a sentence says are not there: `no vodka`, `senza gin`, `can’t get 95%, only vodka`. A strength
 * that follows its drink goes with it.
 */
export function withoutDenied({ typed }: RolesAround, bits: readonly Bit[]): readonly Bit[] {
  const isDenied = (bit: Bit, at: number): boolean => {
    if (!isSpirit(bit)) return false
    const before = textFrom(typed, Math.max(0, bit.from - MOST_BACK), bit.from)
    const words = withoutMarks(before).trim()
    if (NUMBER_OF.test(words) && bit.kind === 'strength') return false
    if (DENIED.test(words) || OUT_OF.test(words)) return true
    const behind = textFrom(typed, bit.to, Math.min(typed.tokens.length, bit.to + MOST_ON))
    if (IS_NOT_THERE.test(withoutMarks(behind).trim())) return true
    return NOT.test(words) && bits.some((other, place) => place !== at && isSpirit(other))
  }
  const denied = new Set(bits.filter(isDenied))
  if (denied.size === 0) return bits
  const isOfDenied = (bit: Bit, at: number): boolean => {
    const before = bits[at - 1]
    return (
      bit.kind !== before?.kind &&
      isSpirit(bit) &&
      before !== undefined &&
      denied.has(before) &&
      (before.to === bit.from || (before.to + 1 === bit.from && OF.test(typed.tokens[before.to]!.text)))
    )
  }
  return bits.filter((bit, at) => !denied.has(bit) && !isOfDenied(bit, at))
}
