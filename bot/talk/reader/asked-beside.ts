import { refusedIn } from '../../../core/botanical/refuse/refused-in.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { withoutMarks } from '../lexicon/plain-text.ts'
import type { FindEntry } from './entry-of-clause.ts'
import { isAsked } from './is-told.ts'

/** From here on an entry explains the whole clause. */
const WHOLE = 0.95
const LIKELY = 0.5

const LEAST_WORDS = 3

const CLAUSE_ENDS =
  /[.;!?:,]+(?=\s|$)| - | – | (?=(?:and|or|but|so|oh|e|ma|o) (?:oh )?(?:do|does|should|shall|must|may|need|can|could|le|li|la|lo|devo|posso) (?:i|we|they|it|the|you|em|lavo|pelo|tolgo|taglio|sbuccio|snocciolo|metto|schiaccio)\b)/u

/** How a question ends whichever way it is put: `stones in or out`, `i take out or not`, `dentro o no`. */
const EITHER = /,? (?:or|o)(?: (?:not|no|nah|nope|what|non|meno|cosa))? *$/u

/** What it is asked of, where it is not said as a question: `the stones i leave inside or no`, `peel or juice goes in`. */
const OF_PREPARING =
  /\b(?:stones?|pits?|pips?|skins?|peels?|zest|juice|pith|stems?|stalks?|leaves|rinds?|cores?|noccioli|bucce|buccia|scorz[ae]|succo|picciol[oi]|foglie)\b.*\b(?:or|o)\b/u

/** How a clause begins that asks how it is done. */
const ASKS =
  /^(?:and |so |but |or |oh |also |then |e |ma |o |poi )*(?:need i|le |li |la |lo |do|does|is|are|can|could|should|shall|must|may|will|would|posso|devo|dobbiamo|si puo|va|vanno|bisogna|tolgo|lavo|pelo|taglio|serve|conviene|meglio) /u

const LEADS = /^(?:(?:and|so|but|or|oh|also|then|e|ma|o|poi) )+/iu

/** What a plan says itself. */
const OF_PLAN =
  /\b(?:how (?:much|many|long|strong)|ready|enough|bottles?|days|weeks|months|sugar|strong|stronger|sweet|sweeter|cost|would that|does that|is that|quant[oaie]|pront[oa]|bastan?o?|bottigli[ae]|zucchero|forte|dolce)\b/u

/**
 * `A kilo of damsons and a litre of gin, do the stones have to come out?`: what is asked of how it is done, behind what is planned, is
 * answered beside the plan.
 */
export function askedBeside(reading: TalkReading, sentence: Sentence, text: string, find: FindEntry): TalkReading {
  if (reading.kind !== 'call' || reading.call.command !== 'plan' || reading.beside !== undefined) return reading
  const [, ...clauses] = text.split(CLAUSE_ENDS).map((clause) => clause.trim())
  if (!isAsked(sentence) && !text.includes('?') && !clauses.some((clause) => EITHER.test(clause))) return reading
  const asked = clauses
    .findLast((clause) => {
      const plain = `${withoutMarks(clause).toLowerCase()} `
      const isQuestion = ASKS.test(plain) || OF_PREPARING.test(plain) || EITHER.test(plain)
      return isQuestion && !OF_PLAN.test(plain) && !/\d/.test(plain) && clause.split(/\s+/).length >= LEAST_WORDS
    })
    ?.replace(LEADS, '')
    .replace(EITHER, '')
  const found = asked === undefined || refusedIn(asked).length > 0 ? null : find(asked)
  return found === null || found.share < WHOLE || found.likelihood < LIKELY ? reading : { ...reading, beside: found.id }
}
