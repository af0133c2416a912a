import { DomainError, isRefused } from '../../core/domain-error.ts'
import type { AddedAs } from '../../core/jar/entry/entry.ts'
import { MOST_NAME_CHARACTERS, parseJarName } from '../../core/jar/entry/jar-name.ts'
import { parseRating } from '../../core/jar/entry/parse-rating.ts'
import { MOST_NOTE_CHARACTERS } from '../../core/jar/record/bounds.ts'
import { hourAhead } from '../../core/jar/tasks/hour-ahead.ts'
import { finingOf, parseFining } from '../../core/label/fining.ts'
import type { Mass, Volume } from '../../core/quantity/quantities.ts'
import { parseAmount } from '../../core/quantity/read/parse-amount.ts'
import { type PartOfIt, parseShare, writeShare } from '../../core/quantity/read/parse-share.ts'
import { shown } from '../../core/quantity/read/tokens.ts'
import { daysBetween, type IsoDay, isoDay } from '../../core/quantity/time/calendar-day.ts'
import { type DateSetting, isSoonAhead, lastSuch } from '../../core/quantity/time/parse-date.ts'
import { dayAt } from '../../core/quantity/time/zone.ts'
import { writeAmount } from '../../core/quantity/write/write-quantity.ts'
import { parseYesNo } from '../../core/recipe/plan/parse-answers.ts'
import { asOptionProblem, type Given, option } from './option.ts'
import { asWritten, type DateTyped, dateIn } from './plan-options.ts'

/** A day on which something happened: `24 December` in January is last month's. Throws `in_the_future`. */
export const pastIn = (text: string): DateTyped => {
  const { read } = dateIn(text, 'past')
  return {
    text,
    read(setting) {
      const day = read(setting)
      const daysAhead = daysBetween(day, setting.today)
      if (daysAhead <= 0) return day
      if (day.yearAssumed && !isSoonAhead(daysAhead))
        return { ...day, ...lastSuch({ ...day, year: null }, setting.today) }
      throw new DomainError('bad_value', 'in_the_future', { typed: shown(text) })
    },
  }
}

/** When to come back to something. */
export interface Until {
  readonly untilDay: IsoDay
  /** The instant of that day; null: its morning. */
  readonly untilMs: number | null
}

/** By whose clock and in which country a text is read. */
interface Reader {
  readonly nowMs: number
  /** IANA name. */
  readonly zone: string
  readonly settings: Pick<DateSetting, 'country'>
}

/** Words for a day or an hour still to come, such as `in 2 weeks`. */
export interface UntilTyped {
  readonly text: string
  read(reader: Reader): Until
}

/** A day or an hour that is still to come. Throws `not_ahead` and what `hourAhead` throws. */
export const aheadIn = (text: string): UntilTyped => {
  const hour = hourAhead(text)
  if (hour !== null) {
    return {
      text,
      read({ nowMs, zone }) {
        const untilMs = hour(nowMs, zone)
        return { untilDay: isoDay(dayAt(zone, untilMs)), untilMs }
      },
    }
  }
  const { read } = dateIn(text, 'after_today')
  return {
    text,
    read({ nowMs, zone, settings: { country } }) {
      const today = dayAt(zone, nowMs)
      const day = read({ today, country })
      if (daysBetween(day, today) > 0) return { untilDay: isoDay(day), untilMs: null }
      throw new DomainError('bad_value', 'not_ahead', { typed: shown(text) })
    },
  }
}

const entryIn = (text: string): number => {
  const seq = Number(/^#?([1-9][0-9]{0,5})$/.exec(text)?.[1])
  if (Number.isInteger(seq)) return seq
  throw new DomainError('bad_value', 'bad_entry_number', { typed: shown(text) })
}

/** Throws `no_added_as`. */
function readAddedAs(text: string): AddedAs {
  const said = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s-]+/g, ' ')
  if (/^(?:a )?layer(?:ed)?$/.test(said)) return 'layer'
  if (/^(?:a )?top(?:ping|ped)? ?up$/.test(said)) return 'top_up'
  throw new DomainError('bad_value', 'no_added_as', { typed: shown(text) })
}

/** What was not done need not be told. Throws `yes_or_no`. */
const yesOnly = (text: string): null => {
  if (parseYesNo(text)) return null
  throw new DomainError('bad_value', 'yes_or_no', { typed: shown(text) })
}

const identity = (text: string): string => text

/** A text of so many characters. Throws `note_too_long`. */
const freeText = (most: number) =>
  option({
    read: (text): string => {
      const length = [...text].length
      if (length <= most) return text
      throw new DomainError('bad_value', 'note_too_long', { length, most })
    },
    write: identity,
    most,
  })

const MOST_PLACE_CHARACTERS = 100

/** As much as stands in a line of a label. */
const MOST_MAKER_CHARACTERS = 50

/** What only jars take. */
export const jarOptions = {
  /** A new name. */
  name: option({ read: parseJarName, write: identity, most: MOST_NAME_CHARACTERS, isName: true }),
  /** Which jar; the person's own jars decide what it is. */
  jar: option({ read: identity, write: identity, suggested: 'jar', most: MOST_NAME_CHARACTERS, isName: true }),
  /** Or all that are running. */
  jarOrAll: option({
    read: identity,
    write: identity,
    suggested: 'jar_or_all',
    most: MOST_NAME_CHARACTERS,
    isName: true,
  }),
  /** Two of them, joined with `+`. */
  jars: option({ read: identity, write: identity, suggested: 'jars', isName: true }),
  when: option({ read: pastIn, write: asWritten, suggested: 'past' }),
  until: option({ read: aheadIn, write: asWritten, suggested: 'until' }),
  rating: option({ read: parseRating, write: String, choices: [1, 2, 3, 4, 5] }),
  note: freeText(MOST_NOTE_CHARACTERS),
  /** Where it stands, or what it is in. */
  place: freeText(MOST_PLACE_CHARACTERS),
  /** Who made what is in a bottle: a society, a family. */
  maker: freeText(MOST_MAKER_CHARACTERS),
  /** Plants that are in a jar; the jar decides which. */
  plantsIn: option({ read: identity, write: identity, most: MOST_PLACE_CHARACTERS }),
  /** How much is poured off: an amount, or a part of what is there. */
  pouredOff: option({
    read: (text): Mass | Volume | PartOfIt => parseShare(text) ?? parseAmount(text),
    write: (amount) => (amount.kind === 'share' ? writeShare(amount) : writeAmount(amount)),
  }),
  /** What came of sugared fruit: how much, or `yes` where nobody measured it. */
  drawn: option({
    read: (text): Mass | Volume | null => (isRefused(() => parseYesNo(text)) ? parseAmount(text) : yesOnly(text)),
    write: (amount) => (amount === null ? 'yes' : writeAmount(amount)),
  }),
  /** How what goes in goes in. */
  addedAs: option({
    read: readAddedAs,
    write: (as): string => (as === 'layer' ? 'layer' : 'top-up'),
    choices: ['layer', 'top-up'],
  }),
  /** A pectic enzyme: how much, as its packet says. */
  enzyme: freeText(MOST_PLACE_CHARACTERS),
  /** What a drink was fined with. */
  fining: option({ read: parseFining, write: (id) => finingOf(id).names[0]! }),
  entry: option({ read: entryIn, write: String, suggested: 'entry' }),
  /** One of each of several jars, as a button names them. */
  entries: option({
    read: (text): readonly number[] => text.split(' ').map(entryIn),
    write: (entries) => entries.join(' '),
  }),
}

/** The day that an option names, or null where it was left out. */
export const dayGiven = (name: string, given: Given<DateTyped> | undefined, setting: DateSetting) =>
  given === undefined ? null : asOptionProblem(name, () => given.is.read(setting))
