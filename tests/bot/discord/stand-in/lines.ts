import { addDays } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt, instantAt } from '../../../../core/quantity/time/zone.ts'
import { Refusal } from './refusal.ts'

const UNIT_MS: Readonly<Record<string, number>> = { m: 60_000, h: 3_600_000, d: 86_400_000, w: 604_800_000 }
const MOST_DAYS = 3650

/** Within the minute, so that what is due by then is due. */
const INTO_MINUTE_MS = 5000

/** The first word of a line, in lower case, and what comes after it. */
export const splitWord = (line: string): readonly [word: string, rest: string] => {
  const [, word = '', rest = ''] = /^\s*(\S*)\s*([\s\S]*?)\s*$/.exec(line) ?? []
  return [word.toLowerCase(), rest]
}

/** A value without the double quotes around it, `\"` and `\\` within. */
export const unquoted = (text: string): string => {
  const quoted = /^"((?:[^"\\]|\\.)*)"$/s.exec(text)?.[1]
  return quoted === undefined ? text : quoted.replace(/\\(["\\])/g, '$1')
}

/** `rating=4; note="sharp; dry"` */
export const readFields = (text: string): Readonly<Record<string, string>> => {
  const parts = text.match(/(?:"(?:[^"\\]|\\.)*"|[^;])+/gs) ?? []
  const pairs = parts.flatMap((part) => {
    if (part.trim() === '') return []
    const [, name, value] = /^\s*([\w-]+)\s*=\s*([\s\S]*?)\s*$/.exec(part) ?? []
    if (name === undefined || value === undefined)
      throw new Refusal(`“${part.trim()}” is no field: write field=value; field=value.`)
    return [[name, unquoted(value)] as const]
  })
  return Object.fromEntries(pairs)
}

/** `3 Shaken`: message 3, if there is one; else all of it is words. */
export const readTarget = (text: string, isKnown: (number: number) => boolean): { number?: number; words: string } => {
  const [, digits, words = ''] = /^(\d+)\s+(.+)$/s.exec(text) ?? []
  return digits !== undefined && isKnown(Number(digits)) ? { number: Number(digits), words } : { words: text }
}

/** `3h`, `1d 12h`, in milliseconds. */
export const readSpan = (text: string): number => {
  if (!/^(?:\d+\s*[mhdw](?:\s+|$))+$/i.test(text))
    throw new Refusal(`“${text}” is no span of time: write 45m, 3h, 2d, 1w or 1d 12h.`)
  const parts = [...text.toLowerCase().matchAll(/(\d+)\s*([mhdw])/g)]
  const ms = parts.reduce((sum, [, count, unit]) => sum + Number(count) * UNIT_MS[unit!]!, 0)
  if (ms > MOST_DAYS * UNIT_MS.d!) throw new Refusal(`Ten years at most pass at once, not ${text}.`)
  return ms
}

/** `09:00`, the next there is by the clocks of a zone, or `tomorrow 09:00`; the instant. */
export const readMoment = (text: string, zone: string, nowMs: number): number => {
  const [, tomorrow, hours, minutes] = /^(tomorrow\s+)?([01]?\d|2[0-3])[:.]([0-5]\d)$/i.exec(text) ?? []
  if (hours === undefined) throw new Refusal(`“${text}” is no time: write 09:00 or tomorrow 09:00.`)
  const today = dayAt(zone, nowMs)
  const on = (days: number): number =>
    instantAt(zone, addDays(today, days), Number(hours) * 60 + Number(minutes)) + INTO_MINUTE_MS
  return tomorrow === undefined && on(0) > nowMs ? on(0) : on(1)
}
