import type { JarEntry } from '../core/jar/event.ts'

/** Clocks and zones of one person do not lie further apart. */
const APART_MS = 24 * 3_600_000

/** They change nothing in a jar, but what was asked for is quiet after them. */
const QUIETING: readonly JarEntry['kind'][] = ['shaken', 'tasted', 'opened', 'renamed', 'put_off']

/** Without what was entered ahead of now, by a clock that was, and would only keep reminders quiet until then. */
export function believed(entries: readonly JarEntry[], nowMs: number): readonly JarEntry[] {
  const isDoubtful = ({ kind, enteredMs }: JarEntry): boolean => enteredMs > nowMs + APART_MS && QUIETING.includes(kind)
  return entries.some(isDoubtful) ? entries.filter((entry) => !isDoubtful(entry)) : entries
}
