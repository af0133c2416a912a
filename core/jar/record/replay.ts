import { DomainError, isRefused } from '../../domain-error.ts'
import { holdsOnlyFinite } from '../../only-finite.ts'
import { dayNumber } from '../../quantity/time/day-number.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import type { JarEntry } from '../entry/entry.ts'
import { effective } from '../entry/standing-entries.ts'
import { contentsOf } from '../state/contents.ts'
import { jarStateOf } from '../state/jar-state.ts'
import { liquidAfter } from '../state/liquid-after.ts'
import { stepsOf } from '../state/liquid-steps.ts'
import { expectReckonable } from './bounds.ts'
import { type Followed, follow } from './check-sequence.ts'
import { type EntryFault, entryFault } from './entry-fault.ts'
import { expectCorrectable, expectUndoable } from './record.ts'

/** The first entry that could not have been recorded after those before it. */
export interface UnsoundEntry {
  readonly seq: number
  readonly why: EntryFault | 'number' | 'amends' | 'follow'
}

/** Whether `correct` or `undo` would not make this amendment of the entries before it. */
function isRefusedAmendment(entry: JarEntry, before: readonly JarEntry[]): boolean {
  if (entry.kind === 'undone') {
    return isRefused(() => expectUndoable(before)) || expectUndoable(before).seq !== entry.of
  }
  return entry.kind === 'corrected' && isRefused(() => expectCorrectable(before, entry.of, entry.by.kind))
}

/** Whether `work` comes to numbers; it throws where a liquid cannot be. */
function isReckonable(work: () => unknown): boolean {
  try {
    return holdsOnlyFinite(work())
  } catch {
    return false
  }
}

/** What cannot be in a state that an undo may bring back; whatever was measured there is believed. */
function stopBefore(before: readonly JarEntry[]): number | null {
  const { stopped } = follow(before, false)
  if (stopped !== null) return stopped.at.seq
  const last = before.at(-1)!.seq
  if (isRefused(() => expectReckonable(before))) return last
  const values = valuesOf(stepsOf(effective(before)).map(({ step }) => step))
  return isReckonable(() => liquidAfter(values).liquid) ? null : last
}

/** Null where a reading is beyond what liquids are known for, as of one that is too hot. */
function followedWhereItCan(entries: readonly JarEntry[]): Followed | null {
  try {
    return follow(entries)
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
}

/** What cannot be in the state that the entries lead to. */
function stopAtEnd(entries: readonly JarEntry[]): number | null {
  const story = jarStateOf(entries)
  if (story === null) return null
  const last = entries.at(-1)!.seq
  if (isRefused(() => expectReckonable(entries))) return last
  const followed = followedWhereItCan(entries)
  if (followed === null) return last
  if (followed.stopped !== null) return followed.stopped.at.seq
  return isReckonable(() => contentsOf(story)) ? null : last
}

/** Whether what stands after an entry could stand without it: it is the last in time as well, and amends nothing. */
const isAppended = (entry: JarEntry, latestMs: number): boolean =>
  entry.kind !== 'undone' && entry.kind !== 'corrected' && entry.atMs >= latestMs

function unsoundByItself(entries: readonly JarEntry[], mostTyped: number): UnsoundEntry | null {
  const startDay = dayNumber(entries[0]!.day)
  for (const [index, entry] of entries.entries()) {
    if (entry.seq !== index + 1) return { seq: index + 1, why: 'number' }
    const meant = entry.kind === 'corrected' ? entries[entry.of - 1] : undefined
    const why = entryFault(entry, [startDay, ...(meant === undefined ? [] : [dayNumber(meant.day)])], mostTyped)
    if (why !== null) return { seq: entry.seq, why }
  }
  return null
}

/**
 * Replays the entries of a jar by the rules of `record`, `correct` and `undo`; null where each could have been recorded
 * after those before it. To record each anew takes a jar of a thousand half a minute, so that only states are looked at
 * which no later one holds: those before an amendment or a late entry, and the last. Yields after each, so that whoever
 * replays can let others have their turn. `mostTyped`: the longest text, in units of UTF-16.
 */
export function* replay(entries: readonly JarEntry[], mostTyped: number): Generator<undefined, UnsoundEntry | null> {
  const unsound = unsoundByItself(entries, mostTyped)
  if (unsound !== null) return unsound
  if (entries[0]!.kind !== 'started') return { seq: 1, why: 'follow' }
  let latestMs = Number.NEGATIVE_INFINITY
  for (const [index, entry] of entries.entries()) {
    if (!isAppended(entry, latestMs)) {
      const before = entries.slice(0, index)
      if (isRefusedAmendment(entry, before)) return { seq: entry.seq, why: 'amends' }
      const seq = stopBefore(before)
      if (seq !== null) return { seq, why: 'follow' }
      yield
    }
    latestMs = Math.max(latestMs, entry.atMs)
  }
  const seq = stopAtEnd(entries)
  return seq === null ? null : { seq, why: 'follow' }
}
