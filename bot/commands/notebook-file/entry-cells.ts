import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import { nameIn } from '../../../core/jar/entry/name-in.ts'
import { effective } from '../../../core/jar/entry/standing-entries.ts'
import type { Jar } from '../../../store/person.ts'
import type { Line } from './line.ts'

const instant = (ms: number): string => new Date(ms).toISOString()

/** What was typed, as it was said in a line: `measured:920 ml strength:31%`. */
const typedText = ({ typed }: JarEntry): string => typed.map(([option, text]) => `${option}:${text}`).join(' ')

/** An entry in one line; `details` holds what its kind alone has, whole. */
function cellsOf(entry: JarEntry, id: string, name: string, isUndone: boolean): Line {
  const { seq, kind, day, atMs, zone, enteredMs, typed: _, attempt: _a, ...details } = entry
  const tasted = entry.kind === 'tasted' ? entry : null
  return {
    jarId: id,
    jar: name,
    entry: seq,
    kind,
    day,
    at: instant(atMs),
    zone,
    enteredAt: instant(enteredMs),
    amends: entry.kind === 'undone' || entry.kind === 'corrected' ? entry.of : null,
    undone: isUndone ? 'yes' : 'no',
    typed: typedText(entry),
    rating: tasted?.rating ?? null,
    note: tasted?.note ?? null,
    details: JSON.stringify(details),
  }
}

/** Every entry of a jar, also those that were taken back. */
export function entryCells({ id, entries }: Jar): readonly Line[] {
  const name = nameIn(effective(entries)) ?? nameIn(entries) ?? ''
  const undone = new Set(entries.flatMap((entry) => (entry.kind === 'undone' ? [entry.of] : [])))
  return entries.map((entry) => cellsOf(entry, id, name, undone.has(entry.seq)))
}
