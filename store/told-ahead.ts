import type { JarEntry } from '../core/jar/entry/entry.ts'
import type { Jar } from './person.ts'

/** Clocks and zones of one person do not lie further apart. */
const APART_MS = 24 * 3_600_000

/**
 * Keys of the reminders that were said, as far as that can be by now: what was said ahead of it, by a clock that was, is to be
 * said again on its day. A clock set back by less than a day repeats nothing.
 */
export function saidBy({ told, toldMs = [] }: Pick<Jar, 'told' | 'toldMs'>, nowMs: number): ReadonlySet<string> {
  const latestMs = nowMs + APART_MS
  const isPast = toldMs.every((ms) => ms <= latestMs)
  return new Set(isPast ? told : told.filter((_, index) => (toldMs[index] ?? 0) <= latestMs))
}

/** The jar without the reminders that were said ahead of now: once its clock is right, they are as if never said. */
export function withoutAhead(jar: Jar, nowMs: number): Jar {
  const said = saidBy(jar, nowMs)
  if (said.size === jar.told.length) return jar
  const kept = jar.told.flatMap((key, index) => (said.has(key) ? [{ key, ms: jar.toldMs?.[index] ?? 0 }] : []))
  return { ...jar, told: kept.map(({ key }) => key), toldMs: kept.map(({ ms }) => ms) }
}

/** They change nothing in a jar, but what was asked for is quiet after them. */
const QUIETING: readonly JarEntry['kind'][] = ['shaken', 'tasted', 'opened', 'renamed', 'put_off']

/** Without what was entered ahead of now, by a clock that was, and would only keep reminders quiet until then. */
export function believed(entries: readonly JarEntry[], nowMs: number): readonly JarEntry[] {
  const isDoubtful = ({ kind, enteredMs }: JarEntry): boolean => enteredMs > nowMs + APART_MS && QUIETING.includes(kind)
  return entries.some(isDoubtful) ? entries.filter((entry) => !isDoubtful(entry)) : entries
}
