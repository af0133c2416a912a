import type { HappeningEntry, HappeningKind, JarEntry } from '../entry/entry.ts'
import { effective } from '../entry/standing-entries.ts'

/** They leave what is in a jar as it was. */
const HARMLESS: readonly HappeningKind[] = ['shaken', 'tasted', 'opened', 'renamed', 'noted', 'bottles_out', 'put_off']

const stateOf = (entries: readonly JarEntry[]): readonly HappeningEntry[] =>
  effective(entries).filter(({ kind }) => !HARMLESS.includes(kind))

/** Whether what is in a jar is known otherwise now than after the entry `seq`. */
export const hasMovedOn = (entries: readonly JarEntry[], seq: number): boolean =>
  JSON.stringify(stateOf(entries)) !== JSON.stringify(stateOf(entries.filter((entry) => entry.seq <= seq)))
