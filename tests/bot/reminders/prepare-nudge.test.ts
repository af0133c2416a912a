import { describe, expect, it } from 'vitest'
import { cutOff, intend, type Verdicts } from '../../../bot/reminders/prepare-nudge.ts'
import { SENDING_MS } from '../../../bot/reminders/quiet-pause.ts'
import type { Nudge, Person, Place } from '../../../store/person.ts'
import { at, jarOf, MINUTE_MS, personWith, ZONE } from './people.ts'

const HERE: Place = { kind: 'channel', channelId: '12345678901234567' }
const PRIVATE: Place = { kind: 'private' }
const places = { placeOf: () => HERE, after: (place: Place) => (place.kind === 'channel' ? PRIVATE : null) }
const MORNING_MS = at('2026-12-02')

const walnut = jarOf({ name: 'walnut', startedMs: at('2026-12-01', '18:00') })
const duty = (day: string) => ({ jarId: 'walnu', kind: 'shake', key: `shake.${day}` }) as const

const waiting = (more: Partial<Nudge> = {}): Nudge => ({
  id: 'oldid',
  place: HERE,
  duties: [duty('2026-12-02')],
  state: 'waiting',
  madeMs: MORNING_MS,
  attempts: 3,
  nextMs: MORNING_MS + 4 * MINUTE_MS,
  ...more,
})

const someone = (nudges: readonly Nudge[], told: readonly string[] = []): Person => ({
  ...personWith([{ ...walnut, told }]),
  nudges,
})

const intended = (person: Person, nowMs: number, verdicts: Verdicts = new Map()) =>
  intend('local', person, verdicts, { nowMs, assumedZone: ZONE }, places)

describe('a nudge', () => {
  it('that is only tried again keeps its id, its age and its place, and counts its attempts', () => {
    const nowMs = MORNING_MS + 4 * MINUTE_MS
    const { nudge } = intended(someone([waiting({ place: PRIVATE })]), nowMs)!
    expect(nudge).toEqual({
      ...waiting({ place: PRIVATE }),
      state: 'sending',
      attempts: 4,
      nextMs: nowMs + SENDING_MS,
    })
  })

  it('that carries something new besides is another: an old id may be dropped as a repeat', () => {
    const nowMs = at('2026-12-03')
    const { nudge } = intended(someone([waiting({ nextMs: nowMs })]), nowMs)!
    expect(nudge!.id).not.toBe('oldid')
    expect(nudge).toMatchObject({ attempts: 1, madeMs: nowMs, place: HERE, state: 'sending' })
    expect(nudge!.duties.map(({ key }) => key)).toEqual(['shake.2026-12-02', 'shake.2026-12-03'])
  })

  it('is not tried before its time', () => {
    expect(intended(someone([waiting()]), MORNING_MS + 4 * MINUTE_MS - 1)).toBeNull()
  })

  it('that was cut off is looked for after two minutes, and tried again where it is not there', () => {
    const sending = waiting({ state: 'sending', nextMs: MORNING_MS + SENDING_MS })
    const person = someone([sending])
    expect(cutOff(person, MORNING_MS + SENDING_MS - 1)).toEqual([])
    expect(cutOff(person, MORNING_MS + SENDING_MS)).toEqual([sending])
    const nowMs = MORNING_MS + SENDING_MS
    expect(intended(person, nowMs)).toBeNull()
    expect(intended(person, nowMs, new Map([['oldid', 'absent']]))!.nudge).toMatchObject({ id: 'oldid', attempts: 4 })
  })

  it('that arrived after all is told, and gone', () => {
    const sending = waiting({ state: 'sending', nextMs: MORNING_MS + SENDING_MS })
    const intent = intended(someone([sending]), MORNING_MS + SENDING_MS, new Map([['oldid', 'there']]))!
    expect(intent.nudge).toBeNull()
    expect(intent.person.nudges).toEqual([])
    expect(intent.person.jars[0]!.told).toEqual(['shake.2026-12-02'])
  })
})
