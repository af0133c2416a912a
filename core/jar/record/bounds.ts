import { DomainError } from '../../domain-error.ts'
import type { Happening, JarEntry } from '../entry/entry.ts'
import { nameIn } from '../entry/name-in.ts'
import { effective } from '../entry/standing-entries.ts'
import { stepsOf } from '../state/liquid-steps.ts'

/** Entries of a jar; the last hundred places are kept for its end and for taking back. */
export const MOST_ENTRIES = 1000
export const KEPT_PLACES = 100
/** What went in or was measured, so that the ± of all of it is reckoned at once. */
export const MOST_CHANGES = 60
/** The longest note, in code points. */
export const MOST_NOTE_CHARACTERS = 1000

/**
 * Bytes of a jar's entries as JSON (UTF-8). A thousand entries with the longest note in four-byte letters, kept as typed and
 * as read, come to 8.4 MB.
 */
export const MOST_JAR_BYTES = 9_000_000
/** Fewer entries than this never come to that size, however long their texts. */
const FEW_ENTRIES = 150

/** The name a jar has, or had when it was there. */
export const nameNow = (entries: readonly JarEntry[]): string => nameIn(effective(entries)) ?? nameIn(entries) ?? ''

/** Throws `note_too_long`. */
export function expectNote(happening: Happening): void {
  if (happening.kind !== 'tasted' && happening.kind !== 'noted') return
  const { length } = [...(happening.note ?? '')]
  if (length <= MOST_NOTE_CHARACTERS) return
  throw new DomainError('limit', 'note_too_long', { length, most: MOST_NOTE_CHARACTERS })
}

/** Throws `too_many_entries`, and `jar_full` where no place is kept for what comes. `more`: places beyond the usual. */
export function expectRoom(entries: readonly JarEntry[], more: number): void {
  if (entries.length >= MOST_ENTRIES + more) {
    throw new DomainError('limit', 'too_many_entries', { jar: nameNow(entries), most: MOST_ENTRIES })
  }
  if (more > 0 || entries.length < FEW_ENTRIES || bytesOf(entries) <= MOST_JAR_BYTES) return
  throw new DomainError('limit', 'jar_full', { jar: nameNow(entries) })
}

/** The size of entries as they are stored. */
export const bytesOf = (entries: readonly JarEntry[]): number =>
  new TextEncoder().encode(JSON.stringify(entries)).length

/** Throws `too_many_changes`. */
export function expectReckonable(entries: readonly JarEntry[]): void {
  if (stepsOf(effective(entries)).length <= MOST_CHANGES) return
  throw new DomainError('limit', 'too_many_changes', { jar: nameNow(entries), most: MOST_CHANGES })
}
