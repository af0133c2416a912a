import { expect, it } from 'vitest'
import { nudgeReply } from '../../../bot/reminders/nudge-reply.ts'
import { intend } from '../../../bot/reminders/prepare-nudge.ts'
import type { Happening, Started } from '../../../core/jar/entry/entry.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Place } from '../../../store/person.ts'
import type { Planned } from '../../core/jar/jars.ts'
import { linesOf } from '../call-typed.ts'
import { testDesk } from '../test-desk.ts'
import { at, happened, jarOf, personWith, ZONE } from './people.ts'

const spirit: Started['spirits'][number] = {
  amount: exactly(1000),
  by: 'volume',
  atC: 20,
  abvPercent: exactly(95),
  abvAtC: null,
  readsProof: false,
  sugarGPerL: exactly(0),
}

interface Situation {
  readonly day: string
  readonly plan?: Partial<Planned>
  readonly more?: Partial<Started>
  readonly past?: readonly (readonly [day: string, happening: Happening])[]
}

const strained: Happening = {
  kind: 'strained',
  measured: { amount: exactly(930), by: 'volume', atC: 20 },
  strength: null,
  rinseWaterG: exactly(0),
}
const sweetened: Happening = { kind: 'sweetened', waterG: exactly(700), sweetenings: whiteSugar(exactly(500)) }
const bottles = [{ count: 4, volumeMl: 500 }]
const targets = { abvPercent: 30, sugarGPerL: 250 } as Planned['targets']

const situations: readonly (readonly [kind: string, Situation])[] = [
  ['shake', { day: '2026-12-02' }],
  ['taste', { day: '2026-12-03', plan: { tasteFrom: '2026-12-03' } }],
  [
    'add',
    {
      day: '2026-12-08',
      more: {
        plants: [
          {
            id: 'coffee_whole',
            name: 'beans',
            massG: exactly(30),
            count: null,
            isDried: false,
            isUsual: false,
            words: null,
            addOn: '2026-12-08',
          },
        ],
      },
    },
  ],
  ['strain', { day: '2026-12-10', plan: { strainFrom: '2026-12-10', strainBy: '2026-12-20' } }],
  ['sweeten', { day: '2026-12-11', plan: { targets }, past: [['2026-12-10', strained]] }],
  [
    'bottle',
    {
      day: '2026-12-14',
      plan: { targets, bottles: [{ count: null, volumeMl: 750 }] },
      past: [
        ['2026-12-10', strained],
        ['2026-12-11', sweetened],
      ],
    },
  ],
  [
    'ready',
    {
      day: '2027-01-10',
      plan: { targets },
      past: [
        ['2026-12-10', strained],
        ['2026-12-11', sweetened],
        ['2026-12-14', { kind: 'bottled', bottles }],
      ],
    },
  ],
]

/** What is filled in: planned amounts of what was measured, as many bottles as it fills, a name that is found. */
const FILLED: Readonly<Record<string, RegExp>> = {
  sweeten: /^\/jar sweeten \S.* sugar:\d+ g water:[\d.]+ (?:ml|l)(?: after:2)?$/,
  bottle: /^\/jar bottle \S.* bottles:2 x 750 ml$/,
  add: /^\/jar add \S.* of:30 g coffee beans(?: after:1)?$/,
}

const PLACES: readonly Place[] = [{ kind: 'console' }, { kind: 'private' }]

it.each(situations)('answers a reminder to %s with lines that run as they stand', async (kind, situation) => {
  const { day, plan = {}, more = {}, past = [] } = situation
  const jar = jarOf({
    name: 'walnut no. 2',
    startedMs: at('2026-12-01', '18:00'),
    plan,
    more: { spirits: [spirit], ...more },
  })
  const start = personWith([{ ...jar, id: 'walnu' }], kind === 'shake' ? {} : { shake: 'off' })
  const person = past.reduce((known, [when, what]) => happened(known, 'walnu', at(when, '10:00'), what), start)
  const filled = FILLED[kind]
  for (const place of PLACES) {
    const nowMs = at(day, '10:30')
    const now = { nowMs, assumedZone: ZONE }
    const intent = intend('local', person, new Map(), now, { placeOf: () => place, after: () => null })
    const reply = nudgeReply(person, intent!.nudge!, { mayHaveBeenSeen: false, isMoved: false }, now)
    const asked = reply.data.duties as readonly { readonly duty: string }[]
    expect(asked.map(({ duty }) => duty)).toContain(kind)
    expect(reply.actions.length).toBeGreaterThan(1)
    if (filled !== undefined) {
      expect(linesOf(reply.actions)).toContainEqual(expect.stringMatching(filled))
    }
    for (const line of linesOf(reply.actions)) {
      const store = memoryStore(ZONE)
      await store.update('local', () => person)
      const desk = testDesk({ nowMs, asker: { userId: 'local', place, assumedZone: ZONE, store } })
      const outcome = await desk.run(line)
      expect(outcome.ok ? '' : JSON.stringify([line, outcome.error, desk.faults()])).toBe('')
      expect(desk.faults()).toEqual([])
    }
  }
})

it('leaves the bottles that nobody has named to a form, where there is one', () => {
  const plan = { targets, bottles: [{ count: null, volumeMl: 500 }] }
  const jar = jarOf({ name: 'walnut', startedMs: at('2026-12-01', '18:00'), plan, more: { spirits: [spirit] } })
  const start = personWith([{ ...jar, id: 'walnu' }], { shake: 'off' })
  const person = [['2026-12-10', strained] as const, ['2026-12-11', sweetened] as const].reduce(
    (known, [when, what]) => happened(known, 'walnu', at(when, '10:00'), what),
    start,
  )
  const now = { nowMs: at('2026-12-14', '10:30'), assumedZone: ZONE }
  const lines = PLACES.map((place) => {
    const intent = intend('local', person, new Map(), now, { placeOf: () => place, after: () => null })
    const reply = nudgeReply(person, intent!.nudge!, { mayHaveBeenSeen: false, isMoved: false }, now)
    return linesOf(reply.actions).find((line) => line.startsWith('/jar bottle'))
  })
  expect(lines).toEqual(['/jar bottle walnut bottles:3 x 500 ml', '/jar bottle #walnu'])
})
