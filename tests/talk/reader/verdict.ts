import type { Meaning, Sentence } from '../corpus.ts'
import {
  abvOf,
  bottlesHold,
  gPerLOf,
  gramsOf,
  isNear,
  isSamePlant,
  mlOf,
  type Options,
  partsHold,
  plantsHold,
  spiritsHold,
  sweetnessHolds,
  waterOf,
} from './amounts.ts'
import type { Told } from './told.ts'

/** `asked`: a question that helps, by which nothing is lost. */
export type Verdict = 'right' | 'asked' | 'lost' | 'wrong'

type Meant = Meaning &
  Partial<
    Record<
      | 'ml'
      | 'infusion_ml'
      | 'spirit_ml'
      | 'water_ml'
      | 'sugar_g'
      | 'pour_ml'
      | 'measured_ml'
      | 'rating'
      | 'brix'
      | 'sg'
      | 'sg_before'
      | 'sg_after',
      number
    >
  > &
  Partial<Record<'without' | 'when' | 'entry' | 'symptom', string>>

type Check = (options: Options, meaning: Meant, told: Told) => boolean

const holds = (value: number | null, meant: number | null | undefined): boolean =>
  meant === undefined || meant === null || isNear(value, meant)

const ofPlant: Check = ({ of = '' }, { plant, plants }) =>
  (plant === undefined || isSamePlant(of, plant)) && (plants === undefined || plantsHold(of, plants))

const batch: Check = (options, meaning) =>
  plantsHold(options.of, meaning.plants) &&
  spiritsHold(options, meaning.spirits) &&
  bottlesHold(options.bottles, meaning.bottles) &&
  (meaning.ready_by === undefined || options['ready-by'] !== undefined) &&
  holds(abvOf(options['to-strength']), meaning.to_abv) &&
  sweetnessHolds(options['to-sweetness'], meaning.to_sweetness) &&
  (typeof meaning.sugar_g !== 'number' || isNear(gramsOf(options.sugar), meaning.sugar_g))

const syrup: Check = (options, meaning) =>
  holds(mlOf(options.infusion), meaning.infusion_ml ?? meaning.ml) &&
  holds(abvOf(options.strength), meaning.abv) &&
  holds(abvOf(options['to-strength']), meaning.to_abv) &&
  sweetnessHolds(options['to-sweetness'], meaning.to_sweetness)

const dilute: Check = (options, meaning) =>
  holds(mlOf(options.spirit), meaning.ml ?? meaning.spirit_ml) &&
  holds(abvOf(options.strength), meaning.abv) &&
  holds(abvOf(options['to-strength']), meaning.to_abv)

const mix: Check = (options, meaning) =>
  (meaning.spirits === undefined ? holds(mlOf(options.spirit), meaning.ml) : spiritsHold(options, meaning.spirits)) &&
  holds(waterOf(options.water), meaning.water_ml) &&
  holds(gramsOf(options.sugar), meaning.sugar_g)

const adjust: Check = (options, meaning) =>
  holds(mlOf(options.liqueur), meaning.ml) &&
  holds(abvOf(options.strength), meaning.abv) &&
  (typeof meaning.sugar !== 'number' || isNear(gPerLOf(options.sweetness), meaning.sugar))

const serving: Check = (options, meaning) =>
  holds(mlOf(options.pour), meaning.pour_ml) && holds(abvOf(options.strength), meaning.abv)

/** The jar by its name; `all`, or one that only the shelf tells. */
const isJar = ({ jar }: Options, { jar: meant }: Meant): boolean =>
  meant === undefined ||
  meant === null ||
  (jar ?? '').toLowerCase() === meant.toLowerCase() ||
  (jar ?? '').toLowerCase().startsWith(meant.toLowerCase())

const STEPS: Readonly<Record<NonNullable<Meaning['event']>, string>> = {
  start: 'jar start',
  shake: 'jar shake',
  taste: 'jar taste',
  add: 'jar add',
  strain: 'jar strain',
  sweeten: 'jar sweeten',
  filter: 'jar filter',
  bottle: 'jar bottle',
  open: 'jar open',
}

const step: Check = (options, meaning, { command }) =>
  (meaning.event === undefined ||
    command === STEPS[meaning.event] ||
    (command === 'jar strain' && meaning.event === 'filter')) &&
  (command === 'jar start' || isJar(options, meaning)) &&
  (command === 'jar start' ? plantsHold(options.of, meaning.plants) && spiritsHold(options, meaning.spirits) : true) &&
  holds(mlOf(options.measured), meaning.measured_ml ?? (command === 'jar strain' ? meaning.ml : undefined)) &&
  (command !== 'jar strain' || holds(abvOf(options.strength), meaning.abv)) &&
  (command !== 'jar sweeten' ||
    (holds(waterOf(options.water), meaning.water_ml) && holds(gramsOf(options.sugar), meaning.sugar_g))) &&
  (meaning.rating === undefined || Number(options.rating) === meaning.rating) &&
  (command !== 'jar bottle' || bottlesHold(options.bottles, meaning.bottles)) &&
  (meaning.when === undefined ||
    /^(?:today|this morning|just now|tonight)$/.test(String(meaning.when)) ||
    options.when !== undefined)

const anyOf = (commands: readonly string[], check: Check = () => true): Readonly<Record<string, Check>> =>
  Object.fromEntries(commands.map((command) => [command, check]))

const CHANGEABLE = ['plan', 'syrup', 'dilute', 'adjust', 'mix', 'blend', 'botanical', 'serving', 'jar start', 'again']

/** Whether a change says what was wished, where the meaning tells. */
const changed: Check = (options, meaning) => {
  const text = JSON.stringify(options)
  const says = (value: unknown): boolean => value === undefined || text.includes(String(value))
  return (
    (meaning.bottles === undefined || bottlesHold(options.bottles, meaning.bottles)) &&
    says(meaning.to) &&
    holds(abvOf(options['to-strength']), meaning.to_abv) &&
    (meaning.spirits === undefined || spiritsHold(options, meaning.spirits)) &&
    (meaning.without === undefined || !text.toLowerCase().includes(meaning.without.toLowerCase().replace(/s$/, ''))) &&
    (typeof meaning.to_sweetness !== 'number' || sweetnessHolds(options['to-sweetness'], meaning.to_sweetness))
  )
}

/** By intent: which commands answer it, and whether their options say what was meant. */
const CALLS: Readonly<Record<string, Readonly<Record<string, Check>>>> = {
  plan: { plan: batch },
  recipe: { plan: batch },
  time_to_ready: { plan: batch, botanical: ofPlant },
  ideas: { plan: (options, { plants }) => plantsHold(options.of, plants), ideas: () => true },
  season: { botanical: () => true, season: () => true },
  dose: { botanical: ofPlant, plan: batch },
  steep_time: { botanical: ofPlant, 'jar show': () => true },
  rest_time: { botanical: ofPlant, 'jar show': () => true },
  plant_info: { botanical: ofPlant, cautions: ofPlant },
  cautions: { cautions: ofPlant, botanical: ofPlant },
  syrup: { syrup },
  dilute: { dilute },
  mix: { mix },
  blend: { blend: ({ parts }, meaning) => partsHold(parts, meaning.parts) },
  adjust: { adjust },
  serving: { serving },
  servings: { serving },
  freeze_check: anyOf(['adjust', 'mix', 'measure', 'trouble']),
  cost: anyOf(['cost', 'shopping']),
  label: anyOf(['label', 'jar label']),
  allergen: anyOf(['cautions', 'label', 'botanical']),
  measure: anyOf(['measure', 'trouble']),
  measure_boil_off: {
    measure: (options, meaning) =>
      Number(options.before) === meaning.sg_before && Number(options.after) === meaning.sg_after,
  },
  measure_two_instruments: {
    measure: (options, meaning) => Number(options.brix) === meaning.brix && Number(options.hydrometer) === meaning.sg,
  },
  change: anyOf(CHANGEABLE, changed),
  change_spirit: { plan: changed, 'jar start': changed, again: changed },
  correct_value: anyOf([...CHANGEABLE, 'jar correct', 'jar strain', 'jar sweeten'], changed),
  substitute_spirit: { plan: () => true, botanical: ofPlant },
  answer: anyOf([
    ...CHANGEABLE,
    'jar strain',
    'jar shake',
    'jar sweeten',
    'jar taste',
    'jar bottle',
    'jar add',
    'measure',
    'cautions',
    'jar show',
    'jar filter',
    'jar open',
    'jar later',
  ]),
  yes: anyOf(['jar sweeten', 'jar start', 'jar strain', 'jar shake', 'jar bottle', 'jar filter', 'settings', 'plan']),
  done: anyOf(['jar sweeten', 'jar strain', 'jar shake', 'jar bottle', 'jar filter']),
  start: anyOf(['jar start']),
  undo: anyOf(['jar undo']),
  jar_event: anyOf(Object.values(STEPS), step),
  jar_show: { 'jar show': (options, meaning) => isJar(options, meaning), 'jar list': () => true },
  history: { 'jar show': (options, meaning) => isJar(options, meaning), notebook: () => true },
  jar_tag: { 'jar tag': (options, meaning) => isJar(options, meaning) },
  jar_label: { 'jar label': (options, meaning) => isJar(options, meaning) },
  jars: anyOf(['jar list']),
  rename: { 'jar rename': (options, meaning) => isJar(options, meaning) },
  compare: anyOf(['notebook']),
  notebook: anyOf(['notebook', 'jar list']),
  again: { again: (options, meaning) => isJar(options, meaning) },
  pause: { reminders: (options) => options['pause-until'] !== undefined, 'jar later': () => true },
  remind: { 'jar later': () => true, reminders: () => true },
  reminders: { reminders: (options, { shake }) => shake === undefined || options.shake !== undefined },
  reminders_on: anyOf(['reminders']),
  reminders_show: anyOf(['reminders', 'jar list']),
  calendar: anyOf(['calendar']),
  settings: anyOf(['settings']),
  explain: anyOf([...CHANGEABLE, 'jar strain', 'jar sweeten']),
  how_sure: anyOf([...CHANGEABLE, 'jar strain', 'jar sweeten', 'measure', 'jar show']),
  more: anyOf([...CHANGEABLE, 'jar strain', 'jar sweeten', 'measure', 'jar show', 'jar list']),
  never_mind: anyOf(['talk']),
  greeting: anyOf(['talk']),
  thanks: anyOf(['talk']),
  help: anyOf(['help', 'talk']),
  spent: {},
}

/** Intents that an entry of the handbook answers. */
const TOPICS = new Set(
  (
    'define how_to split_batch other_sugar rest_time keep_time compare_keep temperature light vessel safety dairy spent second_steep label allergen law cost measure explain substitute_spirit freeze_check servings ' +
    'change_spirit time_to_ready cautions serving season dose plant_info steep_time'
  ).split(' '),
)

/** Where the words tell no more, one is as good as the other. */
const SAME_SYMPTOM: Readonly<Record<string, readonly string[]>> = {
  cloudy_on_mixing: ['cloudy_later'],
  cloudy_later: ['cloudy_on_mixing'],
  harsh_hot: ['too_spicy'],
  too_spicy: ['harsh_hot'],
  fermenting: ['pressure'],
  pressure: ['fermenting'],
}

const QUESTION = new Set(['question', 'missing_option', 'ambiguous'])

/** What an answer is worth against what was meant. */
export function verdictOn(told: Told, { meaning: said }: Sentence): Verdict {
  const meaning = said as Meant
  const { intent } = meaning
  const { command, code, call, data } = told
  if (code === 'not_understood') return intent === 'never_mind' ? 'right' : 'lost'
  if (command === 'emergency') return 'wrong'
  if (command === 'handbook') {
    if (meaning.entry !== undefined && data.entry !== meaning.entry) return 'wrong'
    return TOPICS.has(intent) ? 'right' : 'wrong'
  }
  if (command === 'trouble' && (intent === 'trouble' || intent === 'measure')) {
    const symptom = String(data.symptom ?? call?.options.symptom ?? '').replaceAll(' ', '_')
    const meant = meaning.symptom ?? 'hydrometer_odd'
    return symptom === meant || SAME_SYMPTOM[meant]?.includes(symptom) === true ? 'right' : 'wrong'
  }
  if (code === 'refused') return intent === 'safety' || meaning.danger === true ? 'right' : 'wrong'
  const check = command === null ? undefined : CALLS[intent]?.[command]
  if (intent === 'confirm') return code === 'question' ? 'right' : 'wrong'
  if (intent === 'correct_jar' && code === 'question') return 'right'
  if (code !== null && QUESTION.has(code)) {
    if (meaning.ask !== undefined) return 'right'
    return check !== undefined || intent === 'answer' ? 'asked' : 'wrong'
  }
  if (check === undefined) return 'wrong'
  return check(call?.options ?? {}, meaning, told) ? 'right' : 'wrong'
}

/** Sentences by which something may be written down. */
const RECORDING = new Set([
  'jar_event',
  'answer',
  'yes',
  'done',
  'start',
  'undo',
  'again',
  'correct_value',
  'correct_jar',
  'rename',
  'remind',
  'pause',
])

/** Something was written down, erased or shown that nobody told. */
export const isWronglyRecorded = ({ recorded, erased }: Told, { meaning }: Sentence): boolean =>
  erased || (recorded !== 0 && (meaning.records === false || !RECORDING.has(meaning.intent)))
