import { type DutyKind, ENDLESS, type ShakeRhythm } from '../../../core/jar/tasks/duty.ts'
import { dayFromIso, type IsoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import type { Place } from '../../../store/person.ts'
import type { Format } from '../format.ts'
import { dayWords, onDay } from './jar/day-words.ts'
import { type Asked, askedText } from './jar/duty-words.ts'
import { listed } from './phrases.ts'

const placeWords: Readonly<Record<Exclude<Place['kind'], 'channel'>, string>> = {
  console: 'this terminal, while I run here',
  private: 'private messages to you',
}

const rhythmWords: Readonly<Record<ShakeRhythm, string>> = {
  daily: 'daily',
  every_other_day: 'every other day',
  off: 'never',
}

interface Dated {
  readonly until: IsoDay | null
  readonly today: IsoDay
}

interface Next {
  readonly asked: readonly (Asked & { readonly duty: DutyKind })[]
  readonly day: IsoDay
  readonly atMinutes: number
  readonly isNow: boolean
  readonly today: IsoDay
}

const nextText = ({ day, today, atMinutes, isNow }: Next, format: Format): string => {
  if (isNow) return 'due now'
  return format.moment(dayFromIso(day), atMinutes, `${onDay(day, today, format)} at ${isoTime(atMinutes)}`)
}

/** What `/reminders` says. */
export const remindersSentences = {
  headlines: {
    reminders: (
      { isChanged, atMinutes, until, today }: Dated & { isChanged: boolean; atMinutes: number },
      format: Format,
    ) => {
      if (until === ENDLESS) return `${isChanged ? 'Noted: I’ve' : 'I’ve'} stopped reminding you until you say so.`
      const begin = isChanged ? 'Noted: reminders' : 'Reminders'
      return until === null
        ? `${begin} come at ${isoTime(atMinutes)}.`
        : `${begin} pause and come again on ${dayWords(until, today, format)}, that day included, at ${isoTime(atMinutes)}.`
    },
  },

  rows: {
    reminders_place: () => 'Where',
    reminders_time: () => 'When',
    reminders_shake: () => 'Shaking',
    reminders_pause: () => 'Pause',
    reminders_next: () => 'Next',
  },

  cells: {
    reminders_place: (
      { place, isHere, isClosed }: { readonly place: Place; readonly isHere: boolean; readonly isClosed: boolean },
      format: Format,
    ) => {
      if (place.kind === 'private' && isClosed) {
        return 'private messages, but Discord didn’t let me send you the last one: allow messages from people in a server we share'
      }
      if (place.kind !== 'channel') return placeWords[place.kind]
      const where = isHere ? 'this channel' : format.channel(place.channelId)
      return isClosed ? `${where}, where I cannot write any more: they come in private messages to you` : where
    },
    reminders_time: (values: { readonly atMinutes: number; readonly zone: string; readonly isAssumed: boolean }) =>
      `${isoTime(values.atMinutes)} in ${values.zone}${values.isAssumed ? ' (assumed)' : ''}`,
    reminders_shake: ({ shake }: { readonly shake: ShakeRhythm }) => rhythmWords[shake],
    reminders_pause: ({ until, today }: Dated, format: Format) =>
      until === null
        ? 'none'
        : until === ENDLESS
          ? 'until you start them again'
          : `until ${dayWords(until, today, format)}`,
    reminders_next: (
      { next, isStopped }: { readonly next: Next | null; readonly isStopped: boolean },
      format: Format,
    ) =>
      next === null
        ? isStopped
          ? 'none while they are stopped'
          : 'none: no jar asks for anything'
        : `${nextText(next, format)}: ${next.asked.map(askedText).join('; ')}`,
  },

  notes: {
    reminders_zone_assumed: ({ zone }: { readonly zone: string }) =>
      `You chose no time zone, so I go by ${zone}; to go by a city near you, type for example /reminders zone:Rome`,
    /** What the pause keeps from being said in time. */
    reminders_pause_hides: (
      {
        closing,
        today,
      }: { readonly closing: readonly { readonly name: string; readonly day: IsoDay }[]; readonly today: IsoDay },
      format: Format,
    ) =>
      `The pause keeps silent about straining ${listed(closing.map(({ name, day }) => `${name} (by ${dayWords(day, today, format)})`))}; /jar list shows it meanwhile.`,
    /** A message was sent to the place. */
    reminders_proved: () => 'I’ve just sent you a message there. Reminders come to the same place.',
    reminders_unproved: () => 'Discord didn’t take my trial message just now. Choose the place again in a while.',
    /** At somebody's first jar, above the buttons. */
    reminders_where: ({ isPrivate, isHere }: { readonly isPrivate: boolean; readonly isHere: boolean }) => {
      if (isPrivate)
        return 'I’ll remind you here, in private. Press the button and I’ll send a message to show that it works.'
      return isHere
        ? 'Where shall I remind you, in private or here? Press a button and I’ll send a message there.'
        : 'I’ll remind you in private. Press the button and I’ll send a message to show that it works.'
    },
    reminders_only_running: () =>
      'Reminders reach you here while I run; what falls due meanwhile is said at the next start.',
  },

  actions: {
    reminders_private: () => 'Remind me in private',
    reminders_here: () => 'Remind me here',
    reminders_time: () => 'Time…',
    reminders_stop: () => 'Stop reminders',
    reminders_start: () => 'Start them again',
    nudge_reminders: () => 'Reminders…',
  },
}

/** Help for `/reminders`. */
export const remindersText = {
  summary: 'Where and when your jars remind you: shows it, or changes what you give',
  options: {
    place: 'here is where you are writing, private a message to you alone',
    time: 'Time of day: 9, 09:00, 9 am, 18.30',
    zone: 'A city near you or a zone: Rome, Europe/Rome, UTC; default takes it back',
    shake: 'How often to be reminded to shake: daily, every other day, or off',
    'pause-until': 'The day on which reminders come again: 7 January; “further notice” stops them; off ends the pause',
  },
  examples: ['/reminders', '/reminders time:18.30 shake:every other day', '/reminders pause-until:7 January'],
}
