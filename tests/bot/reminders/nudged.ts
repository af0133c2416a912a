import type { Reply } from '../../../bot/chat/reply.ts'
import { nudgeReply } from '../../../bot/reminders/nudge-reply.ts'
import { intend, type Now } from '../../../bot/reminders/prepare-nudge.ts'
import type { Person, Place } from '../../../store/person.ts'
import { at, jarOf } from './people.ts'

export const STARTED = at('2026-12-01', '18:00')

export const lemon = jarOf({ name: 'lemon', startedMs: STARTED })
export const walnut = jarOf({ name: 'walnut', startedMs: STARTED })
export const ginger = jarOf({
  name: 'ginger',
  startedMs: STARTED,
  plan: { strainFrom: '2026-12-10', strainBy: '2026-12-20' },
})

/** What the nudge says that is due; throws where none is. */
export const nudgedReply = (person: Person, now: Now, kind: 'console' | 'private' = 'console'): Reply => {
  const place: Place = { kind }
  const intent = intend('local', person, new Map(), now, { placeOf: () => place, after: () => null })
  if (intent?.nudge == null) throw new Error('nothing is due')
  return nudgeReply(person, intent.nudge, { mayHaveBeenSeen: false, isMoved: false }, now)
}
