import type { DangerKind } from '../../../../core/jar/limits/judge-jar.ts'
import type { Stage } from '../../../../core/jar/state/jar-state.ts'
import { ENDLESS } from '../../../../core/jar/tasks/duty.ts'
import { dayFromIso, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { dangerWords } from './danger-sentences.ts'
import { dayWords, shortDayWords } from './day-words.ts'
import { type Asked, askedText, type Coming, comingText, type TaskSaid, tasksText } from './duty-words.ts'

/** Keeps the parts of a row together and under each other. */
const NBSP = '\u00a0'
const BAR = 10
const LONGEST_STAGE = 'sweetened'.length
const USUAL_DAY = 'day 12 of 300'.length

const padded = (text: string, width: number): string => text.replaceAll(' ', NBSP).padEnd(width, NBSP)

/** `███████░░░`: full only on the last day. */
export const bar = (day: number, ofDays: number): string => {
  const full = Math.min(BAR, Math.max(0, Math.floor((BAR * day) / ofDays)))
  return '█'.repeat(full) + '░'.repeat(BAR - full)
}

export interface Progress {
  readonly stage: Stage
  readonly day: number
  readonly ofDays: number | null
}

/** `day 12 of 30`; what is ready has arrived, and is late for nothing. */
export const dayOfText = ({ stage, day, ofDays }: Progress): string =>
  ofDays === null || stage === 'ready' ? `day ${day}` : `day ${day} of ${ofDays}`

interface Headline {
  /** What needs putting right before anything else. */
  readonly held: readonly string[]
  readonly today: readonly Asked[]
  /** The soonest first. */
  readonly next: readonly Coming[]
  readonly isToday: IsoDay
}

/** What `/jar list` says. */
export const listSentences = {
  headlines: {
    jars_none: () => 'No jar is running. /plan works out what goes into one, /jar start begins it.',
    jars_today: ({ held, today, next, isToday }: Headline, format: Format) => {
      const first = held.length === 0 ? '' : `Look after ${listed(held)} first. `
      const none = held.length === 0 ? 'Nothing to do today.' : 'Nothing else to do today.'
      const now = today.length === 0 ? none : `Today: ${today.map(askedText).join('; ')}.`
      const later = next.map((coming) => comingText(coming, isToday, format))
      return later.length === 0 ? `${first}${now}` : `${first}${now} Next: ${later.join('; ')}.`
    },
  },

  rows: {
    jar: ({ name }: { readonly name: string }) => name,
  },

  cells: {
    jar_progress: (
      values: Progress & {
        readonly tasks: readonly TaskSaid[]
        readonly today: IsoDay
        readonly danger: DangerKind | null
      },
      format: Format,
    ) => {
      const { stage, day, ofDays, tasks, today, danger } = values
      const parts = [
        padded(stage, LONGEST_STAGE),
        ofDays === null ? NBSP.repeat(BAR) : bar(day, ofDays),
        padded(dayOfText(values), USUAL_DAY),
        [danger === null ? '' : `! ${dangerWords[danger]}`, tasksText(tasks, today, format)]
          .filter((text) => text !== '')
          .join('; '),
      ]
      return parts.join(' ').trimEnd()
    },
  },

  notes: {
    jars_finished: ({ count }: { readonly count: number }) =>
      `${count === 1 ? 'One finished batch is' : `${count} finished batches are`} in /notebook.`,
    jars_set_aside: ({ file, day }: { readonly file: string | null; readonly day: IsoDay | null }, format: Format) => {
      const kept = `I couldn't read your jars and settings, so I began a new file. The old one is kept${file === null ? '' : ` as ${file}`}.`
      return day === null
        ? kept
        : file === null
          ? `${kept} The copy of ${format.day(dayFromIso(day))} still holds jars: whoever runs me can put it back.`
          : `${kept} The copy of ${day} still holds jars. To have it back, end me and type: npm run doctor -- restore local ${day}`
    },
    jars_unsent: (
      {
        asked,
        today,
      }: {
        readonly asked: readonly (Asked & { readonly day: IsoDay })[]
        readonly today: IsoDay
      },
      format: Format,
    ) =>
      `I could not send: ${asked.map((each) => `${askedText(each)} (${shortDayWords(each.day, today, format)})`).join('; ')}. /reminders chooses another place.`,
    jars_paused: ({ until, today }: { readonly until: IsoDay; readonly today: IsoDay }, format: Format) =>
      until === ENDLESS
        ? 'I’ve stopped reminding you. To start again: /reminders pause-until:off'
        : `Reminders pause until ${dayWords(until, today, format)}; /reminders changes that.`,
  },

  actions: {
    jars_shaken: ({ count }: { readonly count: number }) => (count === 1 ? 'Shaken' : 'All shaken'),
  },
}
