import type { HappeningEntry, HappeningKind, JarEntry } from '../../core/jar/entry/entry.ts'
import { effective } from '../../core/jar/entry/standing-entries.ts'
import { isHeldBack } from '../../core/jar/limits/judge-jar.ts'
import { jarStateOf } from '../../core/jar/state/jar-state.ts'
import { isoDay } from '../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../core/quantity/time/zone.ts'
import type { Jar, NudgedJar } from '../../store/person.ts'
import type { Message } from '../text/words.ts'
import type { AskedFor } from './nudge-actions.ts'

/** What each happening leaves nothing to ask of; null: nothing of its jar at all. */
const SETTLED: Readonly<Record<HappeningKind, readonly AskedFor[] | null>> = {
  started: [],
  shaken: ['shake'],
  tasted: ['taste'],
  added: ['add', 'mend'],
  strained: ['strain', 'shake'],
  sweetened: ['sweeten'],
  fruit_sugared: ['sweeten'],
  filtered: ['filter'],
  measured: [],
  bottled: ['bottle'],
  opened: ['ready'],
  put_off: ['later'],
  taken_out: [],
  parted: [],
  poured_in: [],
  noted: [],
  bottles_out: ['drink'],
  emptied: null,
  discarded: null,
  renamed: [],
}

/** Something that answered a nudge, or was taken back since. */
export interface NudgeAnswer {
  readonly name: string
  /** As it stands, or stood. */
  readonly entry: HappeningEntry
  /** The one that said it, or took it back: made by the same attempt, several are one answer. */
  readonly by: JarEntry
  readonly isTakenBack: boolean
}

/** What came of what a nudge asked of a jar. */
export interface JarSince {
  readonly answers: readonly NudgeAnswer[]
  readonly isOpen: (what: AskedFor) => boolean
}

const isHappening = (entry: JarEntry): entry is HappeningEntry => entry.kind !== 'corrected' && entry.kind !== 'undone'

/** Of a jar that is no longer there. */
export const GONE: JarSince = { answers: [], isOpen: () => false }

/**
 * Of each kind the last that stands and answered what was open still; where none stands any more, the last that was taken
 * back and would. Whatever comes after all is answered is no answer.
 */
export function sinceIn({ entries }: Jar, { seq, asked }: NudgedJar): JarSince {
  const story = jarStateOf(entries)
  const name = story?.name ?? jarStateOf(entries.slice(0, 1))?.name
  if (name === undefined) return GONE
  const wasHeldBack = (): boolean => {
    const then = jarStateOf(entries.filter((entry) => entry.seq <= seq))
    return then !== null && isHeldBack(then)
  }
  const isMended = entries.some((entry) => entry.kind === 'added' && entry.seq > seq) && wasHeldBack()
  const open = new Set<AskedFor>([...asked.map(({ kind }) => kind), ...(isMended ? (['mend'] as const) : [])])
  const answersOpen = ({ kind }: HappeningEntry): boolean =>
    SETTLED[kind]?.some((what) => (what === 'later' ? open.size > 0 : open.has(what))) ?? open.size > 0
  const standing = effective(entries)
    .filter((entry) => entry.seq > seq)
    .toSorted((one, other) => one.seq - other.seq)
  const latest = new Map<HappeningKind, NudgeAnswer>()
  for (const entry of standing) {
    if (answersOpen(entry)) latest.set(entry.kind, { name, entry, by: entry, isTakenBack: false })
    for (const what of SETTLED[entry.kind] ?? [...open]) open.delete(what)
  }
  const stands = new Set(latest.keys())
  for (const by of entries) {
    const entry = by.kind === 'undone' ? entries.find((each) => each.seq === by.of) : undefined
    if (entry === undefined || entry.seq <= seq || !isHappening(entry) || stands.has(entry.kind)) continue
    if (answersOpen(entry)) latest.set(entry.kind, { name, entry, by, isTakenBack: true })
  }
  const done = standing.map(({ kind }) => SETTLED[kind])
  const isOver = story === null || done.includes(null)
  const settled = new Set(done.flatMap((each) => each ?? []))
  return {
    answers: [...latest.values()],
    isOpen: (what) => !isOver && (what === 'mend' ? isHeldBack(story) : !settled.has(what)),
  }
}

/** What is said under a nudge of an answer to it: nothing that its owner typed elsewhere, for others may see the nudge. */
export interface SaidAnswer {
  readonly message: Message<'headlines'>
  readonly atMs: number
  readonly isTakenBack: boolean
}

/** The day it was, where it was said on another. */
const lateDay = ({ day, zone, enteredMs }: HappeningEntry) => (day === isoDay(dayAt(zone, enteredMs)) ? null : day)

function messageOf(answers: readonly NudgeAnswer[]): Message<'headlines'> {
  const [{ name, entry, isTakenBack }] = answers as readonly [NudgeAnswer]
  const names = answers.map((each) => each.name)
  const day = lateDay(entry)
  const isOne = names.length === 1
  if (isTakenBack) {
    return isOne
      ? { group: 'headlines', key: 'jar_undone', values: { name, happening: entry, day } }
      : { group: 'headlines', key: 'jar_all_undone', values: { names, happening: entry } }
  }
  if (!isOne && entry.kind === 'shaken') return { group: 'headlines', key: 'jar_all_shaken', values: { names, day } }
  if (!isOne && entry.kind === 'put_off') {
    const { untilDay, untilMs, zone } = entry
    return { group: 'headlines', key: 'jar_all_put_off', values: { names, untilDay, untilMs, zone } }
  }
  return { group: 'headlines', key: 'jar_recorded', values: { name, happening: entry, day, isBrief: true } }
}

/** Answers in the order in which they were made, those of one attempt together. */
export function saidAnswers(answers: readonly NudgeAnswer[]): readonly SaidAnswer[] {
  const together = new Map<string, NudgeAnswer[]>()
  for (const answer of answers.toSorted((one, other) => one.by.enteredMs - other.by.enteredMs)) {
    const { by, entry, isTakenBack } = answer
    const key = by.attempt === undefined ? answer : `${by.attempt} ${entry.kind} ${isTakenBack}`
    const name = typeof key === 'string' ? key : `${together.size}`
    together.set(name, [...(together.get(name) ?? []), answer])
  }
  return [...together.values()].map((all) => ({
    message: messageOf(all),
    atMs: all[0]!.by.enteredMs,
    isTakenBack: all[0]!.isTakenBack,
  }))
}
