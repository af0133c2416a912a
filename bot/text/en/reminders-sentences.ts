import type { DutyKind, ShakeRhythm } from '../../../core/jar/duty.ts'
import { dayFromIso, type IsoDay, isoTime } from '../../../core/quantity/calendar.ts'
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
      if (place.kind !== 'channel') return placeWords[place.kind]
      const where = isHere ? 'this channel' : format.channel(place.channelId)
      return isClosed ? `${where}, where I cannot write any more: they come in private messages to you` : where
    },
    reminders_time: (values: { readonly atMinutes: number; readonly zone: string; readonly isAssumed: boolean }) =>
      `${isoTime(values.atMinutes)} in ${values.zone}${values.isAssumed ? ' (assumed)' : ''}`,
    reminders_shake: ({ shake }: { readonly shake: ShakeRhythm }) => rhythmWords[shake],
    reminders_pause: ({ until, today }: Dated, format: Format) =>
      until === null ? 'none' : `until ${dayWords(until, today, format)}`,
    reminders_next: ({ next }: { readonly next: Next | null }, format: Format) =>
      next === null
        ? 'none: no jar asks for anything'
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
    reminders_only_running: () =>
      'Reminders reach you here while I run; what falls due meanwhile is said at the next start.',
  },
}

/** Help for `/reminders`. */
export const remindersText = {
  summary: 'Where and when your jars remind you: shows it, or changes what you give',
  options: {
    place: 'here is where you are writing, private a message to you alone, console the terminal',
    time: 'Time of day: 9, 09:00, 9 am, 18.30',
    zone: 'A city near you or a zone: Rome, Europe/Rome, UTC; default takes it back',
    shake: 'How often to be reminded to shake: daily, every other day, or off',
    'pause-until': 'The day on which reminders come again: 7 January; off ends the pause',
  },
  examples: ['/reminders', '/reminders time:18.30 shake:every other day', '/reminders pause-until:7 January'],
}
