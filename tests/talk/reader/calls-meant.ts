import type { Meaning } from '../meaning.ts'
import {
  abvOf,
  bottlesHold,
  gramsOf,
  mlOf,
  partsHold,
  plantsHold,
  spiritsHold,
  sweetnessHolds,
  waterOf,
} from './amounts.ts'
import { adjust, batch, type Check, dilute, holds, isJar, mix, ofPlant, serving, syrup } from './checks.ts'

export const STEPS: Readonly<Record<NonNullable<Meaning['event']>, string>> = {
  start: 'jar start',
  shake: 'jar shake',
  taste: 'jar taste',
  add: 'jar add',
  strain: 'jar strain',
  sweeten: 'jar sweeten',
  filter: 'jar filter',
  bottle: 'jar bottle',
  open: 'jar open',
  take_out: 'jar take-out',
  split: 'jar split',
  combine: 'jar combine',
  note: 'jar note',
  give: 'bottles',
}

const lastWord = (text: string): string => text.toLowerCase().split(' ').at(-1)!

/** What is told of a jar besides its liquid: what was lifted out, poured off or together, given away, and where it stands. */
const lived: Check = (options, { event, ml, to, jars, plants, bottles, place }, { command }) => {
  if (command === 'bottles') {
    const out = event === 'give' ? options.given : options.opened
    return out !== undefined && bottlesHold(out, bottles)
  }
  if (command === 'jar take-out') return plantsHold(options.of, plants)
  if (command === 'jar note') return place === undefined || lastWord(options.where ?? '') === lastWord(place)
  if (command === 'jar split')
    return (
      holds(mlOf(options.amount), ml) && (to === undefined || options.into?.toLowerCase() === String(to).toLowerCase())
    )
  return command !== 'jar combine' || jars?.toSorted().join() === [options.jar, options.with].toSorted().join()
}

export const step: Check = (options, meaning, told) =>
  (meaning.event === undefined ||
    told.command === STEPS[meaning.event] ||
    (told.command === 'bottles' && meaning.event === 'open') ||
    (told.command === 'jar strain' && meaning.event === 'filter')) &&
  (told.command === 'jar start' || isJar(options, meaning)) &&
  lived(options, meaning, told) &&
  (told.command === 'jar start'
    ? plantsHold(options.of, meaning.plants) && spiritsHold(options, meaning.spirits)
    : true) &&
  holds(mlOf(options.measured), meaning.measured_ml ?? (told.command === 'jar strain' ? meaning.ml : undefined)) &&
  (told.command !== 'jar strain' || holds(abvOf(options.strength), meaning.abv)) &&
  (told.command !== 'jar sweeten' ||
    (holds(waterOf(options.water), meaning.water_ml) && holds(gramsOf(options.sugar), meaning.sugar_g))) &&
  (meaning.rating === undefined || Number(options.rating) === meaning.rating) &&
  (told.command !== 'jar bottle' || bottlesHold(options.bottles, meaning.bottles)) &&
  (meaning.when === undefined ||
    /^(?:today|this morning|just now|tonight)$/.test(String(meaning.when)) ||
    options.when !== undefined)

export const anyOf = (commands: readonly string[], check: Check = () => true): Readonly<Record<string, Check>> =>
  Object.fromEntries(commands.map((command) => [command, check]))

export const CHANGEABLE = [
  'plan',
  'syrup',
  'dilute',
  'adjust',
  'mix',
  'blend',
  'botanical',
  'serving',
  'jar start',
  'again',
]

/** Whether a change says what was wished, where the meaning tells. */
export const changed: Check = (options, meaning) => {
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
export const CALLS: Readonly<Record<string, Readonly<Record<string, Check>>>> = {
  plan: { plan: batch },
  recipe: { plan: batch },
  time_to_ready: { plan: batch, botanical: ofPlant },
  ideas: {
    plan: (options, { plants }) => plantsHold(options.of, plants),
    // Where nothing is there yet, what is ripe.
    botanical: ({ month }, { plants }) => month !== undefined && plants === undefined,
  },
  season: { botanical: ({ month }) => month !== undefined },
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
  freeze_check: anyOf(['blend', 'adjust', 'mix', 'measure', 'trouble']),
  cost: anyOf(['cost', 'shopping']),
  label: anyOf(['label', 'jar label']),
  allergen: anyOf(['cautions', 'label', 'botanical']),
  measure: anyOf(['measure', 'trouble']),
  measure_boil_off: {
    measure: (options, meaning) =>
      Number(options.before?.replace(',', '.')) === meaning.sg_before &&
      Number(options.after?.replace(',', '.')) === meaning.sg_after,
  },
  measure_two_instruments: {
    measure: (options, meaning) =>
      Number(options.brix?.replace(',', '.')) === meaning.brix &&
      Number(options.hydrometer?.replace(',', '.')) === meaning.sg,
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
  jar_show: {
    'jar show': (options, meaning) => isJar(options, meaning),
    'jar list': () => true,
    bottles: (options, meaning) =>
      options.given === undefined && options.opened === undefined && isJar(options, meaning),
  },
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
