import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { SHELVES, type Shelf } from './shelves.ts'

/**
 * Sentences as people type them, and what each of them means: what the reader of sentences is measured against. All were
 * written for this project. `open` and `open-2` came first, and the reader was written with an eye on them. Each set after
 * them was written by somebody else, who had not seen the reader nor its lexicon. `held` is the other half of the sentences
 * of `own-1`, cut by chance; it was held back at first, has been looked at since, and is for development now.
 *
 * From `own-2` on each writer knew the names of plants and of entries (but for `own-2` and `held-2` with how an answer is
 * judged), and besides:
 * - `own-2`: the form of these files, and core's words for symptoms. For development.
 * - `held-2`, as thirty people would type: the meanings of the others, and the first rows of core's words for symptoms. It
 *   was held until it was measured, and is for development since, as `held-4` is.
 * - `own-3`, in the short plain way that people speak at the jar: the form and the meanings of the others, and most of
 *   core's words for symptoms. For development.
 * - `own-4`, as twenty people new to the bot would type, half of it amounts, plans, calculators and questions for the
 *   handbook in English: as `own-3`, but the first half of core's words for symptoms. For development.
 * - `own-5`, as ten people of the north of England, Scotland and Ireland, ten Americans and ten whose first language is
 *   another would type, half of its English questions for the handbook and jars told in few words: the first forty lines of
 *   `own-1`, else the meanings of the others, and the first rows of core's words for symptoms. For development.
 * - `held-3`, again as thirty people would type: the meanings of the others. Held.
 * - `held-4`, as thirty other people would type: part of the development sets, but neither `held-2` nor `held-3`, and the
 *   first rows of core's words for symptoms.
 * - `held-5`, as twenty people new to the bot would type in a week: no sentence but the first forty of `own-1`, the
 *   meanings of the `own` sets, and most of core's words for symptoms. Held.
 * - `own-6`, half of it as thirty people would type who write at length, politely, with reasons, asides and numbers in
 *   words, half as thirty who write some six words: the first forty sentences of `own-1`, a meaning of each form of the
 *   development sets, the lines that their follow-ups come after, and core's words for symptoms. For development.
 * - `own-7`, as forty people in all moods would type who think of their kitchen and not of a manual, half of it one plain
 *   line of six to fourteen words, a quarter two facts or deeds in one line, a quarter asked in ways of their own: as
 *   `own-6`. For development.
 * - `held-6`, as forty people in all moods who are new to the bot, in the shares of `own-7`: the first forty sentences of
 *   `own-1` and no other, a meaning of each form of the `own` sets, the exact lines that their follow-ups come after, and
 *   core's words for symptoms. Every second of them, and one that was wrongly recorded, is `own-8`, for development; the others are held.
 * - `own-9`, again as forty people in all moods who are new to the bot and think of their kitchen, in the shares of `own-7`:
 *   as `own-6`, by somebody who had not seen the reader. For development.
 *
 * Held means: whoever works on the reader looks at the totals only and at no single sentence, or they measure nothing.
 *
 * `after` is what was typed before in the same talk, `shelf` the jars that there are. A value is in the unit of its name,
 * whatever unit was typed; a strength is in % vol, `sugar` and a `to_sweetness` that is a number in g/L. Spirits of a kind
 * are taken as they are sold, a bottle as 700 ml, US cups and ounces as such: a reading within 5 % is right. A plant has
 * the name that the catalogue or its question understands. `ask` names what is rightly asked back for: a reading that asks
 * for it is right too. `records: false` stands where nothing may be recorded, erased or shown, whatever else is answered;
 * `also` is a second thing in one sentence; `entry` is the entry of the handbook.
 *
 * Where a meaning has an intent that is no command: `recipe` is a whole recipe to be checked, `ideas` what could be made,
 * `season` what is ripe, `history` a look into a jar's story, `jars` the list of what is to do, `pause` no reminders until
 * then, `remind` to be told of it that day, `change` the last call with that much changed, `answer` the answer to the
 * question that is open, `confirm` a deed that no sentence does: it answers with the line to type.
 */

const amount = z.number().positive()
const plant = z.union([
  z.string(),
  z.strictObject({
    name: z.string(),
    count: amount.optional(),
    g: amount.optional(),
    share: amount.optional(),
  }),
])
const spirit = z.strictObject({ ml: amount.optional(), name: z.string().optional(), abv: amount.max(100).optional() })
const bottles = z.strictObject({ count: amount.optional(), ml: amount.optional() })

export const INTENTS = [
  ...['plan', 'recipe', 'ideas', 'season', 'dose', 'time_to_ready', 'steep_time', 'rest_time', 'compare_keep'],
  ...['syrup', 'dilute', 'mix', 'blend', 'adjust', 'servings', 'serving', 'freeze_check', 'cost', 'label', 'define'],
  ...['measure', 'measure_boil_off', 'measure_two_instruments', 'explain', 'how_sure', 'more', 'split_batch'],
  ...['change', 'change_spirit', 'correct_value', 'correct_jar', 'answer', 'yes', 'done', 'start', 'undo'],
  ...['jar_event', 'jar_show', 'jar_tag', 'jar_label', 'jars', 'history', 'rename', 'compare', 'again', 'notebook'],
  ...['confirm', 'pause', 'remind', 'reminders', 'reminders_on', 'reminders_show', 'calendar', 'settings'],
  ...['never_mind', 'trouble', 'safety', 'cautions', 'plant_info', 'greeting', 'thanks', 'help'],
  ...['how_to', 'substitute_spirit', 'other_sugar', 'keep_time', 'temperature', 'light', 'vessel', 'dairy', 'spent'],
  ...['second_steep', 'allergen', 'law'],
] as const

export const EVENTS = [
  ...['start', 'shake', 'taste', 'add', 'take_out', 'strain', 'sweeten', 'filter', 'bottle', 'open', 'give'],
  ...['split', 'combine', 'note'],
] as const

const slots = {
  plants: z.array(plant).min(1),
  plant: z.string(),
  spirits: z.array(spirit).min(1),
  bottles: z.union([bottles, z.array(z.strictObject({ count: amount, ml: amount })).min(1)]),
  ready_by: z.string(),
  start: z.string(),
  to_abv: amount.max(100),
  to_sweetness: z.union([amount, z.enum(['dry', 'everyday', 'rich'])]),
  parts: z.union([z.array(z.strictObject({ ml: amount, abv: amount, sugar: amount.optional() })).min(2), z.literal(2)]),
  jar: z.string().nullable(),
  jars: z.array(z.string()),
  event: z.enum(EVENTS),
  choice: z.union([z.number(), z.string()]),
  answer: z.unknown(),
  ask: z.array(z.string()),
  assume: z.array(z.string()),
  caution: z.array(z.string()),
  compare: z.array(z.string()),
  change: z.union([z.strictObject({ plant: z.string() })]),
  danger: z.boolean(),
  records: z.literal(false),
  sweetness: z.enum(['more', 'less']),
  strength: z.enum(['more', 'less']),
  direction: z.enum(['less sweet', 'sweeter', 'weaker', 'stronger']),
  units: z.enum(['US', 'metric', 'imperial']),
  shake: z.literal('no'),
  to: z.union([z.number(), z.string()]),
}

const NUMBERS = [
  ...['ml', 'g', 'abv', 'infusion_ml', 'infusion_g', 'spirit_ml', 'measured_ml', 'water_ml', 'sugar_g', 'sugar', 'C'],
  ...['pour_ml', 'bottle_ml', 'people', 'days', 'age_days', 'rested_days', 'month', 'rating', 'scale', 'in_ml'],
  ...['out_ml'],
  ...['brix', 'sg', 'sg_before', 'sg_after', 'reading', 'spirit_price_per_L', 'sugar_price_per_kg', 'plant_price_each'],
  ...['freezer_C'],
] as const

const WORDS = [
  ...['per', 'keep', 'replace', 'place', 'material', 'substitute', 'use', 'without', 'country'],
  ...['zone', 'time', 'field', 'instrument', 'age', 'when', 'until', 'on'],
  ...['symptom', 'suspect', 'entry', 'subject', 'term', 'question', 'command'],
] as const

const shapeOf = <Name extends string, Value extends z.ZodType>(
  names: readonly Name[],
  value: Value,
): Record<Name, Value> => Object.fromEntries(names.map((name) => [name, value])) as Record<Name, Value>

const meaningShape = z
  .strictObject({
    ...shapeOf(NUMBERS, z.number()),
    ...shapeOf(WORDS, z.string()),
    ...slots,
    // What another sugar is named, beside sugar in g/L.
    sugar: z.union([z.number(), z.string()]),
    abv: amount.max(100).nullable(),
  })
  .partial()
  .extend({ intent: z.enum(INTENTS) })

export type Meaning = z.output<typeof meaningShape> & { readonly also?: readonly Meaning[] }

const meaning: z.ZodType<Meaning> = meaningShape.extend({
  get also() {
    return z.array(meaning).min(1).optional()
  },
}) as z.ZodType<Meaning>

const lang = z.enum(['en', 'it'])
const text = z.string().trim().min(1)

const sentence = z.strictObject({
  id: z.string(),
  lang,
  topic: z.string().optional(),
  text,
  after: text.nullable(),
  shelf: z.enum(Object.keys(SHELVES) as [Shelf, ...Shelf[]]).optional(),
  meaning,
})

const offTopic = z.strictObject({ id: z.string(), lang, text })

/** `danger` is what is refused, by its id in core, or one of what is no ingredient: flame, infant, pregnancy. */
const danger = z.strictObject({ id: z.string(), lang, danger: z.string(), text })

export type Sentence = z.output<typeof sentence>
export type OffTopic = z.output<typeof offTopic>
export type Danger = z.output<typeof danger>

export const SENTENCE_FILES = [
  ...['open', 'open-2', 'own-1', 'own-2', 'own-3', 'own-4', 'own-5', 'own-6', 'own-7', 'own-8', 'own-9', 'held'],
  ...['held-2', 'held-3', 'held-4', 'held-5', 'held-6'],
] as const

/** Of our own writing. */
export const OUR_FILES = SENTENCE_FILES.filter((name) => !name.startsWith('open'))

/** Looked at by nobody who works on the reader, and learnt from by nothing. */
export const HELD: ReadonlySet<string> = new Set(['held-3', 'held-5', 'held-6'])

const linesOf = <Line>(name: string, line: z.ZodType<Line>): readonly Line[] =>
  readFileSync(join(import.meta.dirname, `${name}.jsonl`), 'utf8')
    .trim()
    .split('\n')
    .map((each) => line.parse(JSON.parse(each)))

export const sentencesOf = (name: (typeof SENTENCE_FILES)[number]): readonly Sentence[] => linesOf(name, sentence)

/** Gardens, weather, football and the society's own affairs: nothing here is answered. */
export const readOffTopic = (): readonly OffTopic[] => linesOf('off-topic', offTopic)

/** What is refused, wherever in the sentence it stands. */
export const readDangers = (): readonly Danger[] => linesOf('dangers', danger)
