import { DomainError } from '../../core/domain-error.ts'
import { MOST_NAME_CHARACTERS } from '../../core/jar/entry/jar-name.ts'
import { ENDLESS, type ShakeRhythm } from '../../core/jar/tasks/duty.ts'
import { parseRhythm } from '../../core/jar/tasks/parse-rhythm.ts'
import { parseCountryCode } from '../../core/label/parse-country-code.ts'
import { parseFreezer } from '../../core/quantity/read/parse-freezer.ts'
import { parseUnits, type UnitSystem } from '../../core/quantity/read/parse-units.ts'
import { shown } from '../../core/quantity/read/tokens.ts'
import { dayFromIso, isoTime } from '../../core/quantity/time/calendar-day.ts'
import { parseClockTime } from '../../core/quantity/time/parse-clock-time.ts'
import { parseZone } from '../../core/quantity/time/parse-zone.ts'
import { parseYesNo } from '../../core/recipe/plan/parse-answers.ts'
import { FORMATS, parseFormat } from './export-format.ts'
import { option } from './option.ts'
import { asWritten, type DateTyped, dateIn } from './plan-options.ts'
import { parseShareRef, type ShareRef, shareRef } from './share-ref.ts'

/** What takes a choice back. */
const NO_SETTING = /^(?:none|default|as[ -]typed|typed|nessun[oa])$/i
const NO_REMINDER = /^(?:off|none|default|no|never|nessun[oa])$/i

const GOOD = /^(?:further notice|stop|for good)$/i

const orNull =
  <Value>(none: RegExp, read: (text: string) => Value) =>
  (text: string): Value | null =>
    none.test(text.trim()) ? null : read(text)

const PLACES = ['here', 'private', 'console'] as const

export type PlaceTyped = (typeof PLACES)[number]

const parsePlace = (text: string): PlaceTyped => {
  const found = PLACES.find((place) => place === text.trim().toLowerCase())
  if (found === undefined) throw new DomainError('bad_value', 'no_place', { typed: shown(text) })
  return found
}

/** Until somebody says otherwise. */
const forGood = (text: string): DateTyped => ({
  text,
  read: () => ({ kind: 'date', ...dayFromIso(ENDLESS), yearAssumed: false }),
})

/** What ends reminders until they are wanted again. */
export const FOR_GOOD = forGood('further notice')

const readPause = (text: string): DateTyped => (GOOD.test(text.trim()) ? forGood(text) : dateIn(text, 'after_today'))

/** Whether everything is to be erased, and what there was of it when that was asked: `2/7/1`; null where nobody said. */
export interface Confirmation {
  readonly isYes: boolean
  readonly tally: string | null
}

/** `yes`, or `yes 2/7/1`: only as long as that is what would go. */
const readConfirmation = (text: string): Confirmation => {
  const [, answer = text, tally = null] = /^(.*?)\s+(\d+\/\d+\/\d+)$/.exec(text.trim()) ?? []
  return { isYes: parseYesNo(answer), tally }
}

const RHYTHMS: Readonly<Record<ShakeRhythm, string>> = {
  daily: 'daily',
  every_other_day: 'every other day',
  off: 'off',
}

const identity = (text: string): string => text

/** What is asked of and for a person: settings, reminders, what is shared, taken out and erased. */
export const personOptions = {
  units: option({
    read: orNull<UnitSystem>(NO_SETTING, parseUnits),
    write: (units) => units ?? 'as typed',
    choices: ['metric', 'us', 'imperial', 'as typed'],
  }),
  country: option({
    read: orNull<string>(NO_SETTING, parseCountryCode),
    write: (code) => code ?? 'none',
    suggested: 'country',
  }),
  zone: option({ read: orNull<string>(NO_SETTING, parseZone), write: (zone) => zone ?? 'none', suggested: 'zone' }),
  /** Of the person's freezer, °C. */
  freezer: option({
    read: orNull<number>(NO_SETTING, parseFreezer),
    write: (freezerC) => (freezerC === null ? 'none' : `${freezerC} C`),
  }),
  reminderZone: option({
    read: orNull<string>(NO_REMINDER, parseZone),
    write: (zone) => zone ?? 'none',
    suggested: 'zone',
  }),
  place: option({ read: parsePlace, write: identity, choices: ['here', 'private'] }),
  /** Minutes after midnight, 0 to 1439. */
  time: option({ read: parseClockTime, write: isoTime }),
  shake: option({
    read: parseRhythm,
    write: (rhythm) => RHYTHMS[rhythm],
    choices: ['daily', 'every other day', 'off'],
  }),
  pauseUntil: option({
    read: orNull<DateTyped>(NO_REMINDER, readPause),
    write: (pause) => (pause === null ? 'off' : asWritten(pause)),
  }),
  confirm: option({
    read: readConfirmation,
    write: ({ isYes, tally }) => `${isYes ? 'yes' : 'no'}${tally === null ? '' : ` ${tally}`}`,
    choices: ['yes', 'no'],
  }),
  exportFormat: option({ read: parseFormat, write: identity, choices: FORMATS }),
  /** A path in the terminal, what was sent along in Discord. */
  file: option({ read: identity, write: identity, isFile: true }),
  /** By the jar's name or the share's id. */
  share: option({ read: identity, write: identity, suggested: 'share', most: 1 + MOST_NAME_CHARACTERS }),
  shareToMake: option({ read: parseShareRef, write: (ref: ShareRef) => shareRef(ref) ?? '', most: 40 }),
}
