import { z } from 'zod'
import { MOST_PRICE_CHARACTERS, MOST_PRICES } from '../../core/cost/price.ts'
import type { JarEntry } from '../../core/jar/entry/entry.ts'
import type { Jar, KeptLine, Nudge, Person, Place, SentNudge, Settings, Share } from '../person.ts'
import { happenings } from './happening.ts'
import { amount, count, day, instantMs, text, zone } from './quantities.ts'
import type { Same } from './same.ts'

const moment = z.strictObject({ atMs: instantMs, day, zone })

/** Nobody types it: a number of Discord's, or a UUID. */
const attempt = z.string().regex(/^[\w-]{1,40}$/)

const entry = {
  seq: z.int().min(1),
  enteredMs: instantMs,
  typed: z.array(z.tuple([text, text])),
  attempt: attempt.exactOptional(),
  ...moment.shape,
}

export const entrySchema = z.discriminatedUnion('kind', [
  ...happenings(entry),
  z.strictObject({
    ...entry,
    kind: z.literal('corrected'),
    of: z.int().min(1),
    by: z.discriminatedUnion('kind', happenings({})),
    moved: moment.nullable(),
  }),
  z.strictObject({ ...entry, kind: z.literal('undone'), of: z.int().min(1) }),
])

const key = z.string().min(1).max(100)

const jarId = z.string().regex(/^[a-z0-9]{5}$/)

export const jarSchema = z.strictObject({
  id: jarId,
  entries: z.array(entrySchema),
  told: z.array(key),
  toldMs: z.array(instantMs).exactOptional(),
  cautioned: z.array(key),
})

const snowflake = z.string().regex(/^\d{17,20}$/)

const placeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('console') }),
  z.strictObject({ kind: z.literal('private') }),
  z.strictObject({ kind: z.literal('channel'), channelId: snowflake }),
])

const dutyKind = z.enum(['shake', 'taste', 'add', 'strain', 'sweeten', 'filter', 'bottle', 'ready', 'drink'])

const nudgeSchema = z.strictObject({
  id: key,
  place: placeSchema,
  duties: z.array(z.strictObject({ jarId, kind: dutyKind, key })),
  state: z.enum(['sending', 'waiting', 'kept']),
  madeMs: instantMs,
  attempts: count,
  nextMs: instantMs,
})

const priceText = z.string().max(MOST_PRICE_CHARACTERS)

const postedIn = z.strictObject({ channelId: snowflake, messageId: snowflake })

const sentNudgeSchema = z.strictObject({
  id: key,
  postedIn,
  sentMs: instantMs,
  isMoved: z.boolean(),
  mayHaveBeenSeen: z.boolean(),
  jars: z.array(
    z.strictObject({
      jarId,
      seq: count,
      asked: z.array(
        z.strictObject({ kind: dutyKind, day, by: day.nullable(), isLast: z.boolean(), isAside: z.boolean() }),
      ),
    }),
  ),
})

const keptLineSchema = z.strictObject({ id: z.string().regex(/^[0-9a-f]{12}$/), line: text })

export const shareSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]{8}$/),
  jarId,
  code: z.string().regex(/^[0-9A-Z]{1,300}$/),
  postedIn: postedIn.nullable(),
  withdrawn: z.boolean(),
  made: count,
})

/** In its maker's words, which are read where a cost is worked out. */
const priceSchema = z.strictObject({ of: priceText, amount: priceText, per: priceText })

export const settingsSchema = z.strictObject({
  units: z.enum(['metric', 'us', 'imperial']).nullable(),
  country: z
    .string()
    .regex(/^[A-Za-z]{2}$/)
    .nullable(),
  zone: zone.nullable(),
  place: placeSchema.nullable(),
  atMinutes: amount.max(1439),
  shake: z.enum(['daily', 'every_other_day', 'off']),
  drink: z.enum(['on', 'off']).exactOptional(),
  pausedUntil: day.nullable(),
  freezerC: z.number().min(-40).max(0).nullable().exactOptional(),
  prices: z.array(priceSchema).max(MOST_PRICES).exactOptional(),
})

/** A person of version 8 as it stands in a file, without its check and stamp; what is not named here is refused. */
export const personSchema = z.strictObject({
  version: z.literal(8),
  settings: settingsSchema,
  jars: z.array(jarSchema),
  nudges: z.array(nudgeSchema),
  sentNudges: z.array(sentNudgeSchema).exactOptional(),
  lines: z.array(keptLineSchema),
  shares: z.array(shareSchema),
  setAside: z.strictObject({ file: z.string().max(200), day: day.nullable() }).nullable(),
})

/** Fails to compile when the schema and the types come apart. */
export type SchemaIsType = [
  Same<z.infer<typeof entrySchema>, JarEntry>,
  Same<z.infer<typeof jarSchema>, Jar>,
  Same<z.infer<typeof placeSchema>, Place>,
  Same<z.infer<typeof nudgeSchema>, Nudge>,
  Same<z.infer<typeof sentNudgeSchema>, SentNudge>,
  Same<z.infer<typeof keptLineSchema>, KeptLine>,
  Same<z.infer<typeof shareSchema>, Share>,
  Same<z.infer<typeof settingsSchema>, Settings>,
  Same<z.infer<typeof personSchema>, Person>,
] extends [true, true, true, true, true, true, true, true, true]
  ? true
  : never
export const SCHEMA_IS_TYPE: SchemaIsType = true
