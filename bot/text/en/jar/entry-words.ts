import type { Happening, JarEntry } from '../../../../core/jar/event.ts'
import type { IsoDay } from '../../../../core/quantity/calendar.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { shortDayWords } from './day-words.ts'
import { happeningText } from './happening-words.ts'

export interface EntrySaid {
  /** What happened, or what a correction puts in its place; null where something was taken back. */
  readonly happening: Happening | null
  /** The entry that it corrects or takes back. */
  readonly of: number | null
  readonly typed: JarEntry['typed']
  /** The days of several in a row, in order, where only these are worth saying. */
  readonly days: readonly IsoDay[]
  readonly isUndone: boolean
  /** The entry that put something else in its place. */
  readonly correctedBy: number | null
}

/** Said by the line's beginning already. */
const SAID = new Set(['name', 'jar', 'when', 'entry'])

/** `of 10 lemons, spirit 1 l 95%`. */
const typedText = (typed: EntrySaid['typed']): string =>
  typed
    .filter(([option]) => !SAID.has(option))
    .map(([option, text]) => `${option.replaceAll('-', ' ')} ${text}`)
    .join(', ')

function whatText(happening: Happening, typed: EntrySaid['typed'], format: Format): string {
  switch (happening.kind) {
    case 'started':
      return typed.some(([option]) => !SAID.has(option)) ? `started: ${typedText(typed)}` : 'started'
    default:
      return happeningText({ ...happening, typed }, format)
  }
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

/** `strained, 930 ml at 78 % vol`, `shaken on 1 Dec, 2 Dec and 4 Dec`, `corrects 3: strained, 920 ml`, `takes back 4`. */
export function entryText(
  { happening, of, typed, days, today, isUndone, correctedBy }: EntrySaid & { readonly today: IsoDay },
  format: Format,
): string {
  const what = happening === null ? '' : whatText(happening, typed, format)
  const amends = of === null ? what : happening === null ? `takes back ${of}` : `corrects ${of}: ${what}`
  const text = days.length > 1 ? `${amends} ${daysText(days, today, format)}` : amends
  if (isUndone) return `${text} (taken back)`
  return correctedBy === null ? text : `${text} (corrected by ${correctedBy})`
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
