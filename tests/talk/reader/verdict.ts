import { symptomIn } from '../../../core/trouble/find-symptom.ts'
import type { Sentence } from '../corpus.ts'
import { CALLS } from './calls-meant.ts'
import type { Meant } from './checks.ts'
import type { Told } from './told.ts'

/** `asked`: a question that helps, by which nothing is lost. */
export type Verdict = 'right' | 'asked' | 'lost' | 'wrong'

/** Intents that an entry of the handbook answers. */
export const TOPICS: ReadonlySet<string> = new Set(
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

/**
 * What an answer is worth against what was meant. Of two things in one sentence each has to be answered, in whatever order; where the
 * second is not, the first is worth no more than a question.
 */
export function verdictOn(told: Told, sentence: Sentence): Verdict {
  const { also, ...meaning } = sentence.meaning
  if (also === undefined) return verdictOnOne(told, sentence)
  const answers = [told, ...told.also.map((each) => ({ ...told, ...each, choices: [] }))]
  const verdicts = [meaning, ...also].map((each) =>
    answers.map((answer) => verdictOnOne(answer, { ...sentence, meaning: each })),
  )
  if (verdicts.every((all) => all.includes('right'))) return 'right'
  const [first = []] = verdicts
  return first.includes('right') ? 'asked' : (first[0] ?? 'wrong')
}

function verdictOnOne(told: Told, { meaning: said }: Sentence): Verdict {
  const meaning = said as Meant
  const { intent } = meaning
  const { command, code, call, data } = told
  const trouble = /^\/trouble (.*?)(?: jar:.*| strength:.*| sweetness:.*)?$/
    .exec(told.read ?? '')?.[1]
    ?.replace(/^symptom:/, '')
  const symptom = trouble === undefined ? undefined : (symptomIn(trouble) ?? trouble)
  if (symptom !== undefined && said.symptom_or?.includes(symptom) === true) return 'right'
  if (symptom !== undefined && (intent === 'trouble' || intent === 'measure')) {
    const meant = meaning.symptom ?? 'hydrometer_odd'
    return symptom === meant || SAME_SYMPTOM[meant]?.includes(symptom) === true ? 'right' : 'wrong'
  }
  if (symptom !== undefined) return 'wrong'
  if (code === 'not_understood') return intent === 'never_mind' ? 'right' : 'lost'
  if (command === 'emergency') return 'wrong'
  if (command === 'handbook') {
    if (said.entry_or?.includes(String(data.entry)) === true) return 'right'
    if (meaning.entry !== undefined && data.entry !== meaning.entry) return 'wrong'
    return TOPICS.has(intent) ? 'right' : 'wrong'
  }
  if (code === 'refused') return intent === 'safety' || meaning.danger === true ? 'right' : 'wrong'
  const check = command === null ? undefined : CALLS[intent]?.[command]
  if (intent === 'confirm') return code === 'question' || code === 'wrong_stage' ? 'right' : 'wrong'
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
export const isWronglyRecorded = ({ recorded, erased, command }: Told, { meaning }: Sentence): boolean =>
  erased ||
  (recorded !== 0 && (meaning.records === false || !(RECORDING.has(meaning.intent) || isKept(command, meaning))))

/** What a maker is told to do with a jar that something is wrong with is kept with it, also where throwing it away is what they asked for. */
const isKept = (command: string | null, { intent }: Sentence['meaning']): boolean =>
  command === 'trouble' && (intent === 'trouble' || intent === 'confirm')
