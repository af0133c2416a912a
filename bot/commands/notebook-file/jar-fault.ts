import type { HappeningEntry, JarEntry } from '../../../core/jar/entry/entry.ts'
import { effective, lastStanding } from '../../../core/jar/entry/standing-entries.ts'
import { BEFORE_ALL, refusalOf, type Walk, walkOn } from '../../../core/jar/record/allowed-steps.ts'
import { follow } from '../../../core/jar/record/check-sequence.ts'
import { MOST_CHANGES } from '../../../core/jar/record/record.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { storyOf } from '../../../core/jar/state/jar-state.ts'
import { liquidAfter } from '../../../core/jar/state/liquid-after.ts'
import { stepsOf } from '../../../core/jar/state/liquid-steps.ts'
import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import type { WrongEntry } from '../../chat/file-problems.ts'
import { holdsOnlyFinite } from '../../chat/verify-reply.ts'
import { entryFault } from './entry-fault.ts'

/** What is wrong with an entry of a jar. */
export interface JarFault {
  readonly seq: number
  readonly why: WrongEntry
}

/** Whether an amendment is one that `correct` or `undo` could have made of the entries before it. */
function mayAmend(entry: JarEntry, before: readonly JarEntry[], happened: readonly HappeningEntry[]): boolean {
  if (entry.kind === 'undone') return lastStanding(before)?.seq === entry.of
  if (entry.kind !== 'corrected') return true
  return happened.some(({ seq, kind }) => seq === entry.of && kind === entry.by.kind)
}

/** The first of what happened that cannot follow; measurements are not judged. */
function refusedIn(happened: readonly HappeningEntry[]): number | null {
  let walk: Walk = BEFORE_ALL
  for (const entry of happened) {
    if (refusalOf(walk, entry) !== null) return entry.seq
    walk = walkOn(walk, entry)
  }
  return null
}

/** Whether `work` comes to numbers; it throws where a liquid cannot be. */
function isReckonable(work: () => unknown): boolean {
  try {
    return holdsOnlyFinite(work())
  } catch {
    return false
  }
}

/** What cannot be in a state that an undo may bring back. */
function stopBefore(entries: readonly JarEntry[], happened: readonly HappeningEntry[]): number | null {
  const refused = refusedIn(happened)
  if (refused !== null) return refused
  const steps = stepsOf(happened)
  if (steps.length > MOST_CHANGES) return entries.at(-1)!.seq
  const values = valuesOf(steps.map(({ step }) => step))
  return isReckonable(() => liquidAfter(values).liquid) ? null : entries.at(-1)!.seq
}

/** What cannot be in the state that the entries lead to. */
function stopAtEnd(entries: readonly JarEntry[]): number | null {
  const story = storyOf(entries)
  if (story === null) return null
  const last = entries.at(-1)!.seq
  if (stepsOf(story.happened).length > MOST_CHANGES) return last
  const { stopped } = follow(entries)
  if (stopped !== null) return stopped.at.seq
  return isReckonable(() => contentsOf(story)) ? null : last
}

/** Whether what stands after an entry could stand without it: it is the last in time as well, and amends nothing. */
const isAppended = (entry: JarEntry, latestMs: number): boolean =>
  entry.kind !== 'undone' && entry.kind !== 'corrected' && entry.atMs >= latestMs

/** Others get their turn. */
const breathe = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0))

const BREATH = 20

function numberFault(entries: readonly JarEntry[]): JarFault | null {
  const startDay = dayNumber(entries[0]!.day)
  for (const [index, entry] of entries.entries()) {
    if (entry.seq !== index + 1) return { seq: index + 1, why: 'number' }
    const meant = entry.kind === 'corrected' ? entries[entry.of - 1] : undefined
    const why = entryFault(entry, [startDay, ...(meant === undefined ? [] : [dayNumber(meant.day)])])
    if (why !== null) return { seq: entry.seq, why }
  }
  return null
}

/**
 * What is wrong with the entries of a jar; null where each could have been recorded after those before it. The states that
 * an undo can bring back are looked at too, and nobody waits for it.
 */
export async function jarFault(entries: readonly JarEntry[]): Promise<JarFault | null> {
  const fault = numberFault(entries)
  if (fault !== null) return fault
  if (entries[0]!.kind !== 'started') return { seq: 1, why: 'follow' }
  let latestMs = Number.NEGATIVE_INFINITY
  let looked = 0
  for (const [index, entry] of entries.entries()) {
    if (!isAppended(entry, latestMs)) {
      const before = entries.slice(0, index)
      const happened = effective(before)
      if (!mayAmend(entry, before, happened)) return { seq: entry.seq, why: 'amends' }
      const seq = stopBefore(before, happened)
      if (seq !== null) return { seq, why: 'follow' }
      if (++looked % BREATH === 0) await breathe()
    }
    latestMs = Math.max(latestMs, entry.atMs)
  }
  await breathe()
  const seq = stopAtEnd(entries)
  return seq === null ? null : { seq, why: 'follow' }
}
