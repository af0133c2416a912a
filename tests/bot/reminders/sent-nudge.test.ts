import { expect, it } from 'vitest'
import { recordSent } from '../../../bot/reminders/record-delivery.ts'
import { nudgeNow, nudgesAnsweredBy } from '../../../bot/reminders/sent-nudge.ts'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Nudge, NudgedJar, Person, SentNudge } from '../../../store/person.ts'
import { at, happened, jarOf, personWith, ZONE } from './people.ts'

const SENT_MS = at('2026-11-25')

const nudgeOf = (kinds: readonly NudgedJar['asked'][number]['kind'][], id = 'n1'): SentNudge => ({
  id,
  postedIn: { channelId: '123456789012345678', messageId: '123456789012345679' },
  sentMs: SENT_MS,
  isMoved: false,
  mayHaveBeenSeen: false,
  jars: [
    {
      jarId: 'lemon',
      seq: 1,
      asked: kinds.map((kind) => ({ kind, day: '2026-11-25', by: null, isLast: false, isAside: false })),
    },
  ],
})

const lemon = (): Person => personWith([jarOf({ name: 'lemon', startedMs: at('2026-11-01') })])

const keysOf = (person: Person, nudge: SentNudge) =>
  nudgeNow(person, nudge, ZONE).reply.actions.map(({ label: { key } }) => key)

const strained: Happening = { kind: 'strained', measured: null, strength: null, rinseWaterG: exactly(0) }
const BOTTLED: Happening = { kind: 'bottled', bottles: [{ count: 2, volumeMl: 500 }] }
const KEPT = ['nudge_show', 'nudge_reminders']

it.each([
  ['shake', { kind: 'shaken' }],
  ['taste', { kind: 'tasted', rating: 4, note: null }],
  ['strain', strained],
  ['shake', strained],
  ['bottle', BOTTLED],
  ['ready', { kind: 'opened' }],
  ['strain', { kind: 'discarded' }],
  ['strain', { kind: 'emptied' }],
] as const)('asked to %s, is answered by what is %o', (kind, happening) => {
  const nudge = nudgeOf([kind])
  expect(keysOf(lemon(), nudge).length).toBeGreaterThan(KEPT.length)
  const person = happened(lemon(), 'lemon', SENT_MS + 60_000, happening)
  expect(keysOf(person, nudge)).toEqual(KEPT)
  expect(nudgeNow(person, nudge, ZONE).answers).toMatchObject([{ atMs: SENT_MS + 60_000, isTakenBack: false }])
})

it.each([
  ['strain', { kind: 'shaken' }],
  ['shake', { kind: 'tasted', rating: 4, note: null }],
  ['shake', { kind: 'renamed', name: 'sun' }],
] as const)('asked to %s, is not answered by what is %o', (kind, happening) => {
  const person = happened(lemon(), 'lemon', SENT_MS + 60_000, happening)
  expect(keysOf(person, nudgeOf([kind]))).toEqual(keysOf(lemon(), nudgeOf([kind])))
  expect(nudgeNow(person, nudgeOf([kind]), ZONE).answers).toEqual([])
})

const water = (waterG: number): Happening => ({
  kind: 'added',
  plants: [],
  spirits: [],
  waterG: exactly(waterG),
  sweetenings: [],
})

it('is answered by an addition where the jar was held back when it was sent, also by what came last', () => {
  const asked = nudgeOf(['shake'])
  const sound = happened(lemon(), 'lemon', SENT_MS + 60_000, water(1))
  expect(nudgeNow(sound, asked, ZONE).answers).toEqual([])
  const watered = happened(lemon(), 'lemon', SENT_MS - 60_000, water(8000))
  const after = { ...asked, jars: [{ ...asked.jars[0]!, seq: 2 }] }
  const mended = happened(watered, 'lemon', SENT_MS + 60_000, water(1))
  expect(nudgeNow(mended, after, ZONE).answers).toMatchObject([{ atMs: SENT_MS + 60_000 }])
})

it('is answered no more once all is answered', () => {
  const shaken = happened(lemon(), 'lemon', SENT_MS + 60_000, { kind: 'shaken' })
  const put = happened(shaken, 'lemon', SENT_MS + 120_000, { kind: 'put_off', untilDay: '2026-11-26', untilMs: null })
  const later = happened(happened(put, 'lemon', SENT_MS + 180_000, strained), 'lemon', SENT_MS + 240_000, BOTTLED)
  const emptied = happened(shaken, 'lemon', SENT_MS + 120_000, { kind: 'emptied' })
  for (const person of [later, emptied]) {
    expect(nudgeNow(person, nudgeOf(['shake']), ZONE).answers).toMatchObject([{ atMs: SENT_MS + 60_000 }])
  }
  const both = nudgeNow(later, nudgeOf(['shake', 'strain']), ZONE).answers
  expect(both.map(({ atMs }) => (atMs - SENT_MS) / 60_000)).toEqual([1, 2, 3])
})

it('is not answered by what was there when it was sent', () => {
  const before = happened(lemon(), 'lemon', SENT_MS - 60_000, { kind: 'shaken' })
  const [asked] = nudgeOf(['shake']).jars
  const nudge = { ...nudgeOf(['shake']), jars: [{ ...asked!, seq: 2 }] }
  expect(nudgeNow(before, nudge, ZONE).answers).toEqual([])
  expect(keysOf(before, nudge)).toContain('nudge_done')
})

it('of a jar that is no longer there asks nothing, and says nothing', () => {
  const { reply, answers } = nudgeNow({ ...lemon(), jars: [] }, nudgeOf(['shake']), ZONE)
  expect([reply.actions, answers]).toEqual([[], []])
})

it('is named by the attempt that answered it, and by no other', () => {
  const [jar] = happened(lemon(), 'lemon', SENT_MS + 60_000, { kind: 'shaken' }).jars
  const entries = jar!.entries.map((entry) => (entry.seq === 2 ? { ...entry, attempt: 'a1' } : entry))
  const person = {
    ...lemon(),
    jars: [{ ...jar!, entries }],
    sentNudges: [nudgeOf(['shake']), nudgeOf(['taste'], 'n2')],
  }
  expect(nudgesAnsweredBy(person, 'a1').map(({ id }) => id)).toEqual(['n1'])
  expect(nudgesAnsweredBy(person, 'a2')).toEqual([])
})

it('is kept with the six before it', () => {
  const one = (id: string) => ({ id }) as Nudge
  const ids = ['1', '2', '3', '4', '5', '6', '7', '8', '3']
  const person = ids.reduce((so, id) => recordSent(so, one(id), SENT_MS, nudgeOf(['shake'], id)), lemon())
  expect(person.sentNudges!.map(({ id }) => id)).toEqual(['2', '4', '5', '6', '7', '8', '3'])
  expect(recordSent(person, one('9'), SENT_MS, null).sentNudges).toEqual(person.sentNudges)
})
