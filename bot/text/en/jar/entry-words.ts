import type { HappeningEntry } from '../../../../core/jar/entry/entry.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { shortDayWords } from './day-words.ts'
import { happeningText } from './happening-words.ts'

export interface EntrySaid {
  /** As it stands now. */
  readonly happening: HappeningEntry
  /** The days of several in a row, in order, where only these are worth saying. */
  readonly days: readonly IsoDay[]
  /** What was put right of it: as it is now, and was entered first; of `when` days. */
  readonly changes: readonly { readonly option: string; readonly was: string | null; readonly now: string }[]
}

/** Said by the line's beginning already. */
const SAID = new Set(['name', 'jar', 'when', 'entry'])

/** `of 10 lemons, spirit 1 l 95%`; a code's plants, and not the code. */
const typedText = (typed: HappeningEntry['typed']): string => {
  const plants = typed.filter(([option]) => option === 'of')
  const others = typed.filter(([option]) => option !== 'of' && (option !== 'from' || plants.length === 0))
  return [...plants, ...others]
    .filter(([option]) => !SAID.has(option))
    .map(([option, text]) => `${option.replaceAll('-', ' ')} ${text}`)
    .join(', ')
}

function whatText(happening: HappeningEntry, format: Format): string {
  const { kind, typed } = happening
  if (kind !== 'started') return happeningText(happening, format)
  return typed.some(([option]) => !SAID.has(option)) ? `started: ${typedText(typed)}` : 'started'
}

/** From so many on they are counted. */
const MOST_DAYS = 5

/** `on 1, 2 and 4 Dec`, `13 times from 2 to 28 Dec`. */
function daysText(days: readonly IsoDay[], today: IsoDay, format: Format): string {
  const [first, last] = [days[0]!, days.at(-1)!]
  const short = (day: IsoDay) => shortDayWords(day, today, format)
  if (days.length > MOST_DAYS) return `${days.length} times from ${short(first)} to ${short(last)}`
  const words = days.map(short)
  const [month = null] = / \p{L}.*$/u.exec(words[0]!) ?? []
  return month !== null && words.every((word) => word.endsWith(month))
    ? `on ${listed(words.map((word) => word.slice(0, -month.length)))}${month}`
    : `on ${listed(words)}`
}

/** `spirit 800 ml 60%, no longer 700 ml 60%`, `day 14 Jan, no longer 10 Jan`. */
function changeText({ option, was, now }: EntrySaid['changes'][number], today: IsoDay, format: Format): string {
  const isDay = option === 'when'
  const said = (text: string): string => (isDay ? shortDayWords(text, today, format) : text)
  const name = isDay ? 'day' : option.replaceAll('-', ' ')
  return `${name} ${said(now)}, ${was === null ? 'where nothing was said' : `no longer ${said(was)}`}`
}

/** `strained, 930 ml at 78 % vol (corrected: measured 930 ml, no longer 390 ml)`, `shaken on 1, 2 and 4 Dec`. */
export function entryText(
  { happening, days, changes, today }: EntrySaid & { readonly today: IsoDay },
  format: Format,
): string {
  const what = whatText(happening, format)
  const text = days.length > 1 ? `${what} ${daysText(days, today, format)}` : what
  if (changes.length === 0) return text
  return `${text} (corrected: ${changes.map((change) => changeText(change, today, format)).join('; ')})`
}

interface Numbers {
  readonly from: number
  readonly to: number
  /** Null of several: theirs are told beside. */
  readonly day: IsoDay | null
  readonly today: IsoDay
}

/** `3 · 9 Dec`, `4–16`. */
export const entryNumber = ({ from, to, day, today }: Numbers, format: Format): string =>
  `${from}${to === from ? '' : `–${to}`}${day === null ? '' : ` · ${shortDayWords(day, today, format)}`}`
