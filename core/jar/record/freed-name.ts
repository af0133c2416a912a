import { DomainError } from '../../domain-error.ts'
import { isoDay } from '../../quantity/time/calendar-day.ts'
import { dayAt } from '../../quantity/time/zone.ts'
import type { JarEntry } from '../entry/entry.ts'
import { freeName, isNear } from '../entry/jar-name.ts'
import { jarStateOf, type KeptJar } from '../state/jar-state.ts'
import { MOST_RUNNING, namesTaken } from '../state/running-jars.ts'
import { type Amended, record } from './record.ts'

/** Whether a jar runs under a name that another running one has, or that could be mistaken for it. */
export function isNameTaken(entries: readonly JarEntry[], others: readonly KeptJar[]): boolean {
  const story = jarStateOf(entries)
  return story !== null && story.ended === null && namesTaken(others).some((name) => isNear(name, story.name))
}

/** Whether a jar was renamed because its name was taken: nobody typed that name. */
export const isFreedName = (entry: JarEntry): boolean => entry.kind === 'renamed' && entry.typed.length === 0

/**
 * The entries with a free name at their end, later than all others whatever the clock is, where theirs is taken. Throws
 * `too_many_jars` where a jar that runs again would be one too many, and `too_many_entries`.
 */
export function withFreeName(
  entries: readonly JarEntry[],
  others: readonly KeptJar[],
  { zone, enteredMs, attempt }: Omit<Amended, 'typed'>,
): readonly JarEntry[] {
  const story = jarStateOf(entries)
  if (story === null || story.ended !== null) return entries
  const taken = namesTaken(others)
  if (taken.length >= MOST_RUNNING) throw new DomainError('limit', 'too_many_jars', { most: MOST_RUNNING })
  if (!isNameTaken(entries, others)) return entries
  const atMs = Math.max(enteredMs, ...story.happened.map((entry) => entry.atMs))
  const moment = { atMs, day: isoDay(dayAt(zone, atMs)), zone }
  const renamed = { kind: 'renamed', name: freeName(story.name, taken) } as const
  const entered = { enteredMs, typed: [], ...(attempt !== undefined && { attempt }) }
  return record(entries, renamed, moment, entered).entries
}
