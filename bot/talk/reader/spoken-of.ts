import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { WORKED_OUT } from '../memory/rule.ts'
import { isAsked, isToldNow } from './is-told.ts'

/** Only looked at: another jar that is meant is asked for again. */
const LOOKS = /^(?:jar show|jar label|jar tag|syrup|cost|keeping|adjust|trouble|calendar)$/

/** `Bottled it, 5 x 500 ml`, where there is one jar: of that one, which says so itself if it is not so far. */
function ofOnlyJar(reading: TalkReading, sentence: Sentence): TalkReading {
  if (reading.kind !== 'question' || reading.about.kind !== 'lacks' || reading.about.option !== 'jar') return reading
  const { call, leftOut } = reading
  const [only, another] = runningAmong(sentence.jars)
  const isNamed = sentence.bits.some(({ kind, role }) => (kind === 'plant' && role !== 'left_out') || kind === 'jar')
  if (only === undefined || another !== undefined || isNamed || !isToldNow(sentence, call.command)) return reading
  return { kind: 'call', call: { ...call, options: { jar: only.name, ...call.options } }, leftOut, does: 'record' }
}

/** `Will it be ready by Christmas` behind `shook the ginger`: of several jars, where none is named, the one that was spoken of last. */
function ofSpokenJar(reading: TalkReading, { bits, jars }: Sentence, { call }: Remembered): TalkReading {
  if (reading.kind !== 'question' || reading.about.kind !== 'which_jar' || !LOOKS.test(reading.call.command))
    return reading
  if (call?.options.jar === undefined || jarsNamed(bits, jars).length > 0) return reading
  if (bits.some(({ kind }) => kind === 'plant' || kind === 'jar')) return reading
  const own = jarCalled(call.options.jar, jars)
  const choice = reading.choices.find(({ options }) => own !== undefined && options.jar === own.name)
  return choice === undefined ? reading : { kind: 'call', call: choice, leftOut: reading.leftOut, does: 'compute' }
}

const REFERS =
  /\b(?:it|its|this|that|these|them|they|mine|my|the (?:jar|batch|liqueur|bottle|lot)|lo|la|li|mio|mia|questo|questa)\b/u

/** Somebody else's, or of another time. */
const OF_ANOTHER =
  /\b(?:last (?:year|time|one|batch)|years?|friend\p{L}*|neighbou?r\p{L}*|sisters?|brothers?|mums?|moms?|dads?|grans?|grannys?|aunt\p{L}*|uncles?|shop|bought|other|previous|old|usually|always|sometimes|people|amic[oa]|vicin[oa]|nonn[oa]|zi[oa]|comprat[oa]|altr[oa]|vecchi[oa])\b/u

/** `It’s cloudy`, with one jar, or one that was spoken of: that one, by its own numbers. */
function ofSickJar(reading: TalkReading, sentence: Sentence, { call }: Remembered): TalkReading {
  if (reading.kind !== 'symptom') return reading
  const { options } = reading
  const { bits, jars, typed } = sentence
  const words = wordsFrom(typed)
  const isTold = options.jar !== undefined || options.strength !== undefined || options.sweetness !== undefined
  const isOther = bits.some(({ kind, value }) => kind === 'plant' || kind === 'spirit' || kind === 'jar' || value > 0)
  if (isTold || isOther || OF_ANOTHER.test(words) || (isAsked(sentence) && !REFERS.test(words))) return reading
  const running = runningAmong(jars)
  const spoken = jarCalled(call?.options.jar, running)
  const [jar, another] = spoken === undefined ? running : [spoken]
  // What was only worked out is in no jar.
  const isPlan = call !== null && WORKED_OUT.test(call.command) && call.options.jar === undefined
  return jar === undefined || another !== undefined || isPlan
    ? reading
    : { ...reading, options: { ...options, jar: jar.name } }
}

/** With the jar that can only be meant, where none is named. */
export const ofMeantJar = (reading: TalkReading, sentence: Sentence, said: Remembered = NOTHING_SAID): TalkReading =>
  ofOnlyJar(ofSpokenJar(ofSickJar(reading, sentence, said), sentence, said), sentence)
