import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { effective } from '../../../core/jar/entry/standing-entries.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { allDuties, duties } from '../../../core/jar/tasks/duties.ts'
import type { Duty } from '../../../core/jar/tasks/duty.ts'
import { dayFromIso, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt, instantAt } from '../../../core/quantity/time/zone.ts'
import { runs, SEED } from '../../runs.ts'
import { diary, settings, shown } from './diary.ts'
import { started } from './jars.ts'
import { DAY_MS, HOUR_MS, lives, type Moment } from './lives.ts'

const always = (law: (life: readonly Moment[]) => void) =>
  fc.assert(fc.property(lives, law), { seed: SEED, numRuns: runs(40, 2000) })

const keysOf = (all: readonly Duty[]) => all.map(({ key }) => key).sort()

describe('at every moment of a jar', () => {
  it('no key comes twice, all come in order, none before the jar or its entry', () => {
    always((life) => {
      for (const { entries, wanted } of life) {
        const all = allDuties(entries, wanted)
        expect(new Set(keysOf(all)).size).toBe(all.length)
        expect(all.map(({ dueMs }) => dueMs)).toEqual(all.map(({ dueMs }) => dueMs).sort((a, b) => a - b))
        for (const { dueMs } of all) {
          expect(dueMs).toBeGreaterThanOrEqual(entries[0]!.atMs)
          expect(dueMs).toBeGreaterThanOrEqual(entries[0]!.enteredMs)
        }
        expect(all.filter(({ kind }) => kind === 'shake').length).toBeLessThanOrEqual(7)
      }
    })
  })

  it('nothing is said before a pause is over, nor before the day it was put off to', () => {
    always((life) => {
      for (const { entries, wanted } of life) {
        const putOff = effective(entries).findLast(({ kind }) => kind === 'put_off')
        const untilMs = putOff?.kind === 'put_off' ? putOff.untilMs : null
        const isLater = putOff?.kind === 'put_off' && untilMs === null && putOff.untilDay > putOff.day
        const days = [wanted.pausedUntil, isLater ? putOff.untilDay : null].filter((day) => day !== null)
        for (const { dueMs, day } of allDuties(entries, wanted)) {
          if (untilMs !== null && untilMs > putOff!.enteredMs) expect([day, dueMs >= untilMs]).toEqual([day, true])
          for (const day of days) {
            expect(dueMs).toBeGreaterThanOrEqual(instantAt(wanted.zone, dayFromIso(day), wanted.atMinutes))
          }
        }
      }
    })
  })

  it('keeps its keys when the zone or the hour is changed', () => {
    always((life) => {
      for (const { entries, wanted } of life) {
        const moved = { ...wanted, zone: 'Asia/Tokyo', atMinutes: 1439 - wanted.atMinutes }
        expect(keysOf(allDuties(entries, moved))).toEqual(keysOf(allDuties(entries, wanted)))
      }
    })
  })

  it('an entry undone is as if it had not been made, but what fell due before waits for the next morning at most', () => {
    always((life) => {
      const { entries, wanted } = life.at(-1)!
      const standing = new Set(effective(entries).map(({ seq }) => seq))
      const left = allDuties(
        entries.filter(({ seq }) => standing.has(seq)),
        wanted,
      )
      const undoneMs = Math.max(...entries.flatMap(({ kind, enteredMs }) => (kind === 'undone' ? [enteredMs] : [])))
      const timeless = (all: readonly Duty[]) => new Map(all.map(({ dueMs: _, ...duty }) => [duty.key, duty]))
      const all = allDuties(entries, wanted)
      expect(timeless(all)).toEqual(timeless(left))
      for (const { key, dueMs } of all) {
        const before = left.find((duty) => duty.key === key)!.dueMs
        if (dueMs === before) continue
        expect(before).toBeLessThanOrEqual(undoneMs)
        expect(dueMs).toBeGreaterThan(before)
        expect(dueMs - undoneMs).toBeLessThan(2 * DAY_MS)
      }
    })
  })

  it('a jar that is known before its last day for straining is asked about by that day', () => {
    always(([born]) => {
      const { entries, wanted } = born!
      const { days: plan, enteredMs, zone } = jarStateOf(entries)!.started
      if (plan.isHours || plan.strainBy === null || isoDay(dayAt(zone, enteredMs)) >= plan.strainBy) return
      const strains = allDuties(entries, wanted).filter(({ kind }) => kind === 'strain')
      expect(strains.some(({ day }) => day <= plan.strainBy!)).toBe(true)
    })
  })

  it('an end stops all', () => {
    always((life) => {
      for (const { entries, wanted } of life) {
        if (jarStateOf(entries)!.ended !== null) expect(allDuties(entries, wanted)).toEqual([])
      }
    })
  })
})

/** What is said if one looks every few hours, and what had changed since one looked last. */
function* told(life: readonly Moment[], everyHours = 6) {
  const keys = new Set<string>()
  let moment = -1
  for (let nowMs = life[0]!.fromMs; nowMs < life.at(-1)!.fromMs + 60 * DAY_MS; nowMs += everyHours * HOUR_MS) {
    const did: Moment['did'][] = []
    while (moment + 1 < life.length && life[moment + 1]!.fromMs <= nowMs) did.push(life[++moment]!.did)
    const { entries, wanted } = life[moment]!
    const due = duties(entries, wanted, nowMs).filter(({ key }) => !keys.has(key))
    for (const { key } of due) keys.add(key)
    yield { nowMs, entries, wanted, due, did }
  }
}

describe('told as it falls due', () => {
  it('no more than seven shakes go unanswered, and none comes on a day on which the jar was shaken', () => {
    always((life) => {
      let unanswered = 0
      for (const { entries, due, did } of told(life)) {
        if (did.some((each) => each !== 'set')) unanswered = 0
        for (const { day } of due.filter(({ kind }) => kind === 'shake')) {
          unanswered++
          expect(jarStateOf(entries)!.happened.some((entry) => entry.kind === 'shaken' && entry.day >= day)).toBe(false)
        }
        expect(unanswered).toBeLessThanOrEqual(7)
      }
    })
  })

  it('nothing old comes up because a zone or an hour was changed', () => {
    always((life) => {
      for (const { nowMs, due, did } of told(life)) {
        if (did.some((each) => each !== 'set')) continue
        for (const { dueMs, key } of due) expect([key, nowMs - dueMs < 2 * DAY_MS]).toEqual([key, true])
      }
    })
  })
})

/** Saturday to Monday of each change, or the days around it, in zones with odd rules. */
describe.each([
  ['Europe/Rome', 2026, 2],
  ['America/New_York', 2026, 2],
  ['America/St_Johns', 2026, 2],
  ['America/Sao_Paulo', 2018, 2],
  ['Africa/Casablanca', 2026, 2],
  ['Asia/Tehran', 2021, 2],
  ['Australia/Lord_Howe', 2026, 2],
  ['Australia/Adelaide', 2026, 2],
  ['Pacific/Chatham', 2026, 2],
  ['Pacific/Apia', 2011, 3],
])('where clocks are set in %s in %i', (zone, year, changes) => {
  const starts: Temporal.PlainDate[] = []
  let at = Temporal.ZonedDateTime.from(`${year}-01-01T00:00[${zone}]`).getTimeZoneTransition('next')
  for (; at !== null && at.year <= year; at = at.getTimeZoneTransition('next'))
    starts.push(at.toPlainDate().subtract({ days: 4 }))

  it('a jar is shaken at nine in the morning of every day', () => {
    expect(starts).toHaveLength(changes)
    for (const start of starts) {
      const all = allDuties(diary([[`${start} 10:00`, started()]], zone), settings({ zone }))
      const days = Array.from({ length: 7 }, (_, index) => start.add({ days: index + 1 }).toString())
      expect(all.map(({ day }) => day)).toEqual(days)
      const isLeftOut = (day: string) => zone === 'Pacific/Apia' && day === '2011-12-30'
      expect(all.map(({ dueMs }) => shown(dueMs, zone))).toEqual(
        days.map((day) => `${isLeftOut(day) ? '2011-12-31' : day} 09:00`),
      )
    }
  })
})
