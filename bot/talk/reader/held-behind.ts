import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { standsOf } from './verdict-asked.ts'

/** Worked out of amounts: what a jar that is named beside them is, they leave out. */
const OF_AMOUNTS = /^(?:mix|blend|dilute|serving|adjust|syrup|measure)$/

/** The same, and what may be a batch of its own: only where it is told as done is it of the jar. */
const OF_BATCH = /^(?:mix|blend|dilute|serving|adjust|syrup|measure|plan|again)$/

/** Put together, poured or thinned, told as done. */
const DONE =
  /^(?:(?:i|we|ive|weve|have|just|then|so|and|ok|well|anyway|already|also|ho|abbiamo|poi|allora|e|gia|l|lo|la) )*(?:mixed|blended|stirred|combined|married|diluted|cut|watered|thinned|poured|tipped|decanted|topped|shook|mescolat[oa]|mischiat[oa]|miscelat[oa]|unit[oa]|allungat[oa]|diluit[oa]|versat[oa]|travasat[oa]|mess[oa]|aggiunt[oa])\b/u

const REFERS = /\b(?:it|this|that|everything|the (?:jar|batch|lot|liqueur)|lo|la|l|tutto|questo|questa)\b/u

/** `Is it gonna explode, kid is in the kitchen`. */
const BURSTS =
  /\b(?:explo(?:de|ding)|burst(?:ing)?|blow(?:ing)? up|go(?:es|ing)? bang|esplod\p{L}*|scoppi\p{L}*)(?!\p{L})/u

/** A jar that is to go, or not to be drunk yet. */
const isHeld = ({ stands }: TalkJar): boolean => stands !== undefined && !stands.isOpen

/** The held jar that is named without an amount of its own. */
const heldNamed = ({ bits, jars }: Sentence): TalkJar | null =>
  jarsNamed(bits, runningAmong(jars)).find(({ jar }) => isHeld(jar))?.jar ?? null

/** The held jar that the answer before was of, where the sentence names none and may be of it. */
function heldSpoken({ bits, jars, typed }: Sentence, { call, answersBehind }: Remembered): TalkJar | null {
  if (answersBehind > 0 || bits.some(({ kind }) => kind === 'plant' || kind === 'jar')) return null
  const jar = jarCalled(call?.options.jar, runningAmong(jars))
  return jar !== undefined && isHeld(jar) && REFERS.test(plainWords(typed.text)) ? jar : null
}

const isOfNoJar = ({ command, options }: CallRead, commands: RegExp): boolean =>
  options.jar === undefined && options.jars === undefined && commands.test(command)

/** Whether a reading leads on with a jar that it leaves out, or comes to nothing. */
function isPast(reading: TalkReading, isDone: boolean): boolean {
  if (reading.kind === 'lost') return true
  if (reading.kind === 'topic') return isDone
  if (reading.kind !== 'call' && reading.kind !== 'question') return false
  return isOfNoJar(reading.call, isDone ? OF_BATCH : OF_AMOUNTS)
}

/**
 * `Mixed the plum with 200 ml rum`, of a jar that is to be thrown away: what stands of it is said, and nothing is worked out of the
 * rest as if it were none of the jar’s.
 */
export function heldBehind(reading: TalkReading, sentence: Sentence, said: Remembered = NOTHING_SAID): TalkReading {
  if (!runningAmong(sentence.jars).some(isHeld)) return reading
  const isDone = DONE.test(plainWords(sentence.typed.text).trim())
  if (!isPast(reading, isDone)) return reading
  const [held, another] = runningAmong(sentence.jars).filter(isHeld)
  const isBursting = reading.kind === 'lost' && BURSTS.test(plainWords(sentence.typed.text))
  const only = isBursting && another === undefined ? held : null
  const jar = heldNamed(sentence) ?? only ?? (reading.kind === 'lost' && !isDone ? null : heldSpoken(sentence, said))
  return jar?.stands === undefined ? reading : standsOf(jar.name, jar.stands)
}
