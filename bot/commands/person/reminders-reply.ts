import { isHeldBack } from '../../../core/jar/limits/judge-jar.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { ENDLESS, isLapsed, neverComes } from '../../../core/jar/tasks/duty.ts'
import { type IsoDay, isoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt, minutesAt } from '../../../core/quantity/time/zone.ts'
import { type Due, dutySettings, untold } from '../../../store/due.ts'
import type { Person, Place } from '../../../store/person.ts'
import type { Context, Proof } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { dangersReminded } from '../jar/known/jar-dangers.ts'
import { note, row } from '../reply/outcome-reply.ts'
import { remindersActions } from '../reply/reminders-actions.ts'
import { placeExamples } from './place-examples.ts'

type Next = Extract<Message<'cells'>, { key: 'reminders_next' }>['values']['next']

/** The reminders of the earliest moment, those that ask for the same together; what is due by now is one moment. */
function nextOf(due: readonly Due[], person: Person, zone: string, nowMs: number): Next {
  const [first] = due
  if (first === undefined) return null
  const isNow = first.duty.dueMs <= nowMs
  const together = due.filter(({ duty }) => (isNow ? duty.dueMs <= nowMs : duty.dueMs === first.duty.dueMs))
  const nameOf = (jarId: string): string =>
    jarStateOf(person.jars.find(({ id }) => id === jarId)?.entries ?? [])?.name ?? jarId
  const kinds = [...new Set(together.map(({ duty }) => duty.kind))]
  const asked = kinds.map((duty) => ({
    duty,
    names: [...new Set(together.filter((each) => each.duty.kind === duty).map(({ jarId }) => nameOf(jarId)))],
  }))
  const { dueMs } = first.duty
  const [day, today] = [isoDay(dayAt(zone, dueMs)), isoDay(dayAt(zone, nowMs))]
  return { asked, day, atMinutes: minutesAt(zone, dueMs), isNow, today }
}

/** The jars whose last day for straining lies in the pause. */
function closingIn(person: Person, until: IsoDay, { nowMs, assumedZone }: Context) {
  const settings = dutySettings(person.settings, assumedZone)
  const today = isoDay(dayAt(settings.zone, nowMs))
  return person.jars.flatMap(({ entries }) => {
    const asked = agenda(entries, settings, nowMs)
    const { byDay } = [...asked.today, ...asked.coming].find(({ kind }) => kind === 'strain') ?? { byDay: null }
    const isHidden = byDay !== null && byDay >= today && byDay < until
    return isHidden ? [{ name: jarStateOf(entries)?.name ?? '', day: byDay }] : []
  })
}

/** Whether nothing can be written there: from a channel, reminders go to private messages. */
async function isUnreachable(place: Place, isHere: boolean, { lackingAt, isClosed }: Context): Promise<boolean> {
  if (place.kind === 'console') return false
  if (!isHere || place.kind === 'private') return isClosed?.(place) ?? false
  return ((await lackingAt?.(place)) ?? []).some((each) => each !== 'history')
}

/** What is set, and what comes next. */
export async function remindersReply(
  person: Person,
  { isChanged, proof }: { readonly isChanged: boolean; readonly proof: Proof | null },
  context: Context,
): Promise<Reply> {
  const { nowMs, assumedZone, place: here } = context
  const { settings } = person
  const zone = settings.zone ?? assumedZone
  const isAssumed = settings.zone === null
  const today = isoDay(dayAt(zone, nowMs))
  const until = settings.pausedUntil === null || settings.pausedUntil <= today ? null : settings.pausedUntil
  const { atMinutes, shake, drink = 'on' } = settings
  const isTerminal = here.kind === 'console'
  const place: Place = isTerminal ? here : (settings.place ?? { kind: 'private' })
  const isHere = JSON.stringify(place) === JSON.stringify(here)
  const isClosed = await isUnreachable(place, isHere, context)
  // Of what must not be drunk as it is nothing is asked for: a nudge says so too.
  const held = person.jars.flatMap(({ id, entries }) => {
    const story = jarStateOf(entries)
    return story !== null && story.ended === null && isHeldBack(story) ? [{ id, story }] : []
  })
  const coming = untold(person, assumedZone, nowMs).filter(
    ({ duty, jarId }) => !isLapsed(duty, today) && !neverComes(duty) && held.every(({ id }) => id !== jarId),
  )
  const next = nextOf(coming, person, zone, nowMs)
  const closing = until === null ? [] : closingIn(person, until, context)
  return {
    headline: { group: 'headlines', key: 'reminders', values: { isChanged, atMinutes, until, today } },
    table: [
      row('reminders_place', { group: 'cells', key: 'reminders_place', values: { place, isHere, isClosed } }),
      row('reminders_shake', { group: 'cells', key: 'reminders_shake', values: { shake } }),
      row('reminders_next', { group: 'cells', key: 'reminders_next', values: { next, isStopped: until === ENDLESS } }),
      ...inMore([
        row('reminders_time', { group: 'cells', key: 'reminders_time', values: { atMinutes, zone, isAssumed } }),
        row('reminders_drink', { group: 'cells', key: 'reminders_drink', values: { drink } }),
        row('reminders_pause', { group: 'cells', key: 'reminders_pause', values: { until, today } }),
      ]),
    ],
    sure: [],
    notes: [
      ...(proof === 'sent' ? [note('reminders_proved')] : []),
      ...(proof === 'failed' ? [note('reminders_unproved')] : []),
      ...(isAssumed
        ? [
            {
              group: 'notes',
              key: 'reminders_zone_assumed',
              values: { zone, example: placeExamples(context).zone },
            } as const,
          ]
        : []),
      ...(closing.length === 0
        ? []
        : [{ group: 'notes', key: 'reminders_pause_hides', values: { closing, today } } as const]),
      ...(isTerminal ? inMore([note('reminders_only_running')]) : []),
    ],
    cautions: dangersReminded(
      held.map(({ story }) => story),
      settings,
    ),
    actions: isTerminal ? [] : await remindersActions(settings, until, context),
    data: {
      place: place.kind,
      channelId: place.kind === 'channel' ? place.channelId : null,
      time: isoTime(atMinutes),
      zone,
      zoneAssumed: isAssumed,
      shake,
      drink,
      pausedUntil: until,
      next:
        coming[0] === undefined || next === null
          ? null
          : {
              dueAt: new Date(coming[0].duty.dueMs).toISOString(),
              duties: next.asked.map(({ duty, names }) => ({ duty, jars: names })),
            },
    },
    kitchen: 'metric',
  }
}
