import { describe, expect, it } from 'vitest'
import type { TalkReading } from '../../../bot/talk/frames/reading.ts'
import type { Aim } from '../../../bot/talk/hunch/hunch.ts'
import { doubted } from '../../../bot/talk/reader/doubted.ts'
import type { Otherwise } from '../../../bot/talk/reader/second-thought.ts'
import { talker } from '../reader/told.ts'
import { callTo, FOUND, FREELY, leaning, NOTHING, TOPIC } from './readings.ts'

describe('a reading that no such sentence was ever after', () => {
  const plan = callTo('plan')
  const strain = callTo('jar strain')
  const strained: Otherwise = { ...NOTHING, call: () => strain }

  it('is asked about beside the likelier one', () => {
    expect(doubted(plan, leaning({ 'jar strain': 0.66, plan: 0.02 }), strained, FREELY)).toEqual({
      kind: 'question',
      call: strain.call,
      about: { kind: 'which_reading' },
      choices: [strain.call, plan.call],
      leftOut: [],
    })
  })

  it('is not asked about beside itself', () => {
    const same: Otherwise = { ...NOTHING, call: () => callTo('plan') }
    expect(doubted(plan, leaning({ 'jar strain': 0.66, plan: 0.02 }), same, FREELY)).toBe(plan)
  })

  it('gives way to an entry, and an entry to what follows on what was said', () => {
    expect(doubted(plan, leaning({ handbook: 0.8, plan: 0 }), { ...NOTHING, handbook: () => TOPIC }, FREELY)).toBe(
      TOPIC,
    )
    expect(doubted(TOPIC, leaning({ follow: 0.66, handbook: 0 }), { ...NOTHING, follow: () => plan }, FREELY)).toBe(
      plan,
    )
  })

  it('is not understood where it can be read no other way, unless it asks already', () => {
    expect(doubted(plan, leaning({ 'jar strain': 0.66, plan: 0 }), NOTHING, FREELY)).toEqual({
      kind: 'lost',
      nearest: [{ command: 'jar strain', options: {} }],
    })
    const question: TalkReading = { ...plan, kind: 'question', about: { kind: 'lacks', option: 'of' }, choices: [] }
    expect(doubted(question, leaning({ 'jar strain': 0.66, plan: 0 }), NOTHING, FREELY)).toBe(question)
    const deed: TalkReading = { ...callTo('jar shake'), does: 'record' }
    expect(doubted(deed, leaning({ trouble: 0.99, 'jar shake': 0 }), NOTHING, FREELY)).toBe(deed)
  })

  it.each<readonly [why: string, reading: TalkReading, shares: Readonly<Partial<Record<Aim, number>>>]>([
    ['it is likely enough', plan, { 'jar strain': 0.9, plan: 0.03 }],
    ['something like it is likely enough', plan, { 'jar strain': 0.9, 'jar start': 0.03 }],
    ['nothing else is likely', plan, { 'jar strain': 0.64, plan: 0 }],
    ['nothing else is likely, and it may be', TOPIC, { 'jar strain': 0.64, handbook: 0.02 }],
    ['nothing else is likely, and it records', { ...strain, does: 'record' }, { handbook: 0.64, 'jar strain': 0 }],
    ['it is an entry, which may warn', TOPIC, { 'jar strain': 0.89, handbook: 0 }],
    ['it is an entry, and such is asked at times', TOPIC, { 'jar strain': 0.99, handbook: 0.006 }],
    ['it is an entry, and what is likely is said in the same words', TOPIC, { trouble: 0.99, handbook: 0 }],
    ['whoever talks may want it shown', plan, { talk: 0.99, plan: 0 }],
    ['what is likely is said in the same words', plan, { botanical: 0.99, plan: 0 }],
    ['it may follow what was said before', plan, { follow: 0.99, plan: 0 }],
    ['it warns', { kind: 'symptom', id: 'mould', options: {} }, { 'jar strain': 0.99, trouble: 0 }],
    ['it is told by words of its own', callTo('cost'), { 'jar strain': 0.99, cost: 0 }],
    ['the hunch knows no such sentences', callTo('keeping'), { 'jar strain': 0.99 }],
    ['it refuses', { kind: 'lost', nearest: [] }, { 'jar strain': 0.99 }],
  ])('stays where %s', (_, reading, shares) => {
    expect(doubted(reading, leaning(shares), strained, FREELY)).toBe(reading)
  })

  it('gives way though it is an entry to what has an amount, a day or a plant, where such sentences never ask for one', () => {
    const shares = leaning({ 'jar strain': 0.9, handbook: 0.005 })
    expect(doubted(TOPIC, shares, strained, FREELY)).toBe(strain)
    expect(doubted(TOPIC, shares, strained, { ...FREELY, isPlain: () => true })).toBe(TOPIC)
    const bare: Otherwise = { ...NOTHING, call: () => ({ ...strain, call: { command: 'jar strain', options: {} } }) }
    expect(doubted(TOPIC, shares, bare, FREELY)).toBe(TOPIC)
  })

  it('is as good as never meant, and is not shown, whatever else it may be', () => {
    const shares = leaning({ 'jar strain': 0.4, none: 0.3, 'jar show': 0.019, handbook: 0.019 })
    for (const each of [callTo('jar show'), TOPIC])
      expect(doubted(each, shares, strained, FREELY)).toMatchObject({ kind: 'lost' })
    expect(doubted(TOPIC, shares, NOTHING, { ...FREELY, isPlain: () => true })).toBe(TOPIC)
  })

  it('is shown to nobody who surely only talks', () => {
    const bare: TalkReading = { ...callTo('jar list'), call: { command: 'jar list', options: {} } }
    expect(doubted(bare, leaning({ talk: 0.95, 'jar list': 0.005 }), NOTHING, FREELY).kind).toBe('lost')
    for (const shares of [
      { talk: 0.94, 'jar list': 0 },
      { talk: 0.95, 'jar list': 0.006 },
    ])
      expect(doubted(bare, leaning(shares), NOTHING, FREELY)).toBe(bare)
  })

  it('only shows something: it is asked about earlier, where something else is so likely', () => {
    const show = callTo('jar show')
    const shares = { 'jar strain': 0.85, 'jar show': 0.15 }
    expect(doubted(show, leaning(shares), strained, FREELY)).toMatchObject({ kind: 'question' })
    expect(doubted({ ...show, does: 'record' }, leaning(shares), strained, FREELY)).toMatchObject({ kind: 'call' })
    for (const less of [{ 'jar strain': 0.84 }, { 'jar show': 0.2 }])
      expect(doubted(show, leaning({ ...shares, ...less }), strained, FREELY)).toBe(show)
    expect(doubted(plan, leaning({ 'jar strain': 0.9, plan: 0.1 }), strained, FREELY)).toBe(plan)
    expect(doubted(show, leaning({ none: 0.9, 'jar show': 0.1 }), NOTHING, FREELY)).toBe(show)
    expect(doubted(show, leaning({ handbook: 0.9, 'jar show': 0.1 }), NOTHING, FREELY)).toBe(show)
  })

  it('gives way though it is of the same kind, where it works out nothing', () => {
    const bare: TalkReading = { ...callTo('measure'), call: { command: 'measure', options: {} } }
    const told = leaning({ trouble: 0.98, measure: 0.01 })
    const nearest = [{ command: 'trouble', options: {} }]
    expect(doubted(bare, told, NOTHING, FREELY)).toEqual({ kind: 'lost', nearest })
    expect(doubted(callTo('measure'), told, NOTHING, FREELY)).toMatchObject({ kind: 'call' })
  })

  it('asks for what it lacks no longer, where an entry surely answers, though the two are of one kind', () => {
    const open: TalkReading = { ...callTo('measure'), kind: 'question', about: { kind: 'which_jar' }, choices: [] }
    expect(doubted(open, leaning({ handbook: 0.95, measure: 0.02 }), FOUND, FREELY)).toBe(TOPIC)
    for (const shares of [
      { handbook: 0.94, measure: 0.02 },
      { handbook: 0.95, measure: 0.2 },
    ])
      expect(doubted(open, leaning(shares), FOUND, FREELY)).toBe(open)
  })

  it('gives way though it records, where there is no jar that anything was done to', () => {
    const deed: TalkReading = { ...callTo('jar strain'), does: 'record' }
    const asked = { ...FREELY, isAsked: true }
    const shares = leaning({ handbook: 0.9, 'jar strain': 0 })
    expect(doubted(deed, shares, FOUND, { ...asked, isNowhere: true })).toBe(TOPIC)
    expect(doubted(deed, shares, FOUND, asked)).toBe(deed)
  })

  it('stays where it sets something and the other is no call', () => {
    const set: TalkReading = { ...callTo('reminders'), does: 'set' }
    const asked = leaning({ handbook: 0.99, reminders: 0 })
    expect(doubted(set, asked, { ...NOTHING, handbook: () => TOPIC }, FREELY)).toBe(set)
  })

  it('stays where it is said plainly', () => {
    expect(doubted(plan, leaning({ 'jar strain': 0.99, plan: 0 }), strained, { ...FREELY, isPlain: () => true })).toBe(
      plan,
    )
  })
})

it('asks in a whole sentence, with both as lines that run', async () => {
  const one = talker()
  await one.say('/jar start name:ginger of:200 g ginger spirit:1 l 60%')
  const told = await one.say('ginger, 22 oz', () => leaning({ 'jar strain': 0.7, plan: 0.01 }))
  expect(told).toMatchObject({ code: 'question', recorded: 0 })
  expect(told.choices).toEqual(['/jar strain ginger', expect.stringMatching(/^\/plan of:22 oz ginger/)])
})

it('offers a trouble by its words', async () => {
  const told = await talker().say('my jar pongs of boiled eggs', () => leaning({ trouble: 0.98, measure: 0.01 }))
  expect(told.code).toBe('question')
  expect(told.choices).toHaveLength(2)
  for (const line of told.choices) expect(line).not.toContain('_')
})
