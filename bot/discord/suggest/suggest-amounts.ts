import { unlessRefused } from '../../../core/domain-error.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { styleSweetnessGPerL } from '../../../core/quantity/read/sweetness-at.ts'
import { addDays, dayFromIso, daysBetween, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt, minutesAt } from '../../../core/quantity/time/zone.ts'
import { parseBottles } from '../../../core/recipe/plan/parse-bottles.ts'
import type { Jar } from '../../../store/person.ts'
import { aheadIn, pastIn } from '../../calls/jar-options.ts'
import type { SuggestionText } from '../../text/discord-forms-text.ts'
import { shortened } from '../show/cut-text.ts'
import type { Offer } from './offer.ts'

/** Discord's limit. */
const MOST_NAME = 100

/** Whose days and habits an offer goes by. */
export interface Habits {
  readonly zone: string
  readonly country: string | null
  readonly nowMs: number
}

const begins = (word: string, typed: string): boolean => word.toLowerCase().startsWith(typed.trim().toLowerCase())

/** What was typed, first, with what it means; then the usual values that begin so. */
const offered = (typed: string, meaning: string | null, usual: readonly Offer[]): readonly Offer[] => {
  const fitting = usual.filter(({ name, value }) => begins(name, typed) || begins(value, typed))
  const own = meaning === null || fitting.some(({ value }) => value === typed.trim()) ? [] : [typed.trim()]
  return [...own.map((value) => ({ name: `${value}: ${meaning}`, value })), ...fitting]
}

const STYLES = Object.entries(styleSweetnessGPerL) as readonly (readonly [keyof typeof styleSweetnessGPerL, number])[]

const nearestStyle = (gPerL: number) =>
  STYLES.toSorted(([, one], [, other]) => Math.abs(one - gPerL) - Math.abs(other - gPerL))[0]![0]

export const suggestSweetness = (typed: string, text: SuggestionText): readonly Offer[] => {
  const usual = STYLES.map(([value, gPerL]) => ({ name: text.style({ style: value, gPerL }), value }))
  const read = typed.trim() === '' ? null : unlessRefused(() => parseSweetness(typed))
  const meaning =
    read === null ? null : text.sweetness({ gPerL: read.sugarGPerL, nearest: nearestStyle(read.sugarGPerL) })
  return offered(typed, meaning, usual)
}

/** Days ago on which most things happened that are entered late. */
const AGO = [0, 1, 2, 3, 4, 5, 6, 7] as const

/** Days of the past, for something that has happened. */
export const suggestPast = (
  typed: string,
  { zone, country, nowMs }: Habits,
  text: SuggestionText,
): readonly Offer[] => {
  const today = dayAt(zone, nowMs)
  const said = (day: CalendarDay): string => text.day({ day, daysAhead: daysBetween(day, today) })
  const usual = AGO.map((days) => addDays(today, -days)).map((day) => ({ name: said(day), value: isoDay(day) }))
  const read = typed.trim() === '' ? null : unlessRefused(() => pastIn(typed).read({ today, country }))
  return offered(typed, read && said(read), usual)
}

const AHEAD = ['later today', 'tomorrow', '2 days', '3 days', '1 week', '2 weeks'] as const

/** Days and hours to come. */
export const suggestUntil = (
  typed: string,
  { zone, country, nowMs }: Habits,
  text: SuggestionText,
): readonly Offer[] => {
  const today = dayAt(zone, nowMs)
  const meaningOf = (value: string): string | null => {
    const settings = { country } as Parameters<ReturnType<typeof aheadIn>['read']>[0]['settings']
    const until = unlessRefused(() => aheadIn(value).read({ nowMs, zone, settings }))
    if (until === null) return null
    const day = until.untilMs === null ? dayFromIso(until.untilDay) : dayAt(zone, until.untilMs)
    const minutes = until.untilMs === null ? null : minutesAt(zone, until.untilMs)
    return text.until({ day, daysAhead: daysBetween(day, today), minutes })
  }
  const usual = AHEAD.flatMap((value) => {
    const meaning = meaningOf(value)
    return meaning === null ? [] : [{ name: `${value}: ${meaning}`, value }]
  })
  return offered(typed, typed.trim() === '' ? null : meaningOf(typed), usual)
}

/** The entries of the jar that is named beside, the newest first; nothing where none is. */
export function suggestEntries(
  typed: string,
  named: string,
  jars: readonly Jar[],
  text: SuggestionText,
): readonly Offer[] {
  const jar = named.trim() === '' ? null : unlessRefused(() => findJar(named, jars))
  const story = jar === null ? null : jarStateOf(jar.entries)
  if (story === null) return []
  const wanted = typed.trim().replace(/^#/, '')
  return story.happened.toReversed().flatMap((entry) => {
    const offer = { name: shortened(text.entry({ entry }), MOST_NAME), value: String(entry.seq) }
    return offer.value.startsWith(wanted) || offer.name.toLowerCase().includes(wanted.toLowerCase()) ? [offer] : []
  })
}

const SIZES_ML = [500, 700, 350, 250, 750] as const

/** A count alone is filled up with the usual sizes. */
const COUNT = /^([1-9]\d{0,3})(?: ?[x×]?)? *$/u

export const suggestBottles = (typed: string, text: SuggestionText): readonly Offer[] => {
  const count = COUNT.exec(typed.trim())?.[1]
  if (count !== undefined) {
    return SIZES_ML.map((volumeMl) => ({
      name: text.bottles({ bottles: [{ count: Number(count), volumeMl }] }),
      value: `${count} x ${volumeMl} ml`,
    }))
  }
  const usual = SIZES_ML.map((volumeMl) => ({
    name: text.bottles({ bottles: [{ count: null, volumeMl }] }),
    value: `${volumeMl} ml`,
  }))
  const bottles = typed.trim() === '' ? null : unlessRefused(() => parseBottles(typed))
  if (bottles === null) return offered(typed, null, usual)
  return [{ name: text.bottles({ bottles }), value: typed.trim() }]
}
