import type { JarEntry } from '../entry/entry.ts'
import { lastStanding } from '../entry/standing-entries.ts'
import type { KeptJar } from '../state/jar-state.ts'

const isPouring = (entry: JarEntry | null): entry is JarEntry =>
  entry !== null && (entry.kind === 'parted' || entry.kind === 'poured_in')

/** Two entries that were made by the same pouring. */
const isSame = (one: JarEntry, other: JarEntry): boolean =>
  isPouring(other) && one.enteredMs === other.enteredMs && one.attempt === other.attempt

/** Whether what stands last was made by the same pouring as an entry that was taken back. */
export const isRestOf = (undone: JarEntry, entries: readonly JarEntry[]): boolean => {
  const last = lastStanding(entries)
  return isPouring(undone) && last !== null && isSame(undone, last)
}

/**
 * The jars that go with one whose last entry is to be taken back, itself the first: those that the same pouring changed.
 * `isLast` is false of one in which something has happened since.
 */
export function pouredWith<Jar extends KeptJar>(
  jar: Jar,
  jars: readonly Jar[],
): readonly { readonly jar: Jar; readonly isLast: boolean }[] {
  const last = lastStanding(jar.entries)
  if (!isPouring(last)) return [{ jar, isLast: true }]
  const undone = (each: Jar) => new Set(each.entries.flatMap((entry) => (entry.kind === 'undone' ? [entry.of] : [])))
  const others = jars
    .filter(({ id }) => id !== jar.id)
    .flatMap((each) => {
      const gone = undone(each)
      const isBegun = !gone.has(each.entries[0]?.seq ?? 0)
      const same = each.entries.filter((entry) => isBegun && !gone.has(entry.seq) && isSame(last, entry))
      if (same.length === 0) return []
      const standing = lastStanding(each.entries)
      return [{ jar: each, isLast: standing !== null && isSame(last, standing) }]
    })
  return [{ jar, isLast: true }, ...others]
}
