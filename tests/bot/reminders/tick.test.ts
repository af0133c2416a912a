import { describe, expect, it } from 'vitest'
import type { Person } from '../../../store/person.ts'
import { world } from './inbox.ts'
import { ginger, lemon, walnut } from './nudged.ts'
import { at, DAY_MS, happened, MINUTE_MS, personWith, undo } from './people.ts'

const local = (person: Person) => world({ people: { local: person } })

describe('what is said', () => {
  it('is one nudge, however many jars', async () => {
    const here = await local(personWith([lemon, walnut, ginger]))
    await here.tick(at('2026-12-02', '08:59'))
    expect(here.box.received).toEqual([])
    await here.tick(at('2026-12-02'))
    expect(here.box.received).toHaveLength(1)
    expect(here.box.texts()[0]).toMatch(/^Shake lemon, walnut and ginger\.\n/)
  })

  it('is said once', async () => {
    const here = await local(personWith([lemon]))
    for (let minute = 0; minute < 60; minute++) await here.tick(at('2026-12-02') + minute * MINUTE_MS)
    expect(here.box.received).toHaveLength(1)
    const person = await here.person()
    expect(person.jars[0]?.told).toEqual(['shake.2026-12-02'])
    expect(person.nudges).toEqual([])
  })

  it('says missed days in one line', async () => {
    const here = await local(personWith([lemon, walnut]))
    await here.tick(at('2026-12-05', '11:00'))
    expect(here.box.texts()).toEqual([expect.stringMatching(/^Shake lemon and walnut\.\n/)])
    expect((await here.person()).jars[0]?.told).toHaveLength(4)
  })

  it('goes to everybody, each in their own zone', async () => {
    const rome = personWith([lemon])
    const tokyo = personWith([lemon], { zone: 'Asia/Tokyo' })
    const here = await world({ people: { '12345678901234567': rome, '12345678901234568': tokyo } })
    await here.tick(at('2026-12-02', '01:00'))
    expect(here.box.received.map(({ userId }) => userId)).toEqual(['12345678901234568'])
    await here.tick(at('2026-12-02'))
    expect(here.box.received.map(({ userId }) => userId)).toEqual(['12345678901234568', '12345678901234567'])
  })

  it('is left alone where the surface does not reach a person', async () => {
    const here = await local(personWith([lemon]))
    here.surface.placeOf = () => null
    await here.tick(at('2026-12-02'))
    expect(await here.person()).toEqual(personWith([lemon]))
  })
})

describe('what is not wanted any more', () => {
  it('is left out when it was done before it fell due', async () => {
    const here = await local(
      happened(personWith([lemon, walnut]), 'lemon', at('2026-12-02', '08:00'), { kind: 'shaken' }),
    )
    await here.tick(at('2026-12-02'))
    expect(here.box.texts()).toEqual([expect.stringMatching(/^Shake walnut\./)])
  })

  it('is left out of a nudge that is tried again', async () => {
    const here = await local(personWith([lemon, walnut]))
    here.box.answer = () => 'failed'
    await here.tick(at('2026-12-02'))
    here.box.answer = () => 'sent'
    await here.change((person) => happened(person, 'walnu', at('2026-12-02', '09:00'), { kind: 'shaken' }))
    await here.tick(at('2026-12-02', '09:01'))
    expect(here.box.texts()).toEqual([expect.stringMatching(/^Shake lemon\./)])
  })

  it.each<[what: string, change: (person: Person) => Person]>([
    ['shaken', (person) => happened(person, 'lemon', at('2026-12-02', '09:00'), { kind: 'shaken' })],
    ['discarded', (person) => happened(person, 'lemon', at('2026-12-02', '09:00'), { kind: 'discarded' })],
    ['never started', (person) => undo(person, 'lemon', at('2026-12-02', '09:00'), 1)],
    [
      'put off',
      (person) =>
        happened(person, 'lemon', at('2026-12-02', '09:00'), {
          kind: 'put_off',
          untilDay: '2026-12-04',
          untilMs: null,
        }),
    ],
    ['paused', (person) => ({ ...person, settings: { ...person.settings, pausedUntil: '2026-12-04' } })],
    ['switched off', (person) => ({ ...person, settings: { ...person.settings, shake: 'off' } })],
    ['gone', (person) => ({ ...person, jars: [] })],
  ])('drops the nudge when its only jar was %s', async (_what, change) => {
    const here = await local(personWith([lemon]))
    here.box.answer = () => 'failed'
    await here.tick(at('2026-12-02'))
    expect((await here.person()).nudges).toHaveLength(1)
    here.box.answer = () => 'sent'
    await here.change(change)
    await here.tick(at('2026-12-02', '09:01'))
    expect(here.box.received).toEqual([])
    expect((await here.person()).nudges).toEqual([])
  })

  it('comes after all when what answered it is taken back', async () => {
    const here = await local(personWith([lemon]))
    here.box.answer = () => 'failed'
    await here.tick(at('2026-12-02'))
    await here.change((person) => happened(person, 'lemon', at('2026-12-02', '09:00'), { kind: 'shaken' }))
    here.box.answer = () => 'sent'
    await here.tick(at('2026-12-02', '09:01'))
    await here.change((person) => undo(person, 'lemon', at('2026-12-02', '09:05'), 2))
    await here.tick(at('2026-12-02', '09:06'))
    expect(here.box.texts()).toEqual([expect.stringMatching(/^Shake lemon\./)])
  })

  it('says a day that was put off, and the end of a pause, once', async () => {
    const putOff = await local(
      happened(personWith([lemon]), 'lemon', at('2026-12-01', '19:00'), {
        kind: 'put_off',
        untilDay: '2026-12-04',
        untilMs: null,
      }),
    )
    const paused = await local(personWith([lemon], { pausedUntil: '2026-12-04' }))
    for (const here of [putOff, paused]) {
      for (const day of ['02', '03']) await here.tick(at(`2026-12-${day}`))
      expect(here.box.received).toEqual([])
      for (const time of ['09:00', '09:01', '12:00']) await here.tick(at('2026-12-04', time))
      expect(here.box.received).toHaveLength(1)
    }
  })
})

describe('a clock that jumps', () => {
  it('repeats nothing when set back a year', async () => {
    const here = await local(personWith([lemon, ginger]))
    await here.tick(at('2026-12-11'))
    expect(here.box.received).toHaveLength(1)
    for (const days of [365, 364, 363, 10, 1, 0]) await here.tick(at('2026-12-11') - days * DAY_MS)
    expect(here.box.received).toHaveLength(1)
  })

  it('repeats nothing when set forward by less than a day and back', async () => {
    const here = await local(personWith([lemon, ginger]))
    await here.tick(at('2026-12-02'))
    await here.tick(at('2026-12-03', '08:50') + DAY_MS)
    expect(here.box.received).toHaveLength(2)
    for (let minute = -10; minute <= 60; minute++) await here.tick(at('2026-12-03', '09:00') + minute * MINUTE_MS)
    expect(here.box.received).toHaveLength(2)
  })

  it('does not keep a failed nudge for a year when set back', async () => {
    const here = await local(personWith([lemon]))
    here.box.answer = () => 'failed'
    await here.tick(at('2027-12-02'))
    here.box.answer = () => 'sent'
    await here.remind('local', at('2026-12-02'))
    expect(here.box.received).toHaveLength(1)
  })
})

describe('a fault', () => {
  it('of one person stops nobody else', async () => {
    const ids = Array.from({ length: 12 }, (_, index) => `1234567890123456${10 + index}`)
    const here = await world({ people: Object.fromEntries(ids.map((id) => [id, personWith([lemon])])) })
    const { update } = here.store
    here.store.update = (userId, change) =>
      ids.indexOf(userId) % 3 === 0 ? Promise.reject(new TypeError('torn')) : update(userId, change)
    await here.tick(at('2026-12-02'))
    expect(here.box.received).toHaveLength(8)
    expect(here.logged).toHaveLength(4)
    expect(here.logged.join()).not.toContain('torn')
    here.store.update = update
    await here.tick(at('2026-12-02', '09:06'))
    expect(here.box.received).toHaveLength(12)
  })

  it('never makes the pass endless: who is named again is not asked again', async () => {
    const here = await local(personWith([lemon]))
    here.store.claimDue = async () => ['local']
    let sends = 0
    here.box.answer = () => {
      sends++
      return 'failed'
    }
    await here.tick(at('2026-12-02'))
    expect(sends).toBe(1)
  })

  it('reaches people beyond one batch', async () => {
    const ids = Array.from({ length: 150 }, (_, index) => `12345678901234${1000 + index}`)
    const here = await world({ people: Object.fromEntries(ids.map((id) => [id, personWith([lemon])])) })
    await here.tick(at('2026-12-02'))
    expect(new Set(here.box.received.map(({ userId }) => userId)).size).toBe(150)
  })
})
