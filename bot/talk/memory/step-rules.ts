import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { isPastDay } from '../bits/past-day.ts'
import { unknownName } from '../bits/unknown-name.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { symptomIn } from '../frames/symptoms.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { changedBy, withOption } from './change-call.ts'
import { nameSaid } from './name-said.ts'
import { isOf } from './plan-rules.ts'
import type { Remembered } from './remembered.ts'
import { callReading, type Rule } from './rule.ts'
import { undoAsked, undoOf } from './undo-rule.ts'

/** `I started it three weeks ago`: what was planned, on its day. */
const STARTED = /^(?:i|we|ive|weve) (?:have )?(?:already )?(?:started|begun|began|made) (?:it|that|this)\b/

const pastDay = (bits: readonly Bit[]): Bit | null => {
  const days = bits.filter(isPastDay)
  return days.length === 1 ? days[0]! : null
}

/** Told of the plan by its plant, and with no amounts of its own. */
const isOfPlanned = (bits: readonly Bit[], { options }: CallRead): boolean =>
  bits.length === 2 && bits.every((bit) => bit.kind === 'date' || (bit.kind === 'plant' && isOf(options.of ?? '', bit)))

const isUnsure = ({ tokens }: Sentence['typed'], has: Sentence['has']): boolean =>
  has('denial', 'hypothesis', 'asking', 'wish') || tokens.some(({ text }) => text === '?')

export const begun: Rule = ({ has, bits, typed }, last, { offered }) => {
  const [day, another] = bits
  const planned = last.command === 'plan' ? offered.find(({ command }) => command === 'jar start') : undefined
  const isTold = STARTED.test(wordsFrom(typed)) && !has('denial', 'hypothesis')
  if (planned !== undefined && isTold && day?.kind === 'date' && another === undefined && !has('asking'))
    return callReading(withOption(planned, 'when', day.text), 'record')
  const past = pastDay(bits)
  if (planned !== undefined && past !== null && isOfPlanned(bits, planned) && has('started') && !isUnsure(typed, has))
    return callReading(withOption(planned, 'when', past.text), 'record')
  const name = nameSaid(typed, past)
  const isAsked = has('denial') || typed.tokens.some(({ text }) => text === '?')
  const isOther = bits.some((bit) => bit !== past && (bit.kind !== 'date' || bit.text !== 'today'))
  if (!has('start_word') || isAsked || (isOther && name === undefined)) return null
  const start = offered.find(({ command }) => command === 'jar start')
  const named = (call: CallRead): TalkReading => {
    const dated = past === null ? call : withOption(call, 'when', past.text)
    return callReading(name === undefined ? dated : withOption(dated, 'name', name), 'record')
  }
  if (start !== undefined) return named(start)
  if (last.command !== 'plan') return null
  const { start: when, ...options } = last.options
  return named({ command: 'jar start', options: { ...options, ...(when !== undefined && { when }) } })
}

/** Whether hardly anything else is said. */
export const isOnly = ({ tokens }: Sentence['typed'], spans: Sentence['spans'], concept: Concept): boolean => {
  const words = tokens.flatMap(({ kind }, at) => (kind === 'word' ? [at] : []))
  const isWithin = (at: number): boolean =>
    spans.some((span) => (span.concept === concept || span.concept === 'greeting') && span.from <= at && at < span.to)
  return words.length > 0 && words.every(isWithin) && spans.some((span) => span.concept === concept)
}

/** What an answer offers that is done by saying that it was. */
export const DONE = /^jar (?:sweeten|strain|filter|shake|bottle)$/

/** What takes something back, ends it, or is seen by others is never meant by a yes, which is no rating either. */
const NEVER_BY_YES = /undo|empty|discard|forget|share|taste/

/** A yes to what was asked of a step that may be a mistake: nothing else is recorded by it. */
function doubted({ step, doubt }: Remembered, isYes: boolean, jars: Sentence['jars']): TalkReading | null {
  const jar = step?.options.jar
  if (doubt === null || step === null || jar === undefined) return null
  if (doubt === 'meant') return isYes ? { kind: 'last', what: 'let_be' } : null
  if (doubt === 'undo' && isYes) return callReading(undoOf(jar), 'record')
  return undoAsked(step, jars.find(({ id }) => `#${id}` === jar)?.name ?? jar)
}

/** Heard, rather than agreed: nothing is written down by it. */
const NOD = /^(?:ok|okay|okey|k|right|great|good|perfect|perfetto|va bene|giusto)\b[ .!]*$/i

export const agreed: Rule = ({ has, bits, typed, spans, jars }, _last, said) => {
  const { offered } = said
  if (bits.length > 0 || typed.tokens.length > 6 || has('asking', 'denial')) return null
  if (DOUBTS.test(typed.text.trim())) return null
  const isYes = isOnly(typed, spans, 'yes')
  const startsSo = spans.some(({ concept, from }) => concept === 'yes' && from === 0)
  if (has('done_word') || isYes || startsSo) {
    const mistaken = doubted(said, isYes, jars)
    if (mistaken !== null) return mistaken
  }
  if (has('done_word')) {
    const step = offered.find(({ command }) => DONE.test(command))
    return step === undefined ? null : callReading(step, 'record')
  }
  const [first, ...others] = offered.filter(({ command }) => !NEVER_BY_YES.test(command))
  if (!isYes || first === undefined) return null
  if (others.length > 0) return WHICH.test(typed.text.trim()) ? eitherOf(first, [first, ...others].slice(0, 3)) : null
  // `When it’s bottled` asks for nothing that a yes could be to.
  if (first.command === 'jar bottle' || (NOD.test(typed.text.trim()) && first.command.startsWith('jar ')))
    return { kind: 'question', call: first, about: { kind: 'told_or_asked' }, choices: [first], leftOut: [] }
  return callReading(first, first.command.startsWith('jar ') ? 'record' : 'compute')
}

/** A yes that is one in earnest: `great` and `ok` are often only a nod. */
const WHICH = /^(?:oh )?(?:yes|yep|yeah|yup|s[iì]|do it|go on|go ahead)\b/i

/** By what was done, the step that an answer may have offered. */
const STEP_OF: readonly (readonly [Concept, string])[] = [
  ['sweetened', 'jar sweeten'],
  ['shook', 'jar shake'],
  ['strained', 'jar strain'],
  ['filtered', 'jar filter'],
  ['bottled', 'jar bottle'],
]

/** `All stirred in`: what was offered is told as done, with no amounts of its own. */
export const doneAsOffered: Rule = (sentence, last, { offered, planned }) => {
  const { has, bits, typed } = sentence
  if (bits.length > 0 || typed.tokens.length > 12 || typed.tokens.some(({ text }) => text === '?')) return null
  if (has('denial', 'hypothesis', 'how_much', 'fined')) return null
  const done = STEP_OF.filter(([concept]) => has(concept)).map(([, command]) => command)
  const step = offered.find(
    ({ command, options }) =>
      done.includes(command) && (options.sugar ?? options.measured ?? options.bottles) !== undefined,
  )
  const isTried = last.command === 'syrup' && AS_PLANNED.test(typed.text)
  if (step?.command === 'jar sweeten' && isTried) return asPlanned(step, planned)
  // `Put the old faithful in bottles`: of the jar that is named.
  return step === undefined || unknownName(sentence, step.command) !== null ? null : callReading(step, 'record')
}

/** Of two ways that were worked out it may be either: the plan of the jar, or the last one. */
function asPlanned(tried: CallRead, planned: CallRead | null): TalkReading {
  if (planned === null) return callReading(bare(tried), 'record')
  if (changedBy(tried, planned).length === 0) return callReading(planned, 'record')
  return eitherOf(tried, [tried, planned])
}

export const eitherOf = (call: CallRead, choices: readonly CallRead[]): TalkReading => ({
  kind: 'question',
  call,
  about: { kind: 'which_reading' },
  choices,
  leftOut: [],
})

/** `As planned`, which may be of what was tried since. */
const AS_PLANNED = /\b(?:as|like|to) (?:i |we )?(?:the )?plan(?:ned)?\b|\bcome (?:previsto|da piano|da programma)\b/iu

/** Without amounts: the line with those that were planned is asked with. */
const bare = ({ command, options }: CallRead): CallRead => ({ command, options: { jar: options.jar ?? '' } })

/** `Why did it curdle?`: what has gone wrong; how sweet or strong it was worked out is another question. */
function isTrouble(sentence: Sentence): boolean {
  const symptom = symptomIn(sentence)
  return symptom !== null && !/^(?:too_|weak_taste|harsh)/.test(symptom.id)
}

/** With its mark it doubts, without it agrees. */
const DOUBTS =
  /^(?:(?:oh |but |are )?(?:you )?(?:sure|certain|positive)(?: about (?:that|this))?|really|sicur[oa]|davvero)\s*\?+$/iu

export const shownAgain: Rule = (sentence) => {
  const { has, bits, typed, spans } = sentence
  const isShort = typed.tokens.filter(({ kind }) => kind === 'word').length <= 8
  if (has('how_sure') || DOUBTS.test(typed.text.trim())) return { kind: 'last', what: 'how_sure' }
  if (
    has('why') &&
    (isShort || /^(?:why|perche)$/.test(typed.tokens[0]?.text ?? '')) &&
    !has('cloud', 'bitter', 'mould', 'solid_ice') &&
    !isTrouble(sentence)
  )
    return { kind: 'last', what: 'why' }
  if (bits.length > 0 || !isShort || has('not_this_week')) return null
  if (isOnly(typed, spans, 'more')) return { kind: 'last', what: 'more' }
  return has('no') && !has('yes') && typed.tokens.length <= 3 ? { kind: 'last', what: 'let_be' } : null
}

/** `Yes`, `no, none has`: the open question of a trouble is answered, which keeps its jar and what was told. */
export const troubleAnswered: Rule = ({ has, bits, typed, spans }, last, { offered }) => {
  const isAsked = has('asking') || typed.tokens.some(({ text }) => text === '?')
  if (last.command !== 'trouble' || bits.length > 0 || typed.tokens.length > 8 || isAsked) return null
  const answer = (['yes', 'no'] as const).find((concept) =>
    spans.some((span) => span.concept === concept && span.from === 0),
  )
  const open = (option: 'yes' | 'no') =>
    offered.find(({ command, options }) => command === 'trouble' && options[option] !== last.options[option])
  const call = answer === undefined ? undefined : open(answer)
  return call === undefined ? null : callReading(call)
}
