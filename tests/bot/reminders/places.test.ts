import { describe, expect, it } from 'vitest'
import type { Place } from '../../../store/person.ts'
import { world } from './inbox.ts'
import { at, DAY_MS, jarOf, MINUTE_MS, personWith } from './people.ts'

const lemon = jarOf({ name: 'lemon', startedMs: at('2026-12-01', '18:00') })
const MORNING = at('2026-12-02')

const local = (usual: Place) => world({ people: { local: personWith([lemon]) }, usual })

describe('a place that is impossible', () => {
  const shed: Place = { kind: 'channel', channelId: '12345678901234500' }
  const toPrivate = (place: Place): Place | null => (place.kind === 'channel' ? { kind: 'private' } : null)

  it('gives way to the next, and a retry stays there', async () => {
    const here = await local(shed)
    here.box.after = toPrivate
    const places: string[] = []
    here.box.answer = ({ place }) => {
      places.push(place.kind)
      if (place.kind === 'channel') return 'impossible'
      return places.length < 3 ? 'failed' : 'sent'
    }
    await here.tick(MORNING)
    await here.tick(MORNING + MINUTE_MS)
    expect(here.logged).toEqual([])
    expect(places).toEqual(['channel', 'private', 'private'])
    expect(here.box.received).toHaveLength(1)
  })

  it('is told once, with the first that arrives elsewhere, and again when it has been open between', async () => {
    const here = await local(shed)
    here.box.after = toPrivate
    let isOpen = false
    let isDown = true
    here.box.answer = ({ place }) => {
      if (place.kind === 'channel') return isOpen ? 'sent' : 'impossible'
      return isDown ? 'failed' : 'sent'
    }
    const MOVED = 'so this comes in private'
    const said = async (day: number): Promise<readonly boolean[]> => {
      await here.tick(MORNING + day * DAY_MS)
      return here.box.texts().map((text) => text.includes(MOVED))
    }
    expect(await said(0)).toEqual([])
    isDown = false
    await here.tick(MORNING + MINUTE_MS)
    expect(here.box.texts().map((text) => text.includes(MOVED))).toEqual([true])
    expect([await said(1), await said(2)]).toEqual([[false], [false]])
    isOpen = true
    expect(await said(3)).toEqual([false])
    isOpen = false
    expect([await said(4), await said(5)]).toEqual([[true], [false]])
  })

  it('keeps the nudge where there is no other, and asks no more', async () => {
    const here = await local(shed)
    here.box.after = toPrivate
    let sends = 0
    here.box.answer = () => {
      sends++
      return 'impossible'
    }
    for (let minute = 0; minute < 60; minute++) await here.tick(MORNING + minute * MINUTE_MS)
    expect(sends).toBe(2)
    expect((await here.person()).nudges).toMatchObject([{ state: 'kept' }])
  })

  it('ends where places lead in a circle', async () => {
    const here = await local(shed)
    here.box.after = () => ({ kind: 'private' })
    const places: string[] = []
    here.box.answer = ({ place }) => {
      places.push(place.kind)
      return 'impossible'
    }
    await here.tick(MORNING)
    expect(places).toEqual(['channel', 'private'])
    expect((await here.person()).nudges).toMatchObject([{ state: 'kept' }])
  })

  it('is left when somebody chooses another', async () => {
    const here = await local(shed)
    here.box.answer = () => 'failed'
    await here.tick(MORNING)
    here.box.answer = () => 'sent'
    await here.change((person) => ({ ...person, settings: { ...person.settings, place: { kind: 'private' } } }))
    await here.tick(MORNING + MINUTE_MS)
    expect(here.box.received).toMatchObject([{ place: { kind: 'private' } }])
  })
})
