import type { HappeningEntry, JarEntry } from '../../../../core/jar/entry/entry.ts'
import { effective } from '../../../../core/jar/entry/standing-entries.ts'
import { isOverPutOff } from '../../../../core/jar/tasks/put-off.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Row } from '../../../chat/reply.ts'
import { row } from '../../reply/outcome-reply.ts'
import { saidIn } from '../amend/correction.ts'

/** From so many shakes in a row on, they are one line. */
const MANY = 3

interface Now {
  readonly today: IsoDay
  readonly nowMs: number
}

/** What was put right of an entry: of `when` the day. */
interface Change {
  readonly option: string
  /** Null where nothing was said of it. */
  readonly was: string | null
  readonly now: string
}

interface Shown {
  readonly entry: HappeningEntry
  readonly changes: readonly Change[]
}

/** Tell nothing of their own. */
const UNTOLD = new Set(['entry', 'unknown-ok'])

/** All corrections of an entry that stand as one. */
function changesOf(entry: HappeningEntry, entries: readonly JarEntry[], undone: ReadonlySet<number>) {
  const before = entries.find(({ seq }) => seq === entry.seq) as HappeningEntry
  const corrections = entries.filter(
    (each) => each.kind === 'corrected' && each.of === entry.seq && !undone.has(each.seq),
  )
  const options = new Set(corrections.flatMap(({ typed }) => typed.map(([option]) => option)))
  return [...options].flatMap((option): Change[] => {
    if (UNTOLD.has(option)) return []
    if (option === 'when') return entry.day === before.day ? [] : [{ option, was: before.day, now: entry.day }]
    const [was, now] = [saidIn(before, option), saidIn(entry, option)]
    return now === null || was === now ? [] : [{ option, was, now }]
  })
}

/** Runs of shakes that stand as they were entered are taken together. */
function linesOf(shown: readonly Shown[]): readonly (readonly Shown[])[] {
  const isPlainShake = ({ entry, changes }: Shown): boolean => entry.kind === 'shaken' && changes.length === 0
  const runs: Shown[][] = []
  for (const each of shown) {
    const run = runs.at(-1)
    if (run !== undefined && isPlainShake(each) && isPlainShake(run[0]!)) run.push(each)
    else runs.push([each])
  }
  return runs.flatMap((run) => (run.length < MANY ? run.map((each) => [each]) : [run]))
}

/** What happened to a jar as it stands now, line by line, with the numbers by which entries are corrected. */
export function storyRows(entries: readonly JarEntry[], now: Now): readonly Row[] {
  const { today } = now
  const undone = new Set(entries.flatMap((entry) => (entry.kind === 'undone' ? [entry.of] : [])))
  const happened = effective(entries)
  const shown = happened
    .filter((entry) => !isOverPutOff(entry, happened, now))
    .toSorted((one, other) => one.seq - other.seq)
    .map((entry) => ({ entry, changes: changesOf(entry, entries, undone) }))
  const rows = linesOf(shown).map((line): Row => {
    const [{ entry, changes }, last] = [line[0]!, line.at(-1)!]
    const days = line.length === 1 ? [] : line.map((each) => each.entry.day).toSorted()
    return {
      label: {
        group: 'rows',
        key: 'jar_entry',
        values: { from: entry.seq, to: last.entry.seq, day: days.length > 0 ? null : entry.day, today },
      },
      cell: { group: 'cells', key: 'jar_entry', values: { happening: entry, days, today, changes } },
    }
  })
  return undone.size === 0
    ? rows
    : [...rows, row('jar_taken_back', { group: 'cells', key: 'jar_taken_back', values: { count: undone.size } })]
}
