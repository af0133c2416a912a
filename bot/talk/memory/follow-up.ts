import type { Sentence } from '../bits/bit.ts'
import { frames } from '../frames/frames.ts'
import { prices } from '../frames/price-slots.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { reminderFills } from '../frames/reminder-slots.ts'
import { answered } from './answer-question.ts'
import { asStarted } from './as-started.ts'
import { begun } from './begun.ts'
import { toldRight } from './correct-entry.ts'
import { refusedMended } from './correct-refused.ts'
import { correctedStep } from './correct-step.ts'
import { costed } from './cost-rule.ts'
import { earlier } from './earlier.ts'
import { gathered, moreGathered } from './gathered.ts'
import { glassesOf } from './glass-rule.ts'
import { halfWords } from './half-words.ts'
import { lookedBack, OF_RECIPE } from './look-back.ts'
import { measuredSince } from './measured-since.ts'
import { mendAsked } from './mend-asked.ts'
import { ofDeclined } from './of-declined.ts'
import { ofTheAnswer } from './of-the-answer.ts'
import { ofOtherJar } from './other-jar.ts'
import { otherKind } from './other-kind.ts'
import { isNumbered, wayChosen } from './place-said.ts'
import { otherPlants, readyBy, shopped, weighedAnew } from './plan-rules.ts'
import type { Remembered } from './remembered.ts'
import { changedOf, OF_JAR, RECORDED, type Rule, setTo, tellsOfBottles } from './rule.ts'
import { explained, inMeasures, inOtherMeasures, ofWhatWasSaid, otherGlass, targetAtLength } from './said-at-length.ts'
import { sameOfOther } from './same-of-other.ts'
import { shoppingFor } from './shopping-rules.ts'
import { agreed, doneAsOffered, isOnly, shownAgain, troubleAnswered } from './step-rules.ts'
import { stillSo } from './still-so.ts'
import { styled } from './taste-rules.ts'
import { troubleJar } from './trouble-jar.ts'
import { undone } from './undo-rule.ts'
import { wasSaid } from './was-said.ts'
import { weighsUnknown } from './weighs-unknown.ts'
import { wishOfNothing } from './wish-of-nothing.ts'

const target: Rule = ({ bits, typed, has, jars }, last) => {
  if (isNumbered({ typed })) return null
  // However many words a number takes: `and for two and a half litres?`.
  const isWithin = (at: number): boolean => bits.some(({ from, to }) => from < at && at < to)
  const isShort = typed.tokens.filter(({ kind }, at) => kind === 'word' && !isWithin(at)).length <= 6
  const isWished = bits.every(({ kind }) => kind === 'strength' || kind === 'sweetness' || kind === 'bottles')
  if (
    bits.length === 0 ||
    has('how_much', 'how_long', 'freezes', 'units_of_alcohol') ||
    !(bits.length === 1 ? isShort : isWished)
  )
    return null
  let reading: TalkReading | null = null
  for (const bit of bits) {
    const call = reading?.kind === 'call' ? reading.call : changedOf(last, jars)
    const next = setTo(bit, call, bits.length === 1)
    if (next === null) return null
    reading = next
  }
  return reading
}

const RULES: readonly Rule[] = [
  ofTheAnswer,
  troubleAnswered,
  troubleJar,
  explained,
  glassesOf,
  otherGlass,
  otherKind,
  ofOtherJar,
  sameOfOther,
  stillSo,
  correctedStep,
  measuredSince,
  doneAsOffered,
  wasSaid,
  ...OF_RECIPE,
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

/** Settings, by the frames that hear of them. */
const SET: ReadonlySet<string> = new Set(frames.flatMap(({ command, does }) => (does === 'set' ? [command] : [])))

const AFTER_STEP: readonly Rule[] = [
  ofTheAnswer,
  ofOtherJar,
  sameOfOther,
  stillSo,
  correctedStep,
  measuredSince,
  doneAsOffered,
  begun,
  agreed,
  inMeasures,
  shownAgain,
]

const isOfStrengthAlone = ({ command, options }: CallRead): boolean =>
  command === 'mix' && Object.keys(options).length === 1 && options.spirit?.includes('+') === false

/** So many amounts and things make a new question, whatever else is said. */
const NEW = 4

/** What a sentence means after what was said before; null where it stands by itself. Nothing is edited: a call is changed, and run again. */
export function followUp(sentence: Sentence, said: Remembered): TalkReading | null {
  // A yes erases nothing: the line that does is said once more.
  if (said.onlyTyped !== null && isOnly(sentence.typed, sentence.spans, 'yes')) {
    return { kind: 'only_typed', call: said.onlyTyped }
  }
  const right = refusedMended(sentence, said) ?? toldRight(sentence, said)
  if (right !== null) return right
  const answer =
    mendAsked(sentence, said) ??
    asStarted(sentence, said) ??
    (said.question === null ? wayChosen(sentence, said.call, said.offered) : null) ??
    earlier(sentence, said) ??
    shoppingFor(sentence, said) ??
    moreGathered(sentence, said) ??
    answered(sentence, said.question) ??
    ofDeclined(sentence, said) ??
    gathered(sentence, said)
  if (answer !== null) return answer
  // `The lab says 32 %` is told of what there is, and no wish.
  if (sentence.has('true_strength') && sentence.bits.some(({ kind }) => kind === 'strength')) return null
  // `At half past seven` is no half of a recipe.
  if (sentence.has('remind') && reminderFills.clock(sentence, 'reminders') !== null) return null
  const { call } = said
  const undo = call !== null && ofOtherJar(sentence, call, said) !== null ? null : undone(sentence, said)
  if (undo !== null) return undo
  if (call === null) return lookedBack(sentence, said) ?? wishOfNothing(sentence) ?? halfWords(sentence, said)
  // However many prices are told with it.
  const cost = costed(sentence, call, said)
  if (cost !== null) return cost
  // `Gin is $18 a bottle`: no recipe is changed by what things cost.
  if (sentence.has('price_for') && prices(sentence, 'cost') !== null) return null
  if (weighsUnknown(sentence)) return null
  const amounts = sentence.bits.filter(({ kind }) => kind !== 'date').length
  if (amounts >= NEW && !sentence.has('not_so', 'instead')) return null
  // `Does 30 % freeze` is of no recipe of its own.
  const before = isOfStrengthAlone(call) ? lookedBack(sentence, said) : null
  if (before !== null) return before
  const isRecorded = RECORDED.test(call.command) || SET.has(call.command) || tellsOfBottles(call)
  const isChangeable = !isRecorded || OF_JAR.test(call.command)
  for (const rule of isChangeable ? RULES : AFTER_STEP) {
    const reading = rule(sentence, call, said)
    if (reading !== null) return reading
  }
  return lookedBack(sentence, said) ?? wishOfNothing(sentence) ?? halfWords(sentence, said)
}
