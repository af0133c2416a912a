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

const CLAUSE_ENDS = /[.;!?:,]+(?=\s|$)| - | – /u

/** How a clause begins that asks how it is done. */
const ASKS =
  /^(?:and |so |but |also |then |e |ma |poi )*(?:do|does|is|are|can|could|should|shall|must|may|will|would|posso|devo|dobbiamo|si puo|va|vanno|bisogna|tolgo|lavo|pelo|taglio|serve|conviene|meglio) /u

/** What a plan says itself. */
const OF_PLAN =
  /\b(?:how (?:much|many|long|strong)|ready|enough|bottles?|days|weeks|months|sugar|strong|stronger|sweet|sweeter|cost|would that|does that|is that|quant[oaie]|pront[oa]|bastan?o?|bottigli[ae]|zucchero|forte|dolce)\b/u

/**
 * `A kilo of damsons and a litre of gin, do the stones have to come out?`: what is asked of how it is done, behind what is planned, is
 * answered beside the plan.
 */
export function askedBeside(reading: TalkReading, sentence: Sentence, text: string, find: FindEntry): TalkReading {
  if (reading.kind !== 'call' || reading.call.command !== 'plan' || reading.beside !== undefined) return reading
  if (!isAsked(sentence) && !text.includes('?')) return reading
  const [, ...clauses] = text.split(CLAUSE_ENDS).map((clause) => clause.trim())
  const asked = clauses.findLast((clause) => {
    const plain = `${withoutMarks(clause).toLowerCase()} `
    return ASKS.test(plain) && !OF_PLAN.test(plain) && !/\d/.test(plain) && clause.split(/\s+/).length >= LEAST_WORDS
  })
  const found = asked === undefined || refusedIn(asked).length > 0 ? null : find(asked)
  return found === null || found.share < WHOLE || found.likelihood < LIKELY ? reading : { ...reading, beside: found.id }
}
