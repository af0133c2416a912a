import type { JarEntry } from './entry.ts'

/** The last name that entries give a jar, or null. */
export const nameIn = (entries: readonly JarEntry[]): string | null =>
  entries.reduce<string | null>((name, entry) => {
    if (entry.kind === 'started' || entry.kind === 'renamed') return entry.name
    return entry.kind === 'poured_in' ? (entry.into ?? name) : name
  }, null)
