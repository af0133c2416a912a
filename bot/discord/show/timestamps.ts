import { instantAt } from '../../../core/quantity/time/zone.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Format } from '../../text/format.ts'

/**
 * Marks around a day in a sentence until the sentence has been escaped. Unicode keeps these two for a program's own use:
 * no text holds them, and what people type loses them.
 */
const OPEN = '\uFDD0'
const CLOSE = '\uFDD1'

const NOON_MINUTES = 720

/** `D`: a day; `f`: a day and a time of day. */
type Style = 'D' | 'f'

const marked = (ms: number, style: Style): string => `${OPEN}${Math.floor(ms / 1000)}:${style}${CLOSE}`

/** A format whose days and moments every reader sees by their own clocks, and whose lines can be sent in Discord; `zone` is that of the person who is answered. */
export const stamped =
  (zone: string) =>
  (format: Format): Format => ({
    ...format,
    day: (day) => marked(instantAt(zone, day, NOON_MINUTES), 'D'),
    moment: (day, minutes) => marked(instantAt(zone, day, minutes), 'f'),
    call: (call) => lineOf(call, true),
    channel: (id) => `${OPEN}#${id}${CLOSE}`,
  })

/** A day, a moment or a channel within a text. */
export const STAMP = /\uFDD0(-?\d+:[Df]|#\d+)\uFDD1/

/** As Discord reads it. */
export const shownStamp = (marked: string): string => (marked.startsWith('#') ? `<${marked}>` : `<t:${marked}>`)

const MARKS = /[\uFDD0\uFDD1]/g

/** Values as people gave them, without the marks, so that nobody can type a stamp. */
export function unmarked<Value>(value: Value): Value {
  if (typeof value === 'string') return value.replace(MARKS, '') as Value
  if (Array.isArray(value)) return value.map(unmarked) as Value
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, unmarked(inner)])) as Value
}
