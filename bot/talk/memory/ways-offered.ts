import type { CallRead, OfferedWay, TalkReading } from '../frames/reading.ts'
import { changedBy } from './change-call.ts'
import { eitherOf } from './rule.ts'

const MOST_WAYS = 3

/** Its word, seen from what was worked out last; null where it has none. */
function wayOf(offer: CallRead, last: CallRead): OfferedWay | null {
  if (offer.command === 'jar start') return 'start'
  if (offer.command === 'shopping') return 'shopping'
  const [option, another] = offer.command === last.command ? changedBy(offer, last) : []
  if (another !== undefined) return null
  // A plan offers only to be made drier, and only to be made stronger.
  return option === 'to-sweetness' ? 'drier' : option === 'to-strength' ? 'stronger' : null
}

/** `Yes` to several that were offered: which, by the words that do each; by whole lines where one has no such word. */
export function whichOffered(last: CallRead, offered: readonly [CallRead, ...(readonly CallRead[])]): TalkReading {
  const choices = offered.slice(0, MOST_WAYS)
  const ways = choices.flatMap((offer) => wayOf(offer, last) ?? [])
  if (ways.length < choices.length) return eitherOf(offered[0], choices)
  return { kind: 'question', call: offered[0], about: { kind: 'which_offered', ways }, choices, leftOut: [] }
}
