import { isRefused } from '../../../core/domain-error.ts'
import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import { dayFromIso, daysBetween } from '../../../core/quantity/time/calendar-day.ts'
import { parseDate } from '../../../core/quantity/time/parse-date.ts'
import type { Bit, Sentence, TalkJar } from '../bits/bit.ts'
import { jarsNamed, jarsOf, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from './remembered.ts'
import { callReading, digitsOf, numbersOf } from './rule.ts'

/** That something was told or written wrongly. */
const WRONG =
  /^(?:correct(?:ion)? (?!amount)|correggi\b|correzione\b)|\b(?:was|were|is|got|put|wrote|typed|told you|said) (?:\S+ ){0,3}wrong\b|\bi (?:miscounted|mistyped|misread|made a mistake)\b|\b(?:ho|abbiamo) (?:\S+ )?(?:scritto male|sbagliato|contato male)\b|\bera sbagliat[oa]\b/

/** That it is told of what went in. */
const WENT_IN = /\b(?:was|were|had|put|used|added|ho messo|abbiamo messo|ho usato|aveva|erano|era|messo|messi)\b/

/** `It should be 4 jalapeños not 2`: of what was written down, where another number is set against it. */
const SHOULD =
  /\b(?:should|shouldve|ought to) (?:have )?(?:be|been|say|read)\b|\b(?:dov(?:eva|evano|rebbe|rebbero)) essere\b/

/** A wish, not what was. */
const WISHED = /\b(?:should i|can i|could i|want|would|voglio|vorrei|posso|devo)\b|\?/

const LONGEST = 20

/** The numbers that hold: those before `not`, or all where nothing is set against them. */
function holding(sentence: Sentence): { readonly numbers: readonly Bit[]; readonly isContrast: boolean } {
  const { tokens } = sentence.typed
  const numbers = numbersOf(sentence)
  const not = tokens.findIndex(({ text }, at) => at > 0 && /^(?:not|non)$/.test(text))
  const before = numbers.filter(({ to }) => to <= not)
  // `Not a litre` is no number for the bits, but one of a measure all the same.
  const isContrast = before.length > 0 && tokens.length > not + 1
  return { numbers: isContrast ? before : numbers, isContrast }
}

/** The jar whose start is told of: by its name, by what is in it, as the one that was started last, or the only one. */
function jarMeant({ bits, jars }: Sentence, { step }: Remembered): TalkJar | null {
  const running = runningAmong(jars)
  const named = [...new Set(jarsNamed(bits, running).map(({ jar }) => jar))]
  if (named.length > 0) return named.length === 1 ? named[0]! : null
  const [plant] = bits.filter(({ kind }) => kind === 'plant')
  if (plant !== undefined) {
    const [jar, second] = jarsOf(plant, running)
    return second === undefined ? (jar ?? null) : null
  }
  const last = step?.command === 'jar start' ? step.options.name : undefined
  const [only, another] = running
  return running.find(({ name }) => name === last) ?? (another === undefined ? (only ?? null) : null)
}

/** The plant as it is called, else as the jar is. */
function ofText({ bits }: Sentence, number: Bit, jar: TalkJar): string | null {
  const plants = bits.filter(({ kind, ids }) => kind === 'plant' && ids?.some((id) => jar.plants.includes(id)) === true)
  const plant = plants.find(({ with: place }) => place !== undefined) ?? plants[0]
  if (jar.plants.length !== 1 || plant === undefined) return null
  return `${number.text} ${plant.text.toLowerCase()}`
}

/** Whether a number that does not hold stands in what was typed of the plants that went in. */
function isOfStart(sentence: Sentence, holding: readonly Bit[], jar: TalkJar): boolean {
  const of = jar.told()[0]?.typed.find(([option]) => option === 'of')?.[1] ?? ''
  const wrong = numbersOf(sentence).filter((bit) => !holding.includes(bit))
  return wrong.length === 0 || wrong.some((bit) => of.split(/[^\d.,]+/).includes(digitsOf(bit)))
}

function spiritText({ bits }: Sentence, number: Bit, { step }: Remembered): string {
  const said = bits.find(({ kind }) => kind === 'strength')
  const was = step?.command === 'jar start' ? /\d+(?:[.,]\d+)?\s*%/.exec(step.options.spirit ?? '')?.[0] : undefined
  return [number.text, said?.text ?? was].filter((part) => part !== undefined).join(' ')
}

/** Whether a day that is told, where one is, is this one, in ISO form. */
export function isDayOf({ bits, today }: Sentence, day: string): boolean {
  const told = bits.find(({ kind }) => kind === 'date')
  if (told === undefined) return true
  const setting = { today, country: null }
  if (isRefused(() => parseDate(told.text, setting, 'past'))) return false
  return daysBetween(parseDate(told.text, setting, 'past'), dayFromIso(day)) === 0
}

/**
 * `Correct limoncello, 9 lemons not 10`, `ieri ho messo 9 limoni non 10`: what a jar was started with is put right. What is set against
 * another number, or is told of as wrong, is no addition. Asked first where the day that is told is not that of the start.
 */
export function correctedStart(sentence: Sentence, said: Remembered): TalkReading | null {
  const { typed, has, bits } = sentence
  const words = wordsFrom(typed)
  const { numbers, isContrast } = holding(sentence)
  const isWrong = WRONG.test(words)
  if (!isWrong && !(isContrast && (WENT_IN.test(words) || SHOULD.test(words)))) return null
  if (has('asking') || WISHED.test(words) || typed.tokens.length > LONGEST) return null
  // After a plan a number without a jar's name is the plan's.
  const isOfPlan = said.call !== null && !said.call.command.startsWith('jar ')
  if (isOfPlan && !bits.some(({ kind }) => kind === 'jar' || kind === 'date')) return null
  const amounts = numbers.filter(({ kind }) => kind !== 'strength')
  const [number, another] = amounts
  const jar = jarMeant(sentence, said)
  if (number === undefined || another !== undefined || jar === null) return null
  const isSaid = bits.some(({ kind }) => kind === 'spirit')
  const isStarted = said.step?.command === 'jar start' && bits.some(({ kind }) => kind === 'strength')
  // `500 g sugar not 510`: of no plant.
  if (number.role === 'of_sugar' || number.role === 'of_water') return null
  // What was measured later is no spirit that was poured.
  const isSpirit = number.kind === 'volume' && (isSaid || isStarted)
  const isCount = number.kind === 'bare' || number.kind === 'mass'
  const of = isCount ? ofText(sentence, number, jar) : null
  if (of === null && !isSpirit) return null
  // `The orange was at 82 not 84`: of what was read later.
  if (isContrast && isCount && number.role !== 'of_plant' && !isOfStart(sentence, numbers, jar)) return null
  const amount = of === null ? { spirit: spiritText(sentence, number, said) } : { of }
  const call: CallRead = { command: 'jar correct', options: { jar: jar.name, entry: '1', ...amount } }
  if (isDayOf(sentence, jar.startedOn)) return callReading(call, 'record')
  return { kind: 'question', call, about: { kind: 'told_or_asked' }, choices: [call], leftOut: [] }
}
