import fc from 'fast-check'
import { expect, it } from 'vitest'
import { call } from '../../../bot/calls/call.ts'
import type { Action, Reply, Row } from '../../../bot/chat/reply.ts'
import type { Message } from '../../../bot/text/words.ts'
import { runs, SEED } from '../../runs.ts'
import { HIDING, HOSTILE, WHOLE } from './hostile-texts.ts'
import { expectValid, hasRows, labelsOf, messagesOfReply, textsOf } from './rendering.ts'

const signs = fc.constantFrom(...HOSTILE, ...HIDING.map(([typed]) => typed), ...WHOLE, ' ', 'lemon ', '1 234.5 ml')
const typed = fc.oneof(
  { weight: 4, arbitrary: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }) },
  { weight: 2, arbitrary: fc.array(signs, { minLength: 1, maxLength: 12 }).map((parts) => parts.join('')) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(signs, fc.integer({ min: 1, max: 4000 }))
      .map(([sign, length]) => sign.repeat(4000).slice(0, length)),
  },
)

const row = fc.tuple(typed, typed).map(
  ([name, zone]): Row => ({
    label: { group: 'rows', key: 'jar', values: { name } } as Message<'rows'>,
    cell: {
      group: 'cells',
      key: 'settings_zone',
      values: { zone, isAssumed: false, day: { year: 2026, month: 12, day: 9 }, minutes: 540 },
    } as Message<'cells'>,
  }),
)

const note = typed.map(
  (zone) => ({ group: 'notes', key: 'reminders_zone_assumed', values: { zone, example: zone } }) as Message<'notes'>,
)

const caution = typed.map(
  (name) => ({ group: 'cautions', key: 'plan_unknown', values: { names: [name], notes: [] } }) as Message<'cautions'>,
)

const action = fc.tuple(typed, typed).map(
  ([name, said]): Action => ({
    label: { group: 'actions', key: 'nudge_done', values: { duty: 'shake', name } } as Message<'actions'>,
    call: call('jar shake', { jar: said }),
  }),
)

const reply: fc.Arbitrary<Reply> = fc.record({
  headline: fc
    .tuple(typed, typed)
    .map(
      ([before, name]) =>
        ({ group: 'headlines', key: 'jar_renamed', values: { before, name } }) as Message<'headlines'>,
    ),
  table: fc.array(row, { maxLength: 60 }),
  sure: fc.constant([]),
  notes: fc.array(note, { maxLength: 20 }),
  cautions: fc.array(caution, { maxLength: 6 }),
  actions: fc.array(action, { maxLength: 40 }),
  data: fc.constant({}),
  kitchen: fc.constant('metric'),
})

it('is never refused for a limit, whatever people have typed', async () => {
  let parted = 0
  await fc.assert(
    fc.asyncProperty(reply, fc.integer({ min: 1, max: 5 }), fc.boolean(), async (any, mostMessages, isPrivate) => {
      const messages = await messagesOfReply(any, { mostMessages, isPrivate, pings: !isPrivate })
      expectValid(messages)
      expect(messages.length).toBeLessThanOrEqual(mostMessages)
      if (messages.length > 1) parted += 1
      expect(messages.flatMap(textsOf).join()).not.toMatch(/[\ufdd0\ufdd1\u202e\u200b]|undefined/)
      for (const message of messages.slice(0, -1)) {
        expect(labelsOf(message)).toEqual(isPrivate ? ['Show everybody'] : [])
        expect(hasRows(message)).toBe(isPrivate)
      }
    }),
    { seed: SEED, numRuns: runs(30, 3000) },
  )
  expect(parted).toBeGreaterThan(5)
})
