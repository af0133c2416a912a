import { wordAt } from '../../../core/quantity/read/tokens.ts'
import { isMonth } from '../../../core/quantity/time/part-of-month.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { daysUntil } from '../frames/steep-until.ts'
import { withOption } from '../memory/change-call.ts'
import type { Remembered } from '../memory/remembered.ts'
import { planMeant } from './plan-asked.ts'

const LEAD =
  '(?:(?:ok|okay|right|so|then|yes|great|good|well|and|but|no|actually|maybe|please|e|ma|allora|va bene|si) )*'
const WISH =
  '(?:(?:i|we|ill|well|id|lets|let us|will|ll|can|could|shall|would|like|want|am|im|m|were|are|going|gonna|plan|planning|hope|intend|to|only|just|not|until|vorrei|voglio|posso|possiamo|vogliamo|lo|la|li) )*'
const START =
  '(?:start|begin|make|do|starting|beginning|making|doing|set|put|inizi(?:o|amo|a|are|arlo|alo|ero|eremo)|cominci(?:o|amo|a|are|arlo|alo|ero|eremo)|parto|partiamo|facci(?:o|amo)lo|lo faccio|lo facciamo)'
const IT =
  '(?:(?:it|this|that|them|one|jar|batch|the|off|up|on|going|only|in|from|at|for|next|coming|not|before|until|about|around|of|sometime|when they are in season|lo|a|da|dal|il|di|per|solo) ?)*'

/** `Start it`, around the day that it is said of. */
const STARTS = new RegExp(`^${LEAD}${WISH}${START} ?${IT}$`, 'u')

/** The day to come that a line names, as an option takes it, and where it stands; a month alone is its first day. */
function dayAhead({
  bits,
  typed,
  today,
}: Sentence): { readonly text: string; readonly at: readonly [number, number] } | null {
  const [day, another] = bits
  if (another !== undefined) return null
  if (day !== undefined)
    return day.kind === 'date' && daysUntil(day, { today }) !== null ? { text: day.text, at: [day.from, day.to] } : null
  const month = typed.tokens.findIndex(({ text }) => isMonth(text))
  if (month < 1 || !/^(?:in|next|until|a|ad|from|of|di|da)$/.test(wordAt(typed, month - 1))) return null
  return { text: `1 ${wordAt(typed, month)}`, at: [month, month + 1] }
}

/**
 * `Start it in June`, `I’ll start it next Saturday`, behind a plan: no jar is begun before its day. The plan is told from that day on, and
 * that nothing is written down yet. Null where no day to come is said.
 */
export function startAhead(sentence: Sentence, said: Remembered): TalkReading | null {
  const { typed } = sentence
  const plan = planMeant(said)
  if (
    plan === null ||
    !/^(?:plan|again)$/.test(plan.call.command) ||
    typed.tokens.length > 16 ||
    typed.text.includes('?')
  )
    return null
  const day = dayAhead(sentence)
  if (day === null) return null
  const words = typed.tokens
    .flatMap(({ kind, text }, at) => (kind === 'sign' || (day.at[0] <= at && at < day.at[1]) ? [] : [text]))
    .join(' ')
    .replace(/['’]/gu, '')
  if (!STARTS.test(words)) return null
  const { 'ready-by': _, ...options } = plan.call.options
  const call = withOption({ ...plan.call, options }, 'start', day.text)
  return { kind: 'call', call, does: 'compute', leftOut: [], isAhead: true }
}
