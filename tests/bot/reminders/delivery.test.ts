import { describe, expect, it } from 'vitest'
import { world } from './inbox.ts'
import { at, DAY_MS, jarOf, MINUTE_MS, personWith } from './people.ts'

const lemon = jarOf({ name: 'lemon', startedMs: at('2026-12-01', '18:00') })
/** Asked to be strained on the morning, and weekly after that. */
const strainedWeekly = jarOf({ name: 'lemon', startedMs: at('2026-11-01'), plan: { strainFrom: '2026-12-02' } })
const MORNING = at('2026-12-02')
const SEEN = 'You may have seen this already'

const local = () => world({ people: { local: personWith([lemon]) } })

describe('a nudge that fails', () => {
  it('is tried again after 1, 2, 4 … up to 60 minutes', async () => {
    const here = await local()
    const tries: number[] = []
    here.box.answer = () => 'failed'
    for (let minute = 0; minute <= 6 * 60; minute++) {
      const nowMs = MORNING + minute * MINUTE_MS
      here.box.answer = () => {
        tries.push(minute)
        return 'failed'
      }
      await here.tick(nowMs)
    }
    const pauses = tries.slice(1).map((minute, index) => minute - (tries[index] ?? 0))
    expect(tries[0]).toBe(0)
    expect(pauses).toEqual([1, 2, 4, 8, 16, 32, 60, 60, 60, 60])
  })

  it('counts its attempts and keeps its id', async () => {
    const here = await local()
    const attempts: [string, number][] = []
    here.box.answer = ({ nudgeId, attempt }) => {
      attempts.push([nudgeId, attempt])
      return attempts.length < 3 ? 'failed' : 'sent'
    }
    for (const minute of [0, 1, 3]) await here.tick(MORNING + minute * MINUTE_MS)
    expect(attempts.map(([, attempt]) => attempt)).toEqual([1, 2, 3])
    expect(new Set(attempts.map(([id]) => id)).size).toBe(1)
    expect(attempts[0]?.[0]).toMatch(/^[a-z0-9]{1,25}$/)
    expect(here.box.received[0]?.mayHaveBeenSeen).toBe(false)
  })

  it('is kept after a day, and goes out with the next that has something to say', async () => {
    const here = await world({
      people: {
        local: personWith([strainedWeekly], {
          shake: 'off',
        }),
      },
    })
    here.box.answer = () => 'failed'
    for (let minute = 0; minute <= 25 * 60; minute++) await here.tick(MORNING + minute * MINUTE_MS)
    const [nudge] = (await here.person()).nudges
    expect(nudge).toMatchObject({ state: 'kept', duties: [{ key: 'strain.2026-12-02' }] })
    here.box.answer = () => 'sent'
    await here.tick(MORNING + 3 * DAY_MS)
    expect(here.box.received).toEqual([])
    await here.tick(MORNING + 7 * DAY_MS)
    expect(here.box.received).toHaveLength(1)
    const person = await here.person()
    expect(person.nudges).toEqual([])
    expect(person.jars[0]?.told).toEqual(['strain.2026-12-02', 'strain.2026-12-09'])
  })

  it('joins what falls due meanwhile: one message', async () => {
    const here = await local()
    here.box.answer = () => 'failed'
    for (let minute = 0; minute <= 23 * 60; minute++) await here.tick(MORNING + minute * MINUTE_MS)
    here.box.answer = () => 'sent'
    await here.tick(MORNING + DAY_MS)
    expect(here.box.received).toHaveLength(1)
    expect((await here.person()).jars[0]?.told).toEqual(['shake.2026-12-02', 'shake.2026-12-03'])
  })
})

describe('a nudge of which nobody knows whether it was sent', () => {
  const cutOff = async () => {
    const here = await local()
    here.box.answer = () => new Error('socket closed')
    await here.tick(MORNING)
    here.box.answer = () => 'sent'
    return here
  }

  it('is left alone for two minutes', async () => {
    const here = await cutOff()
    await here.tick(MORNING + MINUTE_MS)
    expect([here.box.asked, here.box.received]).toEqual([[], []])
    expect(here.logged.join()).not.toContain('socket closed')
  })

  it('is recorded as sent where it is found', async () => {
    const here = await cutOff()
    here.box.found = () => 'there'
    await here.tick(MORNING + 2 * MINUTE_MS)
    expect(here.box.received).toEqual([])
    expect(await here.person()).toMatchObject({ nudges: [], jars: [{ told: ['shake.2026-12-02'] }] })
  })

  it('is sent again, with nothing said of it, where it is absent', async () => {
    const here = await cutOff()
    here.box.found = () => 'absent'
    await here.tick(MORNING + 2 * MINUTE_MS)
    expect(here.box.received).toMatchObject([{ mayHaveBeenSeen: false, attempt: 2 }])
    expect(here.box.received[0]?.text).not.toContain(SEEN)
  })

  it('is sent again, marked, where nobody can tell, and stays marked when that fails', async () => {
    const here = await cutOff()
    here.box.answer = () => 'failed'
    await here.tick(MORNING + 2 * MINUTE_MS)
    here.box.answer = () => 'sent'
    await here.tick(MORNING + 5 * MINUTE_MS)
    expect(here.box.received).toMatchObject([{ mayHaveBeenSeen: true, attempt: 3 }])
    expect(here.box.received[0]?.text).toContain(SEEN)
  })

  it('is sent again, marked, where the surface cannot look or fails to', async () => {
    for (const findSent of [undefined, () => Promise.reject(new Error('no history'))]) {
      const here = await cutOff()
      Object.assign(here.surface, { findSent })
      await here.tick(MORNING + 2 * MINUTE_MS)
      expect(here.box.received).toMatchObject([{ mayHaveBeenSeen: true }])
    }
  })

  it('is not said again when its jar was answered and the answer is taken back', async () => {
    const here = await cutOff()
    await here.change((person) => ({ ...person, settings: { ...person.settings, shake: 'off' } }))
    await here.tick(MORNING + 2 * MINUTE_MS)
    await here.change((person) => ({ ...person, settings: { ...person.settings, shake: 'daily' } }))
    await here.tick(MORNING + 3 * MINUTE_MS)
    expect(here.box.received).toEqual([])
  })

  it('gives up asking after a day', async () => {
    const here = await local()
    here.box.answer = () => new Error('socket closed')
    await here.change((person) => ({
      ...person,
      jars: [strainedWeekly],
      settings: { ...person.settings, shake: 'off' },
    }))
    for (let minute = 0; minute <= 25 * 60; minute++) await here.tick(MORNING + minute * MINUTE_MS)
    expect((await here.person()).nudges).toMatchObject([{ state: 'kept' }])
    expect(here.box.asked.length).toBeLessThan(40)
  })
})
