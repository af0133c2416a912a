import type { JarEntry } from '../../../../core/jar/entry/entry.ts'
import { firstTask, type JarView } from '../../../../core/jar/tasks/jar-view.ts'
import type { Jar } from '../../../../store/person.ts'
import type { Data } from '../../../chat/reply.ts'
import { measuredData } from '../../reply/outcome-reply.ts'

type DataRecord = { readonly [name: string]: Data }

const instant = (ms: number): string => new Date(ms).toISOString()

/** One entry as it was typed, whether it still stands, and what it is about where it amends another. */
function eventData(entry: JarEntry, entries: readonly JarEntry[]): DataRecord {
  const amends = entry.kind === 'undone' || entry.kind === 'corrected' ? entry.of : null
  return {
    entry: entry.seq,
    kind: entry.kind,
    day: entry.day,
    at: instant(entry.atMs),
    amends,
    undone: entries.some((other) => other.kind === 'undone' && other.of === entry.seq),
    typed: Object.fromEntries(entry.typed),
  }
}

const eventsData = (entries: readonly JarEntry[]): readonly Data[] => entries.map((entry) => eventData(entry, entries))

const nextData = (view: JarView): Data => {
  const task = firstTask(view)
  return task === null ? null : { duty: task.kind, dueAt: instant(task.dueMs) }
}

/** A jar in a list. */
export const jarBrief = (view: JarView): DataRecord => ({
  id: view.jar.id,
  name: view.story.name,
  stage: view.stage,
  day: view.agenda.day,
  ofDays: view.agenda.ofDays,
  next: nextData(view),
  dangers: view.dangers.map(({ kind }) => kind),
})

/** A jar in every reply about it, its entries included. */
export const jarData = (view: JarView): DataRecord => {
  const { outcome } = view.contents
  const { volumeMl, abvPercent, sugarGPerL } = outcome
  return {
    ...jarBrief(view),
    ...measuredData({ volumeMl, abvPercent, sugarGPerL }),
    events: eventsData(view.jar.entries),
  }
}

/** The same of a jar whose start was undone: only its entries are left. */
export const undoneJarData = ({ id, entries }: Jar): DataRecord => ({
  id,
  name: null,
  stage: null,
  day: null,
  ofDays: null,
  next: null,
  dangers: [],
  ...Object.fromEntries(
    ['volumeMl', 'abvPercent', 'sugarGPerL'].flatMap((name) => [
      [name, null],
      [`${name}PlusMinus`, null],
    ]),
  ),
  events: eventsData(entries),
})
