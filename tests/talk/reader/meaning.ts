import { findBotanical } from '../../../core/botanical/find/find.ts'
import { parseAmount } from '../../../core/quantity/read/parse-amount.ts'
import { parseSugar } from '../../../core/quantity/read/parse-sugar.ts'
import { parseStrength } from '../../../core/quantity/read/parse-strength.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { drinksIn } from '../../../core/recipe/drinks-in.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import type { TalkReading } from '../../../bot/talk/reader/reading.ts'

/** A sentence of the corpus, with what it means in the corpus' own words. */
export interface Spoken {
  readonly id: string
  readonly lang: 'en' | 'it'
  readonly topic?: string
  readonly text: string
  readonly after: string | null
  readonly meaning: Readonly<Record<string, unknown>> & { readonly intent: string }
}

export type Verdict = 'right' | 'asked' | 'lost' | 'wrong'

type Options = Readonly<Record<string, string>>
type Meant = Spoken['meaning']

const orNull = <Value>(read: () => Value): Value | null => {
  try {
    return read()
  } catch {
    return null
  }
}

const near = (one: number | null | undefined, other: number): boolean =>
  one !== null && one !== undefined && Math.abs(one - other) <= 0.01 * Math.abs(other) + 0.01

const ml = (text: string | undefined): number | null =>
  text === undefined ? null : orNull(() => { const amount = parseAmount(text); return amount.kind === 'volume' ? amount.volumeMl : null })
const abv = (text: string | undefined): number | null => (text === undefined ? null : orNull(() => parseStrength(text).abvPercent))
const gPerL = (text: string | undefined): number | null => (text === undefined ? null : orNull(() => parseSweetness(text).sugarGPerL))
const grams = (text: string | undefined): number | null => (text === undefined ? null : orNull(() => parseSugar(text).massG))

/** Ids that a name of the corpus may stand for. */
export function idsOf(name: string): readonly string[] {
  const found = orNull(() => findBotanical(name).botanical.id)
  if (found !== null) return [found]
  try {
    findBotanical(name)
    return []
  } catch (error) {
    const values = (error as { values?: { choices?: readonly string[]; nearest?: readonly string[] } }).values
    return values?.choices ?? values?.nearest ?? []
  }
}

const isSamePlant = (said: string, meant: string): boolean => {
  const plain = (text: string) => text.toLowerCase().replace(/(?:ies|es|s)$/, '')
  if (said.toLowerCase().includes(plain(meant))) return true
  const ids = idsOf(meant)
  return idsOf(said).some((id) => ids.includes(id))
}

interface PlantMeant {
  readonly name: string
  readonly count?: number
  readonly g?: number
}

function plantsHold(of: string | undefined, meant: readonly PlantMeant[]): boolean {
  if (meant.length === 0) return true
  if (of === undefined) return false
  const items = of.split('+').map((item) => item.trim())
  return (
    items.length === meant.length &&
    meant.every(({ name, count, g }) =>
      items.some((item) => {
        const noun = item.replace(/^[\d.,½¼¾/]+\s*(?:(?:g|kg|lb|oz|kilos?|chil[oi]|grams?|grammi)\b)?\s*(?:\w+\s+of\s+)?/i, '')
        if (!isSamePlant(noun, name)) return false
        const number = /^[\d.,]+/.exec(item)?.[0]
        if (count !== undefined && !near(Number(number), count)) return false
        return g === undefined || near(orNull(() => readPlants(item).plants[0]?.massG?.value ?? null) ?? undefined, g)
      }),
    )
  )
}

function spiritsHold({ spirit, strength }: Options, meant: readonly { ml?: number; abv?: number; name?: string }[]): boolean {
  if (meant.length === 0) return true
  if (spirit === undefined) return meant.every(({ ml: volume, abv: percent }) => volume === undefined && (percent === undefined || near(abv(strength), percent)))
  const drinks = orNull(() => drinksIn(spirit, { blends: false })) as readonly { amount: { volumeMl?: number }; strength: { abvPercent: number } | null }[] | null
  if (drinks === null || drinks.length !== meant.length) return false
  return meant.every(({ ml: volume, abv: percent }) =>
    drinks.some((drink) => (volume === undefined || near(drink.amount.volumeMl, volume)) && (percent === undefined || near(drink.strength?.abvPercent ?? abv(strength), percent))),
  )
}

const list = <Value>(value: unknown): readonly Value[] => (Array.isArray(value) ? value : value === undefined ? [] : [value as Value])
const number = (value: unknown): number | undefined => (typeof value === 'number' ? value : undefined)

const holds = (value: number | null, meant: unknown): boolean => meant === undefined || near(value, meant as number)

const sweetnessHolds = (text: string | undefined, meant: unknown): boolean =>
  meant === undefined || text === meant || near(gPerL(text), Number(meant)) || (typeof meant === 'string' && near(gPerL(text), gPerL(meant) ?? Number.NaN))

/** By intent: whether the options of a call of a command say what was meant. */
const CALLS: Readonly<Record<string, Readonly<Record<string, (options: Options, meant: Meant) => boolean>>>> = {
  plan: {
    plan: (options, meant) =>
      plantsHold(options.of, list<PlantMeant>(meant.plants)) &&
      spiritsHold(options, list(meant.spirits)) &&
      (meant.bottles === undefined || Number.parseInt(options.bottles ?? '', 10) === (meant.bottles as { count: number }).count) &&
      (meant.ready_by === undefined || options['ready-by'] !== undefined),
  },
  time_to_ready: { plan: (options, meant) => plantsHold(options.of, list(meant.plants)) && options['ready-by'] !== undefined },
  dose: { botanical: ({ of }, { plant }) => isSamePlant(of ?? '', String(plant)) },
  steep_time: { botanical: ({ of }, { plant }) => isSamePlant(of ?? '', String(plant)) },
  rest_time: { botanical: ({ of }, { plant }) => plant !== undefined && isSamePlant(of ?? '', String(plant)), 'jar show': () => true },
  syrup: {
    syrup: (options, meant) =>
      holds(ml(options.infusion), meant.infusion_ml) && holds(abv(options.strength), meant.abv) && holds(abv(options['to-strength']), meant.to_abv) && sweetnessHolds(options['to-sweetness'], meant.to_sweetness),
  },
  dilute: { dilute: (options, meant) => holds(ml(options.spirit), meant.ml) && holds(abv(options.strength), meant.abv) && holds(abv(options['to-strength']), meant.to_abv) },
  mix: {
    mix: (options, meant) => spiritsHold(options, list(meant.spirits)) && (meant.sugar_g === undefined || near(grams(options.sugar), Number(meant.sugar_g))) && (meant.water_ml === undefined || near(ml(options.water), Number(meant.water_ml))),
  },
  blend: {
    blend: ({ parts }, meant) => {
      const read = orNull(() => drinksIn(parts ?? '', { blends: true })) as readonly { amount: { volumeMl?: number }; strength: { abvPercent: number } | null }[] | null
      return list<{ ml: number; abv: number }>(meant.parts).every((part) => read?.some(({ amount, strength }) => near(amount.volumeMl, part.ml) && near(strength?.abvPercent, part.abv)))
    },
  },
  adjust: {
    adjust: (options, meant) =>
      holds(ml(options.liqueur), meant.ml) && holds(abv(options.strength), meant.abv) && (meant.sugar === undefined || near(gPerL(options.sweetness), Number(meant.sugar))),
  },
  serving: { serving: (options, meant) => holds(ml(options.pour), meant.pour_ml) && holds(abv(options.strength), meant.abv) },
  servings: { serving: (options, meant) => holds(ml(options.pour), meant.pour_ml) },
  measure_boil_off: { measure: (options, meant) => near(Number(options.before), Number(meant.sg_before)) && near(Number(options.after), Number(meant.sg_after)) },
  measure_two_instruments: { measure: (options, meant) => near(Number(options.brix), Number(meant.brix)) && near(Number(options.hydrometer), Number(meant.sg)) },
  freeze_check: { adjust: () => true, measure: () => true, mix: () => true },
  jar_event: { 'jar shake': () => true, 'jar strain': () => true, 'jar sweeten': () => true, 'jar bottle': () => true, 'jar taste': () => true, 'jar add': () => true, 'jar filter': () => true, 'jar open': () => true, 'jar start': () => true },
  jar_label: { 'jar label': () => true },
  calendar: { calendar: () => true },
  pause: { reminders: (options) => options['pause-until'] !== undefined || options.shake !== undefined },
  compare: { notebook: () => true },
  again: { again: () => true },
  allergen: { cautions: () => true, label: () => true },
  substitute_spirit: { plan: () => true },
  change_spirit: { plan: (options, meant) => spiritsHold(options, list(meant.spirits)) },
  change: { plan: () => true, syrup: () => true, dilute: () => true, adjust: () => true, mix: () => true },
  correct_value: { plan: (options, { to }) => JSON.stringify(options).includes(String(to)), syrup: (options, { to }) => JSON.stringify(options).includes(String(to)) },
  explain: {},
  cost: { cost: () => true },
}

/** Intents that the handbook or a refusal answers. */
const TOPICS = new Set([
  'define', 'how_to', 'split_batch', 'other_sugar', 'rest_time', 'keep_time', 'compare_keep', 'temperature', 'light', 'vessel', 'safety', 'dairy', 'spent', 'second_steep', 'label', 'allergen', 'law', 'cost', 'measure', 'explain', 'substitute_spirit', 'freeze_check', 'servings', 'change_spirit',
])

/** Symptoms that are as good as one another where the words tell no more. */
const SAME_SYMPTOM: Readonly<Record<string, readonly string[]>> = {
  cloudy_on_mixing: ['cloudy_later'],
  harsh_hot: ['too_spicy'],
  mould: ['skin_on_top', 'floating_bits'],
  pressure: ['fermenting'],
}

/** What a reading is worth against what was meant. */
export function verdictOn(reading: TalkReading, { meaning }: Spoken): Verdict {
  const { intent } = meaning
  if (reading.kind === 'lost') return 'lost'
  if (reading.kind === 'refused') return intent === 'safety' ? 'right' : 'wrong'
  if (reading.kind === 'topic') return TOPICS.has(intent) ? 'right' : 'wrong'
  if (reading.kind === 'symptom') {
    if (intent === 'trouble') return reading.id === meaning.symptom || SAME_SYMPTOM[String(meaning.symptom)]?.includes(reading.id) === true ? 'right' : 'wrong'
    return intent === 'measure' && reading.id === 'hydrometer_odd' ? 'right' : 'wrong'
  }
  if (reading.kind === 'last') return ['explain', 'more', 'how_sure', 'confirm', 'no'].includes(intent) ? 'right' : 'wrong'
  if (reading.kind === 'small_talk') return intent === 'small_talk' ? 'right' : 'wrong'
  const check = CALLS[intent]?.[reading.call.command]
  if (reading.kind === 'question') {
    if (check !== undefined) return 'asked'
    return Array.isArray(meaning.ask) ? 'asked' : 'wrong'
  }
  if (reading.kind === 'only_typed') return 'asked'
  return check?.(reading.call.options, meaning) === true ? 'right' : 'wrong'
}

export const numberOf = number
