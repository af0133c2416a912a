import { featuresOf } from '../../../bot/talk/hunch/features.ts'
import type { Aim, Hunch } from '../../../bot/talk/hunch/hunch.ts'
import { readOffTopic, type Sentence } from '../corpus.ts'
import { STEPS } from '../reader/calls-meant.ts'
import { talker, talkerFor } from '../reader/told.ts'
import { TOPICS } from '../reader/verdict.ts'
import type { Example } from './learn.ts'

/** The command of a meaning that is none by its name, where one speaks for it more often than all others. */
const COMMAND: Readonly<Partial<Record<Sentence['meaning']['intent'], Aim>>> = {
  plan: 'plan',
  recipe: 'plan',
  ideas: 'plan',
  time_to_ready: 'plan',
  change_spirit: 'plan',
  dose: 'botanical',
  steep_time: 'botanical',
  season: 'botanical',
  plant_info: 'botanical',
  cautions: 'cautions',
  start: 'jar start',
  jar_event: 'jar note',
  jar_show: 'jar show',
  history: 'jar show',
  jars: 'jar list',
  jar_tag: 'jar tag',
  jar_label: 'jar label',
  rename: 'jar rename',
  remind: 'jar later',
  undo: 'jar undo',
  again: 'again',
  compare: 'notebook',
  notebook: 'notebook',
  confirm: 'jar discard',
  label: 'label',
  cost: 'cost',
  dilute: 'dilute',
  syrup: 'syrup',
  mix: 'mix',
  blend: 'blend',
  freeze_check: 'blend',
  serving: 'serving',
  adjust: 'adjust',
  measure: 'measure',
  measure_two_instruments: 'measure',
  measure_boil_off: 'measure',
  pause: 'reminders',
  reminders: 'reminders',
  reminders_show: 'reminders',
  reminders_on: 'reminders',
  calendar: 'calendar',
  settings: 'settings',
  trouble: 'trouble',
  greeting: 'talk',
  thanks: 'talk',
  never_mind: 'talk',
  help: 'talk',
}

/** What changes, answers or asks on after what was said. */
const FOLLOWS: ReadonlySet<string> = new Set(
  'change answer more explain how_sure yes done correct_value correct_jar'.split(' '),
)

/** What a reading of it ought to be. */
export function aimOf({ after, meaning }: Pick<Sentence, 'after' | 'meaning'>): Aim {
  const { intent, event, entry } = meaning
  if (entry !== undefined) return 'handbook'
  if (intent === 'jar_event' && event !== undefined) return STEPS[event] as Aim
  if (FOLLOWS.has(intent)) return after === null ? 'plan' : 'follow'
  return COMMAND[intent] ?? (TOPICS.has(intent) ? 'handbook' : 'none')
}

/** The features of a sentence where it stands, with what was said before; null where a danger in it is answered before it is read. */
async function featuresWhere(say: (hunch: Hunch) => Promise<unknown>): Promise<readonly string[] | null> {
  const seen: (readonly string[])[] = []
  await say((...of) => {
    seen.push(featuresOf(...of))
    return []
  })
  return seen[0] ?? null
}

const example = (aim: Aim, features: readonly string[] | null): readonly Example[] =>
  features === null ? [] : [{ aim, features }]

export async function examplesOf(sentences: readonly Sentence[]): Promise<readonly Example[]> {
  const found: Example[] = []
  for (const sentence of sentences) {
    const one = await talkerFor(sentence)
    found.push(...example(aimOf(sentence), await featuresWhere((hunch) => one.say(sentence.text, hunch))))
  }
  return found
}

/** Of what this is no place for. */
export async function examplesOffTopic(): Promise<readonly Example[]> {
  const found: Example[] = []
  for (const { text } of readOffTopic())
    found.push(...example('none', await featuresWhere((hunch) => talker().say(text, hunch))))
  return found
}
