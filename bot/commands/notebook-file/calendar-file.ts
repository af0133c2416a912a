import type { Settings } from '../../../store/person.ts'
import type { ReplyFile } from '../../chat/reply.ts'
import { clean } from '../../text/clean.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import type { Message, Words } from '../../text/words.ts'
import { remindedIn } from '../jar/known/reminded-in.ts'
import type { Coming } from './coming.ts'

/** How long it stands in the calendar; it blocks no time there. */
const LASTS_MS = 15 * 60_000
const MINUTE_MS = 60_000

const headlineOf = ({ story, duty }: Coming, settings: Settings): Message<'headlines'> => {
  return {
    group: 'headlines',
    key: 'nudge',
    values: { asked: [{ duty: duty.kind, jars: [remindedIn(settings)({ story, duty })] }], held: [], today: duty.day },
  }
}

const howOf = ({ duty: { kind } }: Coming): Message<'notes'> | null =>
  kind === 'taste' || kind === 'strain' ? { group: 'notes', key: 'nudge_how', values: { duties: [kind] } } : null

const plain = (text: string): string => clean(text).replaceAll('\u00a0', ' ').trim()

/**
 * Reminders as a calendar (RFC 5545) in UTC: what calls itself the same replaces what an earlier one brought, since its
 * SEQUENCE counts the minutes.
 */
export async function calendarText(
  coming: readonly Coming[],
  nowMs: number,
  words: Words,
  kitchen: Kitchen,
  settings: Settings,
): Promise<string> {
  // Loaded here, so that no other command waits for it.
  const { ICalAlarmType, ICalCalendar, ICalCalendarMethod, ICalEventTransparency } = await import('ical-generator')
  const calendar = new ICalCalendar({
    prodId: { company: 'Larderbell', product: 'Larderbell' },
    method: ICalCalendarMethod.PUBLISH,
  })
  for (const each of coming) {
    const { uid, duty } = each
    const summary = plain(words.say<'headlines'>(headlineOf(each, settings), kitchen)).replace(/\.$/, '')
    const how = howOf(each)
    calendar.createEvent({
      id: uid,
      stamp: new Date(nowMs),
      sequence: Math.max(0, Math.floor(nowMs / MINUTE_MS)),
      start: new Date(duty.dueMs),
      end: new Date(duty.dueMs + LASTS_MS),
      summary,
      ...(how !== null && { description: plain(words.say<'notes'>(how, kitchen)) }),
      transparency: ICalEventTransparency.TRANSPARENT,
      alarms: [{ type: ICalAlarmType.display, trigger: 0, description: summary }],
    })
  }
  // RFC 5545, 3.1: every line ends so, and ical-generator leaves it out at the last.
  return `${calendar.toString().trimEnd()}\r\n`
}

export const calendarFile = (coming: readonly Coming[], nowMs: number, settings: Settings): ReplyFile => ({
  name: 'larderbell.ics',
  mime: 'text/calendar',
  alt: { group: 'files', key: 'calendar_file', values: { count: coming.length } },
  draw: async (words, kitchen) => new TextEncoder().encode(await calendarText(coming, nowMs, words, kitchen, settings)),
})
