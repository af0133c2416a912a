import { type Sign, signText } from '../../../core/trouble/signs.ts'
import type { Sentence } from '../bits/bit.ts'
import { unknownName } from '../bits/unknown-name.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { symptomIn } from '../frames/symptoms.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { isSameCall, withOption } from './change-call.ts'
import type { Remembered } from './remembered.ts'
import { callReading, eitherOf, type Rule } from './rule.ts'
import { askedOf, otherSign } from './sign-told.ts'
import { undoAsked, undoOf } from './undo-rule.ts'
import { whichOffered } from './ways-offered.ts'

/** Whether hardly anything else is said. */
export const isOnly = ({ tokens }: Sentence['typed'], spans: Sentence['spans'], concept: Concept): boolean => {
  const words = tokens.flatMap(({ kind }, at) => (kind === 'word' ? [at] : []))
  const isWithin = (at: number): boolean =>
    spans.some((span) => (span.concept === concept || span.concept === 'greeting') && span.from <= at && at < span.to)
  return words.length > 0 && words.every(isWithin) && spans.some((span) => span.concept === concept)
}

/** What an answer offers that is done by saying that it was. */
export const DONE = /^jar (?:sweeten|strain|filter|shake|bottle)$/

/** What takes something back, ends it, or is seen by others is never meant by a yes, which is no rating either, nor that a danger was nothing. */
const NEVER_BY_YES = /undo|empty|discard|forget|share|taste/

/** A yes to what was asked of a step that may be a mistake: nothing else is recorded by it. */
function doubted({ step, doubt }: Remembered, isYes: boolean, jars: Sentence['jars']): TalkReading | null {
  const jar = step?.options.jar
  if (doubt === null || step === null || jar === undefined) return null
  if (doubt === 'meant') return isYes ? { kind: 'last', what: 'let_be' } : null
  if (doubt === 'undo' && isYes) return callReading(undoOf(jar), 'record')
  return undoAsked(step, jars.find(({ id }) => `#${id}` === jar) ?? { name: jar })
}

/** Heard, rather than agreed: nothing is written down by it. */
const NOD = /^(?:ok|okay|okey|k|right|great|good|perfect|perfetto|va bene|giusto)\b[ .!]*$/i

/** Each line once. */
const different = (calls: readonly CallRead[]): readonly CallRead[] =>
  calls.filter((call, at) => calls.findIndex((each) => isSameCall(each, call)) === at)

const BEGUN = /^jar start$/

export const agreed: Rule = ({ has, bits, typed, spans, jars }, last, said) => {
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
    // What was only measured in between keeps its job.
    const kept = last.command === 'measure' ? said.planned : null
    const step = offered.find(({ command }) => DONE.test(command)) ?? kept ?? undefined
    return step === undefined ? null : doneStep(step)
  }
  const [first, ...others] = different(
    offered.filter(({ command, options }) => !NEVER_BY_YES.test(command) && options.was === undefined),
  )
  if (!isYes || first === undefined) return null
  // `Yes` to what was only told as done says that it is so, and undoes nothing.
  if (others.length > 0 && said.question === null && BEGUN.test(last.command))
    return { kind: 'small_talk', key: 'right' }
  if (others.length > 0) return WHICH.test(typed.text.trim()) ? whichOffered(last, [first, ...others]) : null
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
  ['tasted', 'jar taste'],
]

/** The commands of the deeds that are told. */
export const deedsTold = ({ has }: Pick<Sentence, 'has'>): readonly string[] =>
  STEP_OF.filter(([concept]) => has(concept)).map(([, command]) => command)

/** `All stirred in`: what was offered is told as done, with no amounts of its own. */
export const doneAsOffered: Rule = (sentence, last, { offered, planned }) => {
  const { has, bits, typed } = sentence
  if (bits.length > 0 || typed.tokens.length > 12 || typed.tokens.some(({ text }) => text === '?')) return null
  if (has('denial', 'hypothesis', 'how_much', 'fined')) return null
  const done = deedsTold(sentence)
  const step = offered.find(
    ({ command, options }) =>
      done.includes(command) && (options.sugar ?? options.measured ?? options.bottles) !== undefined,
  )
  const isTried = last.command === 'syrup' && AS_PLANNED.test(typed.text)
  if (step?.command === 'jar sweeten' && isTried) return asPlanned(step, planned)
  // `Put the old faithful in bottles`: of the jar that is named.
  return step === undefined || unknownName(sentence, step.command) !== null ? null : doneStep(step)
}

/** What was offered, done; how many bottles that is was not counted by anybody. */
const doneStep = (step: CallRead): TalkReading => ({
  kind: 'call',
  call: step,
  does: 'record',
  leftOut: [],
  ...(step.command === 'jar bottle' && { isBottlesTaken: true }),
})

/** Of two ways that were worked out it may be either: the plan of the jar, or the last one. */
function asPlanned(tried: CallRead, planned: CallRead | null): TalkReading {
  if (planned === null) return callReading(bare(tried), 'record')
  if (isSameCall(tried, planned)) return callReading(planned, 'record')
  return eitherOf(tried, [tried, planned])
}

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

/** The same trouble, with a sign that was told unasked. */
function withSign(last: CallRead, answer: 'yes' | 'no', sign: Sign): CallRead {
  const before = last.options[answer]
  const said = signText(sign)
  if (before?.split(' + ').includes(said)) return last
  return withOption(last, answer, before === undefined ? said : `${before} + ${said}`)
}

/** `Yes`, `no, none has`: the open question of a trouble is answered, which keeps its jar and what was told. */
export const troubleAnswered: Rule = ({ has, bits, typed, spans }, last, { offered, answersBehind }) => {
  const isAsked = has('asking') || typed.tokens.some(({ text }) => text === '?')
  if (last.command !== 'trouble' || bits.length > 0 || typed.tokens.length > 8 || isAsked) return null
  const answer = (['yes', 'no'] as const).find((concept) =>
    spans.some((span) => span.concept === concept && span.from === 0),
  )
  const open = (option: 'yes' | 'no') =>
    offered.find(({ command, options }) => command === 'trouble' && options[option] !== last.options[option])
  if (answer === undefined) return null
  const call = open(answer)
  const told = otherSign(typed.text, askedOf(last.options[answer], call?.options[answer]))
  if (told !== null) return callReading(call === undefined ? last : withSign(last, answer, told))
  // Behind other answers it may be one to those: what was asked of the trouble is shown once more.
  return call === undefined ? null : callReading(answersBehind > 0 ? last : call)
}
