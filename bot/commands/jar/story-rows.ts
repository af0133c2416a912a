import type { JarEntry } from '../../../core/jar/event.ts'
import type { IsoDay } from '../../../core/quantity/calendar.ts'
import type { Row } from '../../chat/reply.ts'

/** From so many shakes in a row on, they are one line. */
const MANY = 3

interface Line {
  readonly first: JarEntry
  readonly last: JarEntry
  /** Of several taken together, in order. */
  readonly days: readonly IsoDay[]
}

interface Fate {
  readonly isUndone: boolean
  readonly correctedBy: number | null
}

const fateIn = (entries: readonly JarEntry[]) => {
  const undone = new Set(entries.flatMap((entry) => (entry.kind === 'undone' ? [entry.of] : [])))
  const corrected = new Map(
    entries.flatMap((entry) =>
      entry.kind === 'corrected' && !undone.has(entry.seq) ? [[entry.of, entry.seq] as const] : [],
    ),
  )
  return ({ seq }: JarEntry): Fate => ({ isUndone: undone.has(seq), correctedBy: corrected.get(seq) ?? null })
}

/** The entries in order of entry, runs of shakes that stand as they were entered taken together. */
function linesOf(entries: readonly JarEntry[], fateOf: (entry: JarEntry) => Fate): readonly Line[] {
  const isPlainShake = (entry: JarEntry): boolean => {
    const { isUndone, correctedBy } = fateOf(entry)
    return entry.kind === 'shaken' && !isUndone && correctedBy === null
  }
  const runs: JarEntry[][] = []
  for (const entry of entries) {
    const run = runs.at(-1)
    if (run !== undefined && isPlainShake(entry) && isPlainShake(run[0]!)) run.push(entry)
    else runs.push([entry])
  }
  return runs.flatMap((run) =>
    run.length < MANY
      ? run.map((entry) => ({ first: entry, last: entry, days: [] }))
      : [{ first: run[0]!, last: run.at(-1)!, days: run.map(({ day }) => day).toSorted() }],
  )
}

/** What happened to a jar, line by line, with the numbers by which entries are corrected. */
export function storyRows(entries: readonly JarEntry[], today: IsoDay): readonly Row[] {
  const fateOf = fateIn(entries)
  return linesOf(entries, fateOf).map(({ first, last, days }): Row => {
    const { typed } = first
    const of = first.kind === 'undone' || first.kind === 'corrected' ? first.of : null
    const happening = first.kind === 'undone' ? null : first.kind === 'corrected' ? first.by : first
    return {
      label: {
        group: 'rows',
        key: 'jar_entry',
        values: { from: first.seq, to: last.seq, day: days.length > 0 ? null : first.day, today },
      },
      cell: {
        group: 'cells',
        key: 'jar_entry',
        values: { happening, of, typed, days, today, ...fateOf(first) },
      },
    }
  })
}
