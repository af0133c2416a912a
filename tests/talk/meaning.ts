import { z } from 'zod'

/**
 * What a sentence means. A value is in the unit of its name, whatever unit was typed; a strength is in % vol, `sugar`
 * and a `to_sweetness` that is a number in g/L. Spirits of a kind are taken as they are sold, a bottle as 700 ml, US
 * cups and ounces as such: a reading within 5 % is right. A plant has the name that the catalogue or its question
 * understands. `ask` names what is rightly asked back for: a reading that asks for it is right too. `records: false`
 * stands where nothing may be recorded, erased or shown, whatever else is answered; `also` is a second thing in one
 * sentence; `entry` is the entry of the handbook. `entry_or` and `symptom_or` are others that answer it as well: who asks would be
 * content with them.
 *
 * Where a meaning has an intent that is no command: `recipe` is a whole recipe to be checked, `ideas` what could be
 * made, `season` what is ripe, `history` a look into a jar's story, `jars` the list of what is to do, `pause` no
 * reminders until then, `remind` to be told of it that day, `change` the last call with that much changed, `answer`
 * the answer to the question that is open, `confirm` a deed that no sentence does: it answers with the line to type.
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

const INTENTS = [
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

const EVENTS = [
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
  entry_or: z.array(z.string()).min(1),
  symptom_or: z.array(z.string()).min(1),
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

export const meaning: z.ZodType<Meaning> = meaningShape.extend({
  get also() {
    return z.array(meaning).min(1).optional()
  },
}) as z.ZodType<Meaning>
