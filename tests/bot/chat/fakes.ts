import { z } from 'zod'
import { type Command, defineCommand } from '../../../bot/chat/command.ts'
import type { Data, Reply } from '../../../bot/chat/reply.ts'
import { DomainError } from '../../../core/domain-error.ts'

/** A schema as the real ones are: text in, a number out, a DomainError in the issue. */
export const amount = () =>
  z.string().transform((text, context) => {
    const volumeMl = Number.parseFloat(text)
    if (volumeMl >= 0) return volumeMl
    const error = new DomainError('bad_value', 'negative_volume', { volumeMl: -1 })
    context.addIssue({ code: 'custom', message: error.message, params: { error } })
    return z.NEVER
  })

/** A reply whose words are its keys; the real ones are checked against the real language. */
export const fakeReply = (data: { readonly [name: string]: Data }, more: object = {}): Reply =>
  ({
    headline: { group: 'headlines', key: 'fake', values: {} },
    table: [],
    sure: [],
    notes: [],
    cautions: [],
    actions: [],
    kitchen: 'metric',
    data,
    ...more,
  }) as unknown as Reply

export const fakeCommands = [
  defineCommand({
    path: 'mix',
    topic: 'sums',
    input: z.object({ spirit: amount(), strength: amount(), water: amount().optional(), sugar: amount().optional() }),
    run: ({ spirit, water = 0 }) => fakeReply({ volumeMl: spirit + water }),
  }),
  defineCommand({
    path: 'syrup',
    topic: 'sums',
    input: z.object({
      infusion: amount(),
      strength: amount(),
      'to-strength': amount().optional(),
      ratio: z.string().optional(),
    }),
    run: ({ infusion }) => fakeReply({ volumeMl: infusion }),
  }),
  defineCommand({
    path: 'jar start',
    topic: 'sums',
    input: z.object({ name: z.string(), note: z.string().optional() }),
    run: ({ name }) => fakeReply({ name }),
  }),
  defineCommand({ path: 'jar list', topic: 'sums', input: z.object({}), run: () => fakeReply({ jars: [] }) }),
  defineCommand({
    path: 'broken',
    topic: 'sums',
    input: z.object({ text: z.string() }),
    run: ({ text }) => {
      throw new TypeError(`secret ${text}`)
    },
  }),
  defineCommand({
    path: 'nan',
    topic: 'sums',
    input: z.object({}),
    run: () => fakeReply({ deep: [{ massG: Number.NaN }] }),
  }),
  defineCommand({
    path: 'absent',
    topic: 'sums',
    input: z.object({}),
    run: () => fakeReply({ massG: undefined as unknown as null }),
  }),
  defineCommand({
    path: 'endless',
    topic: 'sums',
    input: z.object({}),
    run: () => fakeReply({}, { sure: [{ values: { massG: Number.POSITIVE_INFINITY } }] }),
  }),
  defineCommand({
    path: 'hopeless',
    topic: 'sums',
    input: z.object({}),
    run: () => {
      throw new DomainError('unreachable', 'no_room_for_water', { abvPercent: 90, sugarGPerL: 500 })
    },
  }),
] as unknown as readonly Command[]

/** Those among them that have no fault. */
export const soundCommands = fakeCommands.filter(({ path }) => /^(mix|syrup|jar \w+)$/.test(path))
