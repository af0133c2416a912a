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
const FEW_WORDS = 2

const CLAUSE_ENDS =
  /[.;!?:,]+(?=\s|$)| - | – | (?=(?:and|or|but|so|oh|e|ma|o) (?:oh )?(?:do|does|should|shall|must|may|need|can|could|le|li|la|lo|devo|posso) (?:i|we|they|it|the|you|em|lavo|pelo|tolgo|taglio|sbuccio|snocciolo|metto|schiaccio)\b)/iu

/** How a question ends whichever way it is put: `stones in or out`, `i take out or not`, `dentro o no`. */
const EITHER = /,? (?:or|o)(?: (?:not|no|nah|nope|what|non|meno|cosa))? *$/u

/** What it is asked of, where it is not said as a question: `the stones i leave inside or no`, `peel or juice goes in`. */
const OF_PREPARING =
  /\b(?:stones?|pits?|pips?|skins?|peels?|zest|juice|pith|stems?|stalks?|leaves|rinds?|cores?|noccioli|bucce|buccia|scorz[ae]|succo|picciol[oi]|foglie|whole|crushed|peeled|frozen|fresh|dried|ripe|inter[eaio]|fresch[eaio]|congelat[eaio]|sbucciat[eaio])\b.*\b(?:or|o)\b/u

/** How a clause begins that asks how it is done. */
const ASKS =
  /^(?:and |so |but |or |oh |also |then |e |ma |o |poi )*(?:must they|need i|le|li|la|lo|do|does|is|are|can|could|should|shall|must|may|will|would|posso|devo|dobbiamo|si puo|va|vanno|bisogna|tolgo|lavo|pelo|taglio|serve|conviene|meglio) /u

/** Asked without its mark. */
const BEGUN = /^(?:(?:and|or|so|oh|but) )*(?:do|does|should|shall|must|need|can|could) (?:i|we|they|it|the|you)\b/iu

/** What is done to fruit before it goes in, by the words that ask for it: of what is planned the clause need not say what it is done to. */
const PREPARED: readonly (readonly [words: RegExp, entry: string])[] = [
  [/\b(?:wash\p{L}*|rins(?:e|ed|ing)|scrub\p{L}*|lav(?:o|ano|are|arl[ei]|at[aeio])|sciacqu\p{L}*)\b/u, 'wash_fruit'],
  [/\b(?:frozen|thaw\p{L}*|defrost\p{L}*|congelat[aeio]|surgelat[aeio]|scongel\p{L}*)\b/u, 'frozen_fruit'],
  [/\b(?:stones?|stoned|pits?|pitted|noccioli|nocciolo|snocciol\p{L}*|denocciol\p{L}*)\b/u, 'stones_whole'],
  [/\b(?:prick(?:ed|ing|s)?|forell[oi]|bucherell\p{L}*|bucher\p{L}*|pung\p{L}*)\b/u, 'prick_fruit'],
  [
    /\b(?:crush\p{L}*|mash\p{L}*|squash\p{L}*|chop\p{L}*|cut|whole|schiacci\p{L}*|tagli(?:o|are|arl[ei]|at[aeio])|inter[aeio])\b/u,
    'crush_fruit',
  ],
  [/\b(?:ripe|ripen|riper|softer|soften|overripe|unripe|matur[aeio])\b/u, 'ripe_fruit'],
  [/\b(?:pith|white (?:part|bit)|parte bianca|albedo)\b/u, 'pith'],
]

/** Something else is asked of it, or of something else. */
const OF_OTHERS = /\b(?:bottles?|jars?|syrup|glass(?:es)?|liqueur|freezer|bottigli[ae]|vas[oi]|sciroppo|liquore)\b/u

/** The entry that such a clause asks for; null where none is said, or two are. */
function preparedBy(plain: string): string | null {
  const said = OF_OTHERS.test(plain) ? [] : PREPARED.filter(([words]) => words.test(plain))
  return said.length === 1 ? said[0]![1] : null
}

const OF_PEEL = /\b(?:peel|peeled|skin|skinned|core|cored|deseed|sbucci\p{L}*|pel[oa]r?e?|spell\p{L}*)\b/iu

const LEADS = /^(?:(?:and|so|but|or|oh|also|then|e|ma|o|poi) )+/iu

/** What a plan says itself. */
const OF_PLAN =
  /\b(?:how (?:much|many|long|strong)|ready|enough|bottles?|days|weeks|months|sugar|strong|stronger|sweet|sweeter|cost|would that|does that|is that|quant[oaie]|pront[oa]|bastan?o?|bottigli[ae]|zucchero|forte|dolce)\b/u

function isAskedOfFruit(plain: string): boolean {
  const isQuestion = ASKS.test(plain) || OF_PREPARING.test(plain) || EITHER.test(plain)
  return isQuestion && !OF_PLAN.test(plain) && !/\d/.test(plain) && plain.trim().split(/\s+/).length >= FEW_WORDS
}

/**
 * `A kilo of damsons and a litre of gin, do the stones have to come out?`: what is asked of how it is done, behind what is planned, is
 * answered beside the plan.
 */
export function askedBeside(reading: TalkReading, sentence: Sentence, text: string, find: FindEntry): TalkReading {
  if (reading.kind !== 'call' || reading.call.command !== 'plan' || reading.beside !== undefined) return reading
  const [, ...clauses] = text.split(CLAUSE_ENDS).map((clause) => clause.trim())
  if (!isAsked(sentence) && !text.includes('?') && !clauses.some((clause) => BEGUN.test(clause) || EITHER.test(clause)))
    return reading
  const asked = clauses.findLast((clause) => isAskedOfFruit(`${withoutMarks(clause).toLowerCase()} `))
  if (asked === undefined || refusedIn(asked).length > 0) return reading
  const prepared = preparedBy(withoutMarks(asked).toLowerCase())
  if (prepared !== null) return { ...reading, beside: prepared }
  if (asked.split(/\s+/).length < LEAST_WORDS) return reading
  const found = find(asked.replace(LEADS, '').replace(EITHER, ''))
  if (found !== null && found.share >= WHOLE && found.likelihood >= LIKELY) return { ...reading, beside: found.id }
  // What nothing answers is named.
  if (!OF_PEEL.test(asked)) return reading
  return { ...reading, leftOut: [...reading.leftOut.filter((word) => !asked.includes(word)), asked] }
}
