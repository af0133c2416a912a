import { DomainError } from '../../../../core/domain-error.ts'
import type { JarEntry } from '../../../../core/jar/entry/entry.ts'
import { freeName, isNear } from '../../../../core/jar/entry/jar-name.ts'
import { record } from '../../../../core/jar/record/record.ts'
import { storyOf } from '../../../../core/jar/state/jar-state.ts'
import { isoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import type { Jar } from '../../../../store/person.ts'
import type { Context } from '../../../chat/command.ts'
import { MOST_RUNNING, runningJars } from '../known/running.ts'
import { enteredBy } from './record-step.ts'

const namesOf = (jars: readonly Jar[]): readonly string[] => runningJars(jars).map(({ story }) => story.name)

/** Whether a jar runs under a name that another running one has, or that could be mistaken for it. */
export function clashes(entries: readonly JarEntry[], others: readonly Jar[]): boolean {
  const story = storyOf(entries)
  return story !== null && story.ended === null && namesOf(others).some((name) => isNear(name, story.name))
}

/** A name that nobody typed. */
export const isFreed = (entry: JarEntry): boolean => entry.kind === 'renamed' && entry.typed.length === 0

/**
 * The entries with a free name at their end, later than all others whatever the clock is, where theirs is taken. Throws
 * `too_many_jars` where a jar that runs again would be one too many, and `too_many_entries`.
 */
export function freed(
  entries: readonly JarEntry[],
  others: readonly Jar[],
  context: Pick<Context, 'nowMs' | 'zone' | 'attempt'>,
): readonly JarEntry[] {
  const story = storyOf(entries)
  if (story === null || story.ended !== null) return entries
  const taken = namesOf(others)
  if (taken.length >= MOST_RUNNING) throw new DomainError('limit', 'too_many_jars', { most: MOST_RUNNING })
  if (!clashes(entries, others)) return entries
  const { nowMs, zone } = context
  const atMs = Math.max(nowMs, ...story.happened.map((entry) => entry.atMs))
  const moment = { atMs, day: isoDay(dayAt(zone, atMs)), zone }
  return record(entries, { kind: 'renamed', name: freeName(story.name, taken) }, moment, enteredBy({}, context)).entries
}
