import type { JarEntry } from '../core/jar/entry/entry.ts'
import type { Jar } from './person.ts'

/** Clocks and zones of one person do not lie further apart. */
const APART_MS = 24 * 3_600_000

/** The latest instant at which anything was said about the jars or entered, by the clocks of then; 0 where nothing was. */
export function latestMs(jars: readonly Jar[]): number {
  let latest = 0
  for (const { entries, toldMs = [] } of jars) {
    for (const ms of toldMs) latest = Math.max(latest, ms)
    for (const { enteredMs } of entries) latest = Math.max(latest, enteredMs)
  }
  return latest
}

/** Whether what was said or entered at an instant is believed by now: it lies ahead only where a clock ran ahead. */
export const isBelieved = (atMs: number, nowMs: number): boolean => atMs <= nowMs + APART_MS

/**
 * Keys of the reminders that were said, without those said by a clock that ran ahead: they are said again on their day. A
 * clock set back by less than a day repeats nothing.
 */
export function saidBy({ told, toldMs = [] }: Pick<Jar, 'told' | 'toldMs'>, nowMs: number): ReadonlySet<string> {
  const isPast = toldMs.every((ms) => isBelieved(ms, nowMs))
  return new Set(isPast ? told : told.filter((_, index) => isBelieved(toldMs[index] ?? 0, nowMs)))
}

/** The jar as if the reminders said by a clock that ran ahead had never been said. */
export function withoutAhead(jar: Jar, nowMs: number): Jar {
  const said = saidBy(jar, nowMs)
  if (said.size === jar.told.length) return jar
  const kept = jar.told.flatMap((key, index) => (said.has(key) ? [{ key, ms: jar.toldMs?.[index] ?? 0 }] : []))
  return { ...jar, told: kept.map(({ key }) => key), toldMs: kept.map(({ ms }) => ms) }
}

/** Entries that change nothing in a jar but keep its reminders quiet. */
const QUIETING: readonly JarEntry['kind'][] = [
  'shaken',
  'tasted',
  'opened',
  'renamed',
  'noted',
  'bottles_out',
  'put_off',
]

/** Without what a clock that ran ahead entered and would only keep reminders quiet until that time comes. */
export function believed(entries: readonly JarEntry[], nowMs: number): readonly JarEntry[] {
  const isDoubtful = ({ kind, enteredMs }: JarEntry): boolean =>
    !isBelieved(enteredMs, nowMs) && QUIETING.includes(kind)
  return entries.some(isDoubtful) ? entries.filter((entry) => !isDoubtful(entry)) : entries
}
