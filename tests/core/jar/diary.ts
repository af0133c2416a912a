import { Temporal } from 'temporal-polyfill'
import type { Amendment, Happening, JarEntry } from '../../../core/jar/entry/entry.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { allDuties } from '../../../core/jar/tasks/duties.ts'
import type { DutyKind, DutySettings } from '../../../core/jar/tasks/duty.ts'
import { type Planned, started, strained, sweetened } from './jars.ts'

export const ROME = 'Europe/Rome'

/** `2026-11-01 10:00` as clocks in a zone show it, by the reference of the zones' tests. */
export const at = (when: string, zone = ROME): number =>
  Temporal.PlainDateTime.from(when.replace(' ', 'T')).toZonedDateTime(zone).epochMilliseconds

/** What happened, when, and when it was entered, where that was later. */
export type Line = readonly [when: string, what: Happening | Amendment, entered?: string]

/** Entries as they were made in one zone, in order of entry. */
export const diary = (lines: readonly Line[], zone = ROME): readonly JarEntry[] =>
  lines.map(([when, what, entered = when], index) => ({
    seq: index + 1,
    enteredMs: at(entered, zone),
    typed: [],
    atMs: at(when, zone),
    day: when.slice(0, 10),
    zone,
    ...what,
  }))

export const settings = (rest: Partial<DutySettings> = {}): DutySettings => ({
  zone: ROME,
  atMinutes: 540,
  shake: 'daily',
  pausedUntil: null,
  ...rest,
})

/** Peel begun on 1 November: strained from the 22nd to 6 December, 30 % vol and 200 g/L wanted. */
export const PEEL: Partial<Planned> = {
  targets: { abvPercent: 30, sugarGPerL: 200 },
  tasteFrom: '2026-11-11',
  strainFrom: '2026-11-22',
  strainBy: '2026-12-06',
}

export const peel = (plan: Partial<Planned> = {}) => started({ plan: { ...PEEL, ...plan } })
/** Peel begun, strained and sweetened while it rests. */
export const START: Line = ['2026-11-01 10:00', peel()]
export const STRAINED: Line = ['2026-11-25 18:00', strained()]
export const SWEETENED: Line = ['2026-11-26 18:00', sweetened(800, 400)]

export const SHAKEN: Happening = { kind: 'shaken' }
export const TASTED: Happening = { kind: 'tasted', rating: 4, note: null }
export const BOTTLED: Happening = { kind: 'bottled', bottles: [{ count: 3, volumeMl: 500 }] }
export const FILTERED: Happening = { kind: 'filtered', measured: null }
export const putOff = (untilDay: string, untilMs: number | null = null): Happening => ({
  kind: 'put_off',
  untilDay,
  untilMs,
})

/** When reminders of a kind are said, as clocks in the zone show it. */
export const said = (entries: readonly JarEntry[], kind: DutyKind, wanted = settings()): readonly string[] =>
  allDuties(entries, wanted)
    .filter((duty) => duty.kind === kind)
    .map(({ dueMs }) => shown(dueMs, wanted.zone))

export const shown = (ms: number, zone = ROME): string =>
  Temporal.Instant.fromEpochMilliseconds(ms)
    .toZonedDateTimeISO(zone)
    .toPlainDateTime()
    .toString({ smallestUnit: 'minute' })
    .replace('T', ' ')

/** The same of days alone, said in the morning. */
export const days = (entries: readonly JarEntry[], kind: DutyKind, wanted = settings()): readonly string[] =>
  said(entries, kind, wanted).map((when) => when.replace(/ 09:00$/, ''))

/** All that is said, `kind.day`, in order. */
export const keys = (entries: readonly JarEntry[], wanted = settings()): readonly string[] =>
  allDuties(entries, wanted).map(({ key }) => key)

/** What is asked for now and next of a jar, as clocks in the zone show it. */
export const seen = (entries: readonly JarEntry[], when: string, wanted = settings()) => {
  const { today, next, day, ofDays } = agenda(entries, wanted, at(when))
  return {
    today: today.map(({ kind, sinceDay, byDay, state }) => [kind, sinceDay, byDay, state].filter(Boolean).join(' ')),
    next: next === null ? null : `${next.kind} ${shown(next.dueMs, wanted.zone)}`,
    days: `${day} of ${ofDays}`,
  }
}
