import type { Sentence, Surroundings } from '../bits/bit.ts'
import { jarCalled } from '../bits/jars-of.ts'
import { sentenceIn } from '../bits/sentence.ts'
import { sentenceOnce } from '../bits/sentence-once.ts'
import type { CallRead, TalkReading, VesselTaken } from '../frames/reading.ts'
import { symptomIn } from '../frames/symptoms.ts'
import type { Remembered } from '../memory/remembered.ts'
import { spiritToFill } from './fruit-by-the-jar.ts'
import { glugsMeasured } from './glug-measured.ts'
import { withGlug } from './glug-of-sugar.ts'
import { jarAnswered } from './jar-answered.ts'
import { type JarFilled, jarFilledIn, jarSizeIn, onlyWentIn, withJarFilled } from './jar-filled.ts'
import { isNotToDrink } from './not-to-drink.ts'
import { onlySpoons } from './only-spoons.ts'
import { shareCameOut, writtenShare } from './share-came-out.ts'
import { withoutStrength } from './strength-open.ts'
import { isUnmeasured, toldByVessels } from './told-by-vessels.ts'
import { vesselRighted } from './vessel-righted.ts'
import { type VesselSaid, vesselsIn, written } from './vessel-said.ts'

interface Household {
  readonly surroundings: Surroundings
  readonly said: Remembered | undefined
  readonly read: (text: string) => TalkReading
}

/** Jars that are at hand in most kitchens, ml: one of jam, and one of a litre. Common practice, no source. */
const USUAL_JARS_ML = [370, 1000] as const

/** A reading that knows by which vessels its amounts were told; a jar is not begun of them before somebody says yes. */
function withVessels(reading: TalkReading, vessels: readonly VesselTaken[], isGuessed: boolean): TalkReading {
  if (reading.kind !== 'call') return reading
  const { call, leftOut } = reading
  if (isGuessed && call.command === 'jar start')
    return { kind: 'question', call, about: { kind: 'told_or_asked' }, choices: [call], leftOut }
  return vessels.length === 0 ? reading : { ...reading, vessels }
}

/** A plan that knows by which sentence its amounts follow from a jar, whose size is said later. */
const ofJarTold = (jarTold: string, reading: TalkReading): TalkReading =>
  reading.kind === 'call' && reading.call.command === 'plan' ? { ...reading, jarTold } : reading

/** A sentence with what came out in ml, where a vessel tells it: of that its deeds are taken apart. */
export const inMl = (text: string, { isUs = false }: Surroundings): string =>
  toldByVessels(shareInMl(glugsMeasured(text)), isUs, false).text

/** With the part of a jar in ml, where its size is told. */
function shareInMl(text: string): string {
  const found = shareCameOut(text, false)
  if (found === null || found.jar === null) return text
  return `${text.slice(0, found.from)}${writtenShare(found.share, found.jar.ml)}${text.slice(found.to)}`
}

/** `Filled the jar with spirit`: told or meant of a jar, with nothing of what is in it. */
const FILLED =
  /\b(?:fill(?:ed|ing)?|top(?:ped)?|cover(?:ed)?|riempit[oa]|riempio|coperto)\b.*\b(?:jar|barattolo|vaso|vasetto|kilner|bottle)\b|\b(?:jar|barattolo|vasetto)\b.*\b(?:full|fill(?:ed)?|topped|pieno)\b/iu

/** Filled with a spirit of which nobody says how much, and with no plant, where no jar steeps that it may be of. */
function isOfNothing({ bits, jars, has, typed }: Sentence): boolean {
  const [only, another] = bits.filter(({ kind }) => kind !== 'date')
  const isSteeping = jars.some(({ stage }) => stage === 'steeping')
  return (
    only?.kind === 'spirit' &&
    another === undefined &&
    !isSteeping &&
    !has('asking') &&
    !typed.text.includes('?') &&
    FILLED.test(typed.text)
  )
}

const BEGINS = /^(?:plan|jar start)$/

/** A jar that was filled is planned or begun, and nothing is added to another. */
function readFilled(sentence: Sentence, filled: JarFilled, jarMl: number, read: Household['read']): TalkReading {
  const whole = read(withJarFilled(sentence, filled, jarMl))
  const isWhole = callIn(whole).some(({ command }) => BEGINS.test(command))
  return withGlug(isWhole ? whole : read(onlyWentIn(sentence, filled, jarMl)), sentence)
}

const callIn = (reading: TalkReading): readonly CallRead[] =>
  reading.kind === 'call' || reading.kind === 'question' ? [reading.call] : []

/** `Two mugs`: a vessel and nothing else. */
function onlyVessel(text: string, isUs: boolean): VesselSaid | null {
  const [only] = vesselsIn(text, isUs)
  const isWhole =
    only !== undefined && !only.isPlain && /^[\s.!]*$/.test(text.slice(0, only.from) + text.slice(only.to))
  return isWhole ? only : null
}

/** `Fill a jam jar`, where a plan lacks how much there is to be of it; null where it lacks something else, or a jar is not the answer. */
function jarToFill(text: string, question: Remembered['question'], isUs: boolean): TalkReading | null {
  if (question?.about.kind !== 'lacks' || question.call.command !== 'plan') return null
  const { strength, ...options } = question.call.options
  if (options.of === undefined || options.spirit !== undefined || options.bottles !== undefined) return null
  const jar = /jar|kilner|vasetto|barattolo|demijohn|fill/i.test(text) ? jarSizeIn(text) : null
  const poured = jar === null ? onlyVessel(text, isUs) : null
  const taken = jar ?? poured?.one
  if (taken === undefined) return null
  const much = poured === null ? spiritToFill(taken.ml, options.of.replace(/^[\d.,\s]+/, '')) : written(poured.ml)
  const spirit = [much, strength].filter((part) => part !== undefined).join(' ')
  const call: CallRead = { command: 'plan', options: { ...options, spirit } }
  return { kind: 'call', call, leftOut: [], does: 'compute', vessels: [taken] }
}

/** The jar that was strained last, and is not measured. */
const strainedJar = (said: Remembered | undefined, { jars }: Surroundings): string | null =>
  said === undefined || !isUnmeasured(said.step) ? null : (jarCalled(said.step?.options.jar, jars)?.name ?? null)

const measuredAs = (jar: string, measured: string): TalkReading => ({
  kind: 'call',
  call: { command: 'jar correct', options: { jar, measured } },
  does: 'record',
  leftOut: [],
})

/** `Strained it, two thirds of the jar came out`: by what the jar holds; how large it is is asked, and the straining is written down. */
function shareOut(text: string, { surroundings, said, read }: Household, isBehind: boolean): TalkReading | null {
  const found = shareCameOut(text, isBehind)
  if (found === null) return null
  const { share, jar, from, to } = found
  const put = (instead: string): TalkReading => read(`${text.slice(0, from)}${instead}${text.slice(to)}`)
  const strained = isBehind ? strainedJar(said, surroundings) : null
  if (jar !== null) {
    const much = writtenShare(share, jar.ml)
    return withVessels(strained === null ? put(much) : measuredAs(strained, much), [jar], false)
  }
  if (strained !== null) {
    const call: CallRead = { command: 'jar correct', options: { jar: strained } }
    return { kind: 'question', call, about: { kind: 'jar_size', text }, choices: [], leftOut: [] }
  }
  const reading = put('')
  return reading.kind === 'call' && reading.call.command === 'jar strain'
    ? { ...reading, jarTold: text, isJarOpen: true }
    : null
}

/**
 * How a sentence is understood whose amounts are told by what they fill: half a jar, a mug, nearly a wine bottle. Where a jar was
 * filled of which nobody said how large it is, that is asked.
 */
export function byHousehold(typed: string, { surroundings, said, read }: Household): TalkReading {
  const text = glugsMeasured(typed)
  const { isUs = false } = surroundings
  const answer = onlySpoons(text, said) ?? jarToFill(text, said?.question ?? null, isUs)
  if (answer !== null) return answer
  const open = said?.question?.about
  const jarTold = open?.kind === 'jar_size' ? open.text : (said?.jarTold ?? null)
  const size = jarTold === null ? null : jarSizeIn(text)
  const cameOut = jarTold === null ? null : shareCameOut(jarTold, true)
  const strained = cameOut === null ? null : strainedJar(said, surroundings)
  if (cameOut !== null && size !== null && strained !== null)
    return withVessels(measuredAs(strained, writtenShare(cameOut.share, size.ml)), [size], false)
  if (jarTold !== null && size !== null) {
    const sentence = sentenceOnce(jarTold, surroundings)
    const filled = jarFilledIn(sentence)
    if (filled !== null)
      return ofJarTold(jarTold, withVessels(readFilled(sentence, filled, size.ml, read), [size], true))
  }
  const asked = open?.kind === 'jar_size' && open.text !== null ? sentenceOnce(open.text, surroundings) : null
  const answered = asked === null ? null : jarAnswered(text, asked, (each) => sentenceIn(each, surroundings))
  if (answered !== null) return byHousehold(answered, { surroundings, said: undefined, read })
  const right = vesselRighted(text, said, isUs)
  if (right !== null) return withVessels(read(right.text), right.taken, false)
  const isBehind = said !== undefined && said.answersSince === 0 && isUnmeasured(said.step)
  const weak = withoutStrength(text)
  const deed = weak === null ? null : byHousehold(weak, { surroundings, said, read })
  if (deed?.kind === 'call' && deed.call.command === 'jar strain') return { ...deed, isStrengthOpen: true }
  const share = shareOut(text, { surroundings, said, read }, isBehind)
  if (share !== null) return share
  const told = toldByVessels(text, isUs, isBehind)
  if (told.isOpen) {
    const reading = read(told.text)
    return reading.kind === 'call' ? { ...reading, isUnmeasured: true } : reading
  }
  const sentence = sentenceOnce(told.text, surroundings)
  const found = jarFilledIn(sentence)
  if ((found !== null || isOfNothing(sentence)) && isNotToDrink(typed)) return read(typed)
  const filled = found !== null && symptomIn(sentence) === null ? found : null
  if (filled === null && isOfNothing(sentence)) {
    const planned = said?.worked?.call
    if (planned?.command === 'plan' && planned.options.of !== undefined) {
      const call: CallRead = { command: 'jar start', options: planned.options }
      return { kind: 'question', call, about: { kind: 'told_or_asked' }, choices: [call], leftOut: [] }
    }
    const call: CallRead = { command: 'plan', options: {} }
    return { kind: 'question', call, about: { kind: 'jar_size', text: null }, choices: [], leftOut: [] }
  }
  if (filled === null) return withVessels(read(told.text), told.taken, false)
  if (filled.jar !== null) {
    const reading = readFilled(sentence, filled, filled.jar.ml, read)
    return ofJarTold(told.text, withVessels(reading, [...told.taken, filled.jar], true))
  }
  const choices = USUAL_JARS_ML.flatMap((ml) => callIn(readFilled(sentence, filled, ml, read)))
  const [call] = choices
  if (call === undefined) return read(told.text)
  return { kind: 'question', call, about: { kind: 'jar_size', text: told.text }, choices, leftOut: [] }
}
