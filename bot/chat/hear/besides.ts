import type { TalkReading } from '../../talk/frames/reading.ts'
import type { CallOutcome, Dispatch } from '../run/call-outcome.ts'
import { handbookReply } from './handbook-reply.ts'
import { type Heard, heard } from './heard.ts'

export const topicOutcome = (entry: string, more: readonly string[], { language }: Dispatch): CallOutcome => ({
  ok: true,
  path: 'handbook',
  reply: handbookReply(entry, more, language.handbook),
})

/**
 * What was done, and then what is to be said of a danger that was told with it. Where nothing is done, because something is still
 * asked or there is no such jar, the danger comes first.
 */
export function besides(
  reading: Extract<TalkReading, { kind: 'call' | 'question' }>,
  done: Heard,
  dispatch: Dispatch,
): Heard {
  if (reading.beside === undefined) return done
  const danger = heard(topicOutcome(reading.beside, [], dispatch))
  const isOpen = reading.kind === 'question' || (!done.outcome.ok && done.outcome.error.code === 'not_found')
  return isOpen ? { ...danger, also: [done] } : { ...done, also: [danger] }
}
