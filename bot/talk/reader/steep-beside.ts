import type { CallRead, TalkReading } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { withOption } from '../memory/change-call.ts'
import { daysSaid } from './plan-handled.ts'

/** Looked for before anything else: nothing else tells how long. */
const CHEAP = /\b(?:days?|weeks?|months?|night|overnight|hours|hrs|giorn[oi]|settiman[ae]|mes[ei]|notte|ore)\b/iu

/** Where what is said of the steeping may begin. */
const BEGINS =
  /[,;.(–—]\s*|\s(?=(?:and|then|but|just|only|in|for|strain\p{L}*|filter\p{L}*|steep\p{L}*|soak\p{L}*|infus\p{L}*|left|leav\p{L}*|macera\p{L}*|lascia\p{L}*|filtra\p{L}*|overnight|solo|soltanto|per|e|ma|poi)\s)/giu
const ENDS = /[,;.)–—]/u

/** `For 24 hours`, `for just one night`: no day on which anything is to be ready. */
const FOR_HOURS = /^(?:(?:and|then|but|e|poi|ma) )*(?:(?:in|left|it) )*(?:for|per) (?=(?:24|48|72) \p{L}+$|overnight$)/u
/** `For two weeks`, told of a plant in a spirit. */
const FOR_SO_LONG = /^(?:for|per) /u
/** `In two weeks`: when it is to be ready. */
const READY_IN = /^(?:in|within|tra|fra|entro) /u
const OVERNIGHT = /^(?:left )?overnight$/u

/** A part of a sentence that says how long it is to steep, and nothing else. */
function partIn(text: string): { readonly from: number; readonly to: number; readonly days: string } | null {
  for (const { index } of text.matchAll(BEGINS)) {
    const behind = text.slice(index).replace(/^[,;.(–—\s]+/u, '')
    const from = text.length - behind.length
    const end = ENDS.exec(behind)
    const part = end === null ? behind : behind.slice(0, end.index)
    if (!CHEAP.test(part)) continue
    const words = plainWords(part.toLowerCase()).trim()
    const said = OVERNIGHT.test(words) ? 'just overnight' : words.replace(FOR_HOURS, 'just ')
    const isLast = from + part.length === text.length && /[,;]\s*$/u.test(text.slice(0, from))
    const isBare = FOR_SO_LONG.test(words) || (isLast && !READY_IN.test(words))
    const days = daysSaid(said) ?? (isBare ? daysSaid(`just ${words.replace(FOR_SO_LONG, '')}`) : null)
    if (days !== null) return { from, to: from + part.length, days }
  }
  return null
}

/**
 * A plan with how long it is to steep, said beside it: `with fresh mint, in for one day only`, `strain after a day`. Null where nothing of
 * the kind is said, or no plan is read of the rest.
 */
export function withSteep(text: string, read: (text: string) => TalkReading): TalkReading | null {
  if (!CHEAP.test(text) || text.includes('?')) return null
  const part = partIn(text)
  if (part === null) return null
  const before = text.slice(0, part.from).replace(/(?:[\s,;(–—]|\s(?:and|then|but|e|poi|ma))+$/iu, '')
  if (before === '') return null
  const reading = read(`${before}${text.slice(part.to).replace(/^\)/, '')}`)
  const isPlan = (call: CallRead): boolean => call.command === 'plan' && call.options.days === undefined
  const steeped = (call: CallRead): CallRead => (isPlan(call) ? withOption(call, 'days', part.days) : call)
  if (reading.kind === 'question' && isPlan(reading.call))
    return { ...reading, call: steeped(reading.call), choices: reading.choices.map(steeped) }
  return reading.kind === 'call' && isPlan(reading.call) ? { ...reading, call: steeped(reading.call) } : null
}
