import { describe, expect, it } from 'vitest'
import type { TalkReading } from '../../../bot/talk/frames/reading.ts'
import { doubted } from '../../../bot/talk/reader/doubted.ts'
import { callTo, FOUND, FREELY, leaning, NOTHING, TOPIC } from './readings.ts'

describe('a reading where the handbook is likelier', () => {
  const plan = callTo('plan')

  it('found nothing but that there are jars, and gives way where an entry is likelier', () => {
    const bare: TalkReading = { ...callTo('jar list'), call: { command: 'jar list', options: {} } }
    const shares = leaning({ handbook: 0.66, 'jar list': 0.02 })
    expect(doubted(bare, shares, FOUND, FREELY)).toBe(TOPIC)
    expect(doubted(bare, leaning({ handbook: 0.9, 'jar list': 0.1 }), NOTHING, FREELY)).toMatchObject({ kind: 'lost' })
    expect(doubted(callTo('jar list'), shares, FOUND, FREELY)).toMatchObject({ kind: 'call' })
  })

  it('would only be done by a line that is typed, and the handbook is surely asked', () => {
    const typed: TalkReading = { kind: 'only_typed', call: { command: 'jar discard', options: {} } }
    const asked = { ...FREELY, isAsked: true }
    expect(doubted(typed, leaning({ handbook: 0.95 }), FOUND, asked)).toBe(TOPIC)
    expect(doubted(typed, leaning({ handbook: 0.94 }), FOUND, asked)).toBe(typed)
    expect(doubted(typed, leaning({ handbook: 0.95 }), FOUND, FREELY)).toBe(typed)
  })

  it('is a plan, and mostly what an entry answers where it is asked', () => {
    const asked = { ...FREELY, isAsked: true }
    const shares = { handbook: 0.7, plan: 0.2, botanical: 0.09 }
    expect(doubted(plan, leaning(shares), FOUND, asked)).toBe(TOPIC)
    expect(doubted(plan, leaning(shares), NOTHING, asked)).toBe(plan)
    for (const each of [FREELY, { ...asked, isPlain: () => true }])
      expect(doubted(plan, leaning(shares), FOUND, each)).toBe(plan)
    for (const other of [{ handbook: 0.69 }, { botanical: 0.1 }])
      expect(doubted(plan, leaning({ ...shares, ...other }), FOUND, asked)).toBe(plan)
  })

  it('gives way to an entry where the handbook is surely asked, unless it records', () => {
    const asked = { ...FREELY, isAsked: true }
    const shares = { handbook: 0.96, bottles: 0 }
    expect(doubted(callTo('bottles'), leaning(shares), FOUND, asked)).toBe(TOPIC)
    const lacks: TalkReading = { ...callTo('bottles'), kind: 'question', about: { kind: 'which_jar' }, choices: [] }
    expect(doubted(lacks, leaning(shares), FOUND, asked)).toBe(TOPIC)
    for (const [reading, share, how] of [
      [callTo('bottles'), 0.96, FREELY],
      [callTo('bottles'), 0.94, asked],
      [{ ...callTo('bottles'), does: 'record' } as TalkReading, 0.96, asked],
      [{ ...callTo('bottles'), call: { command: 'bottles', options: {} } } as TalkReading, 0.96, asked],
    ] as const)
      expect(doubted(reading, leaning({ ...shares, handbook: share }), FOUND, how)).toBe(reading)
  })
})
