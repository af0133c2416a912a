import type { Bit, BitKind, Sentence } from '../bits/bit.ts'
import { jarsNamed, jarsOf, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { isAsked } from './is-told.ts'

const ARTICLE = /^(?:the|my|our|that|il|lo|la|l|i|gli|le|mio|mia)$/

/** Of a jar as it stands there, never of a plant: `how many weeks has the sloe done`. */
const SINCE = /^(?:has|had|been|did|was|were|got|ha|hanno|era|erano)$/

const AMOUNTS: ReadonlySet<BitKind> = new Set([
  'volume',
  'mass',
  'bottles',
  'strength',
  'spirit',
  'sweetness',
  'sugar',
  'bare',
])

const MEANS_A_PLAN = [
  'wish',
  'make',
  'how_much',
  'for_bottles',
  'have',
  'would_it',
  'may_i',
  'again',
  'hypothesis',
  'to_buy',
] as const

/** The one running jar that is named with an article, where nothing else is. */
function ownJar({ bits, jars, typed }: Sentence) {
  const [named, another] = jarsNamed(bits, runningAmong(jars))
  if (named === undefined || another !== undefined) return null
  return ARTICLE.test(typed.tokens[named.bit.from - 1]?.text ?? '') ? named : null
}

/** A jar that stands there is asked for by what has become of it; what its plant is like answers something else. */
function ofOwnJar(sentence: Sentence): TalkReading | null {
  const named = ownJar(sentence)
  const { bits, typed } = sentence
  const isPlain = named !== null && !bits.some((bit) => bit !== named.bit && AMOUNTS.has(bit.kind))
  if (named === null || !isPlain || !isAsked(sentence) || !typed.tokens.some(({ text }) => SINCE.test(text)))
    return null
  return { kind: 'call', call: { command: 'jar show', options: { jar: named.jar.name } }, leftOut: [], does: 'compute' }
}

/** `Raspberry’s down to two bottles`: told of bottles that there are, of which a plan would be another thing. */
function ofOwnBottles(sentence: Sentence, call: CallRead): TalkReading | null {
  const { bits, jars, has } = sentence
  const bottles = bits.find(({ kind }) => kind === 'bottles')
  const isFilled = (bit: Bit): boolean =>
    jarsOf(bit, runningAmong(jars)).some(({ stage }) => stage === 'resting' || stage === 'ready')
  const [plant, another] = bits.filter(({ kind }) => kind === 'plant' || kind === 'jar')
  if (bottles === undefined || plant === undefined || another !== undefined || !isFilled(plant)) return null
  if (isAsked(sentence) || has(...MEANS_A_PLAN) || bits.some(({ kind }) => kind === 'spirit' || kind === 'strength'))
    return null
  const [jar] = jarsOf(plant, runningAmong(jars))
  const count = String(bottles.count ?? 1)
  const of = (options: Readonly<Record<string, string>>): CallRead => ({
    command: 'bottles',
    options: { jar: jar!.name, ...options },
  })
  const choices = [of({ given: count }), of({ opened: count }), call]
  return { kind: 'question', call: choices[0]!, about: { kind: 'which_reading' }, choices, leftOut: [] }
}

/** So much of something, with its number. */
const MEASURED: ReadonlySet<BitKind> = new Set(['volume', 'mass', 'bottles', 'strength', 'sweetness'])

/** What a reading that was found by little would answer beside what was told or asked: it gives way to what it can only be, or to none. */
export function notMeant(reading: TalkReading, sentence: Sentence, byRules: TalkReading): TalkReading {
  const call = reading.kind === 'call' || reading.kind === 'question' ? reading.call : null
  if (call?.command === 'botanical' || call?.command === 'again') return ofOwnJar(sentence) ?? reading
  if (call?.command === 'plan') return ofOwnBottles(sentence, call) ?? reading
  // An amount is told: no entry takes it that only a hunch found.
  const isTold = sentence.bits.some(({ kind, text }) => MEASURED.has(kind) && /\d/.test(text)) && !isAsked(sentence)
  return reading.kind === 'topic' && reading !== byRules && isTold ? { kind: 'lost', nearest: [] } : reading
}
