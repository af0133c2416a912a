import { DomainError } from '../../domain-error.ts'
import { isoDay } from '../../quantity/time/calendar-day.ts'
import { dayAt } from '../../quantity/time/zone.ts'
import type { Amendment, Entry, Happening, HappeningEntry, HappeningKind, JarEntry, Moment } from '../entry/entry.ts'
import { effective, lastStanding } from '../entry/standing-entries.ts'
import { contentsOf } from '../state/contents.ts'
import { jarStateOf, stageOf } from '../state/jar-state.ts'
import { expectNote, expectReckonable, expectRoom, KEPT_PLACES, nameNow } from './bounds.ts'
import { follow, type Stopped, type Unusual } from './check-sequence.ts'

/** When an entry was typed, and what, and by which attempt. */
export type Entered = Pick<Entry, 'enteredMs' | 'typed' | 'attempt'>

/** Of an amendment, also where: IANA name. */
export interface Amended extends Entered {
  readonly zone: string
}

export interface RecordedEntry {
  readonly entries: readonly JarEntry[]
  /** As it stands now; where nothing changed, the one that was there already. */
  readonly entry: HappeningEntry
  /** What has become worth a word with it, be it in another entry. */
  readonly unusual: readonly Unusual[]
  /** True where the jar was shaken on that day already, or is open: then nothing changes. */
  readonly isAlready: boolean
}

/**
 * The entries with what happened at their end. Throws `cannot_follow`, `before_straining`, `in_the_way`, `before_start`, what
 * `judgeMeasurement` refuses, `too_many_entries`, `note_too_long`, and `no_such_jar` where the start was undone.
 */
export function record(
  entries: readonly JarEntry[],
  happening: Happening,
  moment: Moment,
  entered: Entered,
): RecordedEntry {
  const before = effective(entries)
  if (before.length === 0 && happening.kind !== 'started') throw noSuchJar(entries)
  expectNote(happening)
  const already = alreadyIn(before, happening.kind, moment)
  if (already !== undefined) return { entries, entry: already, unusual: [], isAlready: true }
  expectRoom(entries, mayUseKept(happening, entered) ? KEPT_PLACES : 0)
  const entry: HappeningEntry = { seq: nextSeq(entries), ...entered, ...moment, ...happening }
  return checked(entries, entry, entry.seq)
}

/**
 * The entries with `by` in the place of the happening `seq`, at `moved` where that is set. Throws as `record`, and
 * `no_such_entry` and `other_kind`.
 */
export function correct(
  entries: readonly JarEntry[],
  seq: number,
  by: Happening,
  moved: Moment | null,
  amended: Amended,
): RecordedEntry {
  expectCorrectable(entries, seq, by.kind)
  expectNote(by)
  expectRoom(entries, 0)
  return checked(entries, amendment(entries, { kind: 'corrected', of: seq, by, moved }, amended), seq)
}

/**
 * Takes back the last entry made and not yet undone; throws `nothing_to_undo`. Nothing that happened later can be in its
 * way: what stands afterwards is what stood before that entry was made, and that was checked then.
 */
export function undo(
  entries: readonly JarEntry[],
  amended: Amended,
): { entries: readonly JarEntry[]; undone: JarEntry } {
  const undone = expectUndoable(entries)
  expectRoom(entries, KEPT_PLACES)
  // A jar that was poured out of another goes with that: before, there was none.
  const of = undone.kind === 'parted' && undone.isNew ? effective(entries)[0]!.seq : undone.seq
  return { entries: [...entries, amendment(entries, { kind: 'undone', of }, amended)], undone }
}

/** Throws `no_such_entry` where the happening `seq` does not stand, and `other_kind` where it is not of this kind. */
export function expectCorrectable(entries: readonly JarEntry[], seq: number, by: HappeningKind): void {
  const wrong = effective(entries).find((entry) => entry.seq === seq)
  if (wrong === undefined) throw new DomainError('not_found', 'no_such_entry', { jar: nameNow(entries), seq })
  if (wrong.kind === by) return
  throw new DomainError('bad_value', 'other_kind', { jar: nameNow(entries), seq, kind: wrong.kind, by })
}

/** The entry that an undo takes back; throws `nothing_to_undo`. */
export function expectUndoable(entries: readonly JarEntry[]): JarEntry {
  const undone = lastStanding(entries)
  if (undone === null) throw new DomainError('wrong_stage', 'nothing_to_undo', { jar: nameNow(entries) })
  return undone
}

/** What happens once a day, or once; throws `cannot_follow` of shaking what is strained. */
function alreadyIn(before: readonly HappeningEntry[], kind: HappeningKind, { day, atMs }: Moment) {
  const story = jarStateOf(before)
  if (kind === 'opened') return story?.ended === null ? before.find((entry) => entry.kind === 'opened') : undefined
  if (kind !== 'shaken') return undefined
  const shaken = before.find((entry) => entry.kind === 'shaken' && entry.day === day)
  const strained = story?.strained
  if (shaken !== undefined || !strained || strained.atMs > atMs || story.ended !== null) return shaken
  const values = { jar: story.name, did: kind, stage: stageOf(story, day), first: null, day: strained.day }
  throw new DomainError('wrong_stage', 'cannot_follow', values)
}

const ENDS: readonly HappeningKind[] = ['emptied', 'discarded']

/** A jar's end may use the kept places, and so may a name that nobody typed. */
const mayUseKept = ({ kind }: Happening, { typed }: Entered): boolean =>
  ENDS.includes(kind) || (kind === 'renamed' && typed.length === 0)

const nextSeq = (entries: readonly JarEntry[]): number => (entries.at(-1)?.seq ?? 0) + 1

const amendment = (entries: readonly JarEntry[], what: Amendment, entered: Amended): JarEntry => ({
  seq: nextSeq(entries),
  ...entered,
  atMs: entered.enteredMs,
  day: isoDay(dayAt(entered.zone, entered.enteredMs)),
  ...what,
})

const noSuchJar = (entries: readonly JarEntry[]): DomainError =>
  new DomainError('not_found', 'no_such_jar', { typed: nameNow(entries), nearest: null })

/** `changed`: the happening that is new, or stands otherwise than before. */
function checked(before: readonly JarEntry[], made: JarEntry, changed: number): RecordedEntry {
  const entries = [...before, made]
  expectReckonable(entries)
  const { unusual, stopped } = follow(entries)
  const entry = effective(entries).find(({ seq }) => seq === changed)!
  if (stopped !== null) throw stopped.at.seq === changed ? tooEarly(stopped, entries) : blocked(stopped, entry, entries)
  // What has no contents must not be kept: everything said of the jar later would fail.
  contentsOf(jarStateOf(entries)!)
  const known = new Set(follow(before).unusual.map(({ seq, key }) => `${seq} ${key}`))
  return {
    entries,
    entry,
    unusual: unusual.filter(({ seq, key }) => seq === changed || !known.has(`${seq} ${key}`)),
    isAlready: false,
  }
}

/** A step that has to wait for a straining says when that was. */
function tooEarly({ at, because }: Stopped, entries: readonly JarEntry[]): DomainError {
  if (because.problem !== 'cannot_follow') return because
  const { first } = because.values as DomainError<'cannot_follow'>['values']
  const strained = effective(entries).find(({ kind, seq }) => kind === 'strained' && seq !== at.seq)
  if (first !== 'strained' || strained === undefined) return because
  return new DomainError('wrong_stage', 'before_straining', { jar: nameNow(entries), did: at.kind, day: strained.day })
}

/** What happened later can be in the way of what is said now; a measurement says itself what is wrong. */
function blocked({ at, because }: Stopped, entry: HappeningEntry, entries: readonly JarEntry[]): DomainError {
  if (because.problem !== 'cannot_follow' && because.problem !== 'before_start') return because
  return new DomainError('wrong_stage', 'in_the_way', {
    jar: nameNow(entries),
    did: entry.kind,
    day: entry.day,
    later: at.kind,
    laterDay: at.day,
    laterSeq: at.seq,
  })
}
