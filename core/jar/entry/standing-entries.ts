import type { Entry, HappeningEntry, JarEntry } from './entry.ts'

const entryOf = ({ seq, enteredMs, typed, atMs, day, zone }: Entry): Entry => ({
  seq,
  enteredMs,
  typed,
  atMs,
  day,
  zone,
})

const byInstant = (one: Entry, other: Entry): number => one.atMs - other.atMs || one.seq - other.seq

/** Whether nothing was taken back, corrected or entered out of turn. */
const stands = (entries: readonly JarEntry[]): entries is readonly HappeningEntry[] =>
  entries.every(({ kind, atMs }, index) => {
    return kind !== 'undone' && kind !== 'corrected' && (index === 0 || atMs >= entries[index - 1]!.atMs)
  })

/** What was typed of it, each option as it was put right last. */
const retyped = (before: Entry['typed'], right: Entry['typed']): Entry['typed'] => {
  const fixes = right.filter(([option]) => option !== 'entry')
  return [...before.filter(([option]) => !fixes.some(([name]) => name === option)), ...fixes]
}

/** What happened, in order, when everything undone is gone and every correction has taken its event's place. */
export function effective(entries: readonly JarEntry[]): readonly HappeningEntry[] {
  if (stands(entries)) return entries
  const undone = new Set(entries.flatMap((entry) => (entry.kind === 'undone' ? [entry.of] : [])))
  const happened = new Map<number, HappeningEntry>()
  for (const entry of entries) {
    if (undone.has(entry.seq) || entry.kind === 'undone') continue
    if (entry.kind !== 'corrected') {
      happened.set(entry.seq, entry)
      continue
    }
    const corrected = happened.get(entry.of)
    if (corrected === undefined) continue
    const typed = retyped(corrected.typed, entry.typed)
    happened.set(entry.of, { ...entryOf(corrected), typed, ...entry.moved, ...entry.by })
  }
  return [...happened.values()].sort(byInstant)
}

/** The last entry that an undo would take back, or null where none is left. */
export function lastStanding(entries: readonly JarEntry[]): JarEntry | null {
  const undone = new Set(entries.flatMap((entry) => (entry.kind === 'undone' ? [entry.of] : [])))
  return entries.findLast(({ kind, seq }) => kind !== 'undone' && !undone.has(seq)) ?? null
}
