import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { frames } from '../frames/frames.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { answered } from './answer-question.ts'
import { replaced, scaled, strengthened, sweetened, takes, withOption } from './change-call.ts'
import { correctedStep } from './correct-step.ts'
import { gathered } from './gathered.ts'
import { glassesOf } from './glass-rule.ts'
import { ofOtherJar } from './other-jar.ts'
import {
  bottled,
  otherPlants,
  otherSpirit,
  readyBy,
  shopped,
  spiritInstead,
  swapped,
  weighedAnew,
  withoutPlant,
} from './plan-rules.ts'
import type { Remembered } from './remembered.ts'
import { callReading, changedOf, digitsOf, isAmountBit, numbersOf, OF_JAR, type Rule, setTo } from './rule.ts'
import {
  disliked,
  explained,
  inMeasures,
  inOtherMeasures,
  ofWhatWasSaid,
  otherGlass,
  sameWith,
  targetAtLength,
} from './said-at-length.ts'
import { agreed, begun, doneAsOffered, shownAgain, troubleAnswered } from './step-rules.ts'
import { sugarShare } from './sugar-share.ts'
import { otherSweetener } from './sweetener-rule.ts'
import { undone } from './undo-rule.ts'

/** `12 lemons not 10`, `no, 700 not 750`, `28 instead of 30`. */
const corrected: Rule = (sentence, last) => {
  const { typed, has } = sentence
  const numbers = numbersOf(sentence)
  const not = typed.tokens.findIndex(({ text }) => text === 'not' || text === 'non')
  const of = typed.tokens.findIndex(
    ({ text }, at) =>
      (text === 'of' && typed.tokens[at - 1]?.text === 'instead') ||
      (text === 'than' && typed.tokens[at - 1]?.text === 'rather'),
  )
  const mark = not > 0 ? not : of
  if (mark !== -1 && numbers.length === 2) {
    const right = numbers.find(({ to }) => to <= mark) ?? numbers.findLast(({ from }) => from > mark)
    const wrong = numbers.find((bit) => bit !== right)
    if (right?.kind === 'strength' && wrong !== undefined && takes(changedOf(last).command, 'to-strength'))
      return setTo(right, changedOf(last), true)
    if (right?.kind === 'volume' && wrong !== undefined) return setTo(right, changedOf(last), true)
    const changed = right === undefined || wrong === undefined ? null : replaced(last, digitsOf(wrong), digitsOf(right))
    return changed === null ? null : callReading(changed)
  }
  const [only, another] = numbers
  if (only === undefined || another !== undefined || !has('instead', 'not_so')) return null
  return setTo(only, changedOf(last), true)
}

/** Nothing of it is in a jar yet. */
const WORKED_OUT = /^(?:plan|syrup|again|mix|dilute)$/

const tasteChanged: Rule = (sentence, last) => {
  const { has } = sentence
  const call = changedOf(last)
  const isSlight = has('slightly')
  let changed: CallRead | null = null
  // `Too strong` of what was only worked out is a wish; of a jar it may be trouble.
  const isOfTarget = sentence.bits.every(({ kind }) => kind === 'strength' || kind === 'sweetness')
  const isWorkedOut = WORKED_OUT.test(last.command) && isOfTarget && sentence.bits.length <= 1
  const says = (...concepts: readonly Concept[]): boolean => isWorkedOut && has(...concepts)
  const [isSweeter, isDrier] = [has('sweeter') || says('too_dry'), has('drier') || says('too_sweet')]
  const [isStronger, isWeaker] = [has('stronger') || says('too_weak'), has('weaker') || says('too_strong')]
  if (takes(call.command, 'to-sweetness') && (isDrier || isSweeter)) changed = sweetened(call, isSweeter, isSlight)
  if (takes(call.command, 'to-strength') && (isStronger || isWeaker))
    changed = strengthened(changed ?? call, isStronger, isSlight)
  if (changed === null) return null
  // A step in place of a number that is said would be a guess.
  if (sentence.bits.some(({ kind, value }) => kind === 'mass' && value > 0)) return null
  // A target that is said with it goes before the step.
  const target = sentence.bits.find(({ kind }) => kind === 'strength' || kind === 'sweetness')
  return target === undefined ? callReading(changed) : (setTo(target, changed, false) ?? callReading(changed))
}

const styled: Rule = (sentence, last) => {
  const call = changedOf(last)
  if (!takes(call.command, 'to-sweetness') || sentence.bits.some(isAmountBit)) return null
  const style = sentence.has('wish_dry')
    ? 'dry'
    : sentence.has('wish_medium')
      ? 'everyday'
      : sentence.has('wish_rich')
        ? 'rich'
        : null
  return style === null || sentence.typed.tokens.length > 7
    ? null
    : callReading(withOption(call, 'to-sweetness', style))
}

const PARTS: readonly (readonly [RegExp, number])[] = [
  [/\b(?:two|2) thirds\b|\bdue terzi\b/, 2 / 3],
  [/\b(?:three|3) quarters\b|\btre quarti\b/, 0.75],
  [/\b(?:a|one) third\b|\bun terzo\b/, 1 / 3],
  [/\b(?:a|one) quarter\b|\bun quarto\b/, 0.25],
]

const resized: Rule = ({ has, bits, typed }, last) => {
  if (bits.length > 0 && !bits.every(({ kind }) => kind === 'bare')) return null
  const words = wordsFrom(typed)
  const part = PARTS.find(([pattern]) => pattern.test(words))?.[1]
  const factor = part ?? (has('twice') ? 2 : has('thrice') ? 3 : has('halve') ? 0.5 : null)
  const changed = factor === null ? null : scaled(last, factor)
  return changed === null ? null : callReading(changed)
}

const target: Rule = ({ bits, typed, has }, last) => {
  const isShort = typed.tokens.filter(({ kind }) => kind === 'word').length <= 6
  const isWished = bits.every(({ kind }) => kind === 'strength' || kind === 'sweetness' || kind === 'bottles')
  if (bits.length === 0 || has('how_much', 'how_long') || !(bits.length === 1 ? isShort : isWished)) return null
  let reading: TalkReading | null = null
  for (const bit of bits) {
    const call = reading?.kind === 'call' ? reading.call : changedOf(last)
    const next = setTo(bit, call, bits.length === 1)
    if (next === null) return null
    reading = next
  }
  return reading
}

const RULES: readonly Rule[] = [
  troubleAnswered,
  explained,
  glassesOf,
  otherGlass,
  ofOtherJar,
  correctedStep,
  doneAsOffered,
  sameWith,
  disliked,
  swapped,
  spiritInstead,
  corrected,
  withoutPlant,
  sugarShare,
  tasteChanged,
  resized,
  bottled,
  otherSpirit,
  otherSweetener,
  begun,
  shopped,
  inMeasures,
  readyBy,
  otherPlants,
  weighedAnew,
  styled,
  agreed,
  target,
  targetAtLength,
  inOtherMeasures,
  shownAgain,
  ofWhatWasSaid,
]

/** What was recorded is not changed by a word, but undone, or answered with what comes next. */
const RECORDED = /^jar (?!list|tag|label)/

/** Settings, by the frames that hear of them. */
const SET: ReadonlySet<string> = new Set(frames.flatMap(({ command, does }) => (does === 'set' ? [command] : [])))

const AFTER_STEP: readonly Rule[] = [ofOtherJar, correctedStep, doneAsOffered, begun, agreed, inMeasures, shownAgain]

/** So many amounts and things make a new question, whatever else is said. */
const NEW = 4

/** What a sentence means after what was said before; null where it stands by itself. Nothing is edited: a call is changed, and run again. */
export function followUp(sentence: Sentence, said: Remembered): TalkReading | null {
  const answer = answered(sentence, said.question) ?? gathered(sentence, said)
  if (answer !== null) return answer
  const { call } = said
  const undo = call !== null && ofOtherJar(sentence, call, said) !== null ? null : undone(sentence, said)
  if (undo !== null) return undo
  if (call === null) return null
  const amounts = sentence.bits.filter(({ kind }) => kind !== 'date').length
  if (amounts >= NEW && !sentence.has('not_so', 'instead')) return null
  const isRecorded = RECORDED.test(call.command) || SET.has(call.command)
  const isChangeable = !isRecorded || OF_JAR.test(call.command)
  for (const rule of isChangeable ? RULES : AFTER_STEP) {
    const reading = rule(sentence, call, said)
    if (reading !== null) return reading
  }
  return null
}
