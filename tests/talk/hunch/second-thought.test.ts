import { describe, expect, it } from 'vitest'
import type { Path } from '../../../bot/calls/signatures.ts'
import type { TalkReading } from '../../../bot/talk/frames/reading.ts'
import type { Aim, Leaning } from '../../../bot/talk/hunch/hunch.ts'
import { type Otherwise, secondThought } from '../../../bot/talk/reader/second-thought.ts'

const callTo = (command: Path): TalkReading => ({
  kind: 'call',
  call: { command, options: { of: '14 lemons' } },
  leftOut: [],
  does: 'compute',
})
const LOST: TalkReading = { kind: 'lost', nearest: [] }
const TOPIC: TalkReading = { kind: 'topic', entry: 'peeled_fruit', more: [] }
const SYMPTOM: Extract<TalkReading, { kind: 'symptom' }> = { kind: 'symptom', id: 'sediment', options: {} }

const NOTHING: Otherwise = { call: () => null, handbook: () => null, trouble: () => null, follow: () => null }

const leaning = (shares: Readonly<Partial<Record<Aim, number>>>): readonly Leaning[] =>
  Object.entries(shares).map(([aim, share]) => ({ aim: aim as Aim, share }))

describe('a reading and a hunch that speaks against it', () => {
  const topic: Otherwise = { ...NOTHING, handbook: () => TOPIC }

  it('gives way where the hunch is sure and the reading is hardly ever right', () => {
    expect(secondThought(callTo('plan'), leaning({ handbook: 0.81, plan: 0.04 }), topic)).toBe(TOPIC)
  })

  it('stays where the hunch is not sure', () => {
    const plan = callTo('plan')
    expect(secondThought(plan, leaning({ handbook: 0.79, plan: 0.01 }), topic)).toBe(plan)
  })

  it('stays where it is likely enough, alone or with what is near it', () => {
    const plan = callTo('plan')
    expect(secondThought(plan, leaning({ handbook: 0.9, plan: 0.06 }), topic)).toBe(plan)
    expect(secondThought(plan, leaning({ handbook: 0.9, botanical: 0.06 }), topic)).toBe(plan)
    expect(secondThought(plan, leaning({ handbook: 0.9, dilute: 0.06 }), topic)).toBe(TOPIC)
  })

  it('stays where the sentence cannot be read otherwise', () => {
    const plan = callTo('plan')
    expect(secondThought(plan, leaning({ handbook: 0.99 }), NOTHING)).toBe(plan)
  })

  it('stays before a question, if it lacks nothing', () => {
    const question: TalkReading = {
      kind: 'question',
      call: { command: 'syrup', options: {} },
      about: { kind: 'lacks', option: 'infusion' },
      choices: [],
      leftOut: [],
    }
    const plan = callTo('plan')
    const asks: Otherwise = { ...NOTHING, call: () => question }
    expect(secondThought(plan, leaning({ syrup: 0.99 }), asks)).toBe(plan)
    expect(secondThought(LOST, leaning({ syrup: 0.99 }), asks)).toBe(question)
  })

  it('gives way to the question whether a deed is told, also as a symptom or what only shows a jar', () => {
    const told: TalkReading = {
      kind: 'question',
      call: { command: 'jar add', options: { of: '2 lemons' } },
      about: { kind: 'told_or_asked' },
      choices: [],
      leftOut: [],
    }
    const asks: Otherwise = { ...NOTHING, call: () => told }
    const symptom: TalkReading = { kind: 'symptom', id: 'cloudy_later', options: {} }
    for (const reading of [callTo('plan'), callTo('jar show'), symptom])
      expect(secondThought(reading, leaning({ 'jar add': 0.9, follow: 0.1 }), asks)).toBe(told)
    expect(secondThought(symptom, leaning({ 'jar add': 0.9, trouble: 0.06 }), asks)).toBe(symptom)
    expect(secondThought(symptom, leaning({ 'jar show': 0.99 }), asks)).toBe(symptom)
    const shaken: TalkReading = { ...callTo('jar shake'), does: 'record' } as TalkReading
    expect(secondThought(shaken, leaning({ 'jar add': 0.99 }), asks)).toBe(shaken)
  })

  it('gives way to that question as an entry where it is told beyond doubt, and as what it lacks', () => {
    const told: TalkReading = {
      kind: 'question',
      call: { command: 'jar combine', options: {} },
      about: { kind: 'told_or_asked' },
      choices: [],
      leftOut: [],
    }
    const asks: Otherwise = { ...NOTHING, call: () => told }
    expect(secondThought(TOPIC, leaning({ 'jar combine': 0.95 }), asks)).toBe(told)
    expect(secondThought(TOPIC, leaning({ 'jar combine': 0.94 }), asks)).toBe(TOPIC)
    const lacks = (command: Path): TalkReading => ({
      kind: 'question',
      call: { command, options: {} },
      about: { kind: 'lacks', option: 'infusion' },
      choices: [],
      leftOut: [],
    })
    expect(secondThought(lacks('syrup'), leaning({ 'jar strain': 0.9 }), asks)).toBe(told)
    const mix = lacks('mix')
    expect(secondThought(mix, leaning({ 'jar strain': 0.9 }), asks)).toBe(mix)
  })

  it('stays as the change of what was said before that it is', () => {
    const [plan, other] = [callTo('plan'), callTo('dilute')]
    const changed: Otherwise = { ...NOTHING, follow: () => other }
    expect(secondThought(plan, leaning({ follow: 0.99 }), changed)).toBe(plan)
    expect(secondThought(LOST, leaning({ follow: 0.99 }), changed)).toBe(other)
  })

  it('a symptom or an entry gives way sooner than a call', () => {
    const symptom: TalkReading = { kind: 'symptom', id: 'sediment', options: {} }
    const asked: Otherwise = { ...NOTHING, handbook: () => TOPIC }
    expect(secondThought(symptom, leaning({ handbook: 0.88, trouble: 0.11 }), asked)).toBe(TOPIC)
    expect(secondThought(symptom, leaning({ handbook: 0.87, trouble: 0.13 }), asked)).toBe(symptom)
    const plan = callTo('plan')
    expect(secondThought(plan, leaning({ handbook: 0.88, plan: 0.06 }), asked)).toBe(plan)
  })

  it('that was not understood is a question that an entry comes near to, though it is less sure', () => {
    const asked: Otherwise = { ...NOTHING, handbook: (sure) => (sure === 0.25 ? TOPIC : null) }
    expect(secondThought(LOST, leaning({ plan: 0.5, handbook: 0.25 }), asked)).toBe(TOPIC)
    expect(secondThought(LOST, leaning({ plan: 0.5, handbook: 0.24 }), asked)).toBe(LOST)
    expect(secondThought(LOST, leaning({ plan: 0.9, handbook: 0.25 }), asked)).toBe(TOPIC)
  })

  it('of what is asked and what went wrong takes the other, and nothing else', () => {
    const trouble: Otherwise = { ...NOTHING, trouble: () => SYMPTOM, handbook: () => TOPIC, call: callTo }
    expect(secondThought(TOPIC, leaning({ trouble: 0.91, handbook: 0.04 }), trouble)).toBe(SYMPTOM)
    expect(secondThought(TOPIC, leaning({ trouble: 0.89, handbook: 0.04 }), trouble)).toBe(TOPIC)
    expect(secondThought(SYMPTOM, leaning({ handbook: 0.81, trouble: 0.04 }), trouble)).toBe(TOPIC)
    for (const reading of [TOPIC, SYMPTOM]) {
      expect(secondThought(reading, leaning({ plan: 0.99 }), trouble)).toBe(reading)
      expect(secondThought(reading, leaning({ none: 0.99 }), trouble)).toBe(reading)
    }
  })

  it.each(['pressure', 'fermenting', 'mould', 'solvent', 'rotten_egg', 'wrong_spirit', 'broken_glass'] as const)(
    'never keeps back what may harm: %s',
    (id) => {
      const harmful: TalkReading = { ...SYMPTOM, id }
      expect(secondThought(harmful, leaning({ handbook: 0.99 }), topic)).toBe(harmful)
    },
  )

  it.each([
    ['what is recorded', { ...callTo('jar shake'), does: 'record' }],
    ['a call that more than a plant speaks for', callTo('cost')],
  ] as const)('has no say in %s', (_, reading) => {
    expect(secondThought(reading as TalkReading, leaning({ plan: 0.99 }), { ...NOTHING, call: callTo })).toBe(reading)
  })

  it('has no say in a refusal', () => {
    const only: TalkReading = { kind: 'only_typed', call: { command: 'jar discard', options: {} } }
    expect(secondThought(only, leaning({ handbook: 0.99 }), topic)).toBe(only)
  })
})

describe('a sentence that no rule understood', () => {
  it.each([
    ['trouble', 'trouble'],
    ['syrup', 'syrup'],
  ] as const)('begins its reply with the command it is after: %s', (aim, command) => {
    expect(secondThought(LOST, leaning({ [aim]: 0.9 }), NOTHING)).toEqual({
      kind: 'lost',
      nearest: [{ command, options: {} }],
    })
  })

  it.each(['handbook', 'none', 'talk', 'follow'] as const)(
    'stays not understood where it is after no command: %s',
    (aim) => {
      expect(secondThought(LOST, leaning({ [aim]: 0.99 }), NOTHING)).toEqual(LOST)
    },
  )
})
