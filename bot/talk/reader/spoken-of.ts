import type { Sentence } from '../bits/bit.ts'
import { isOver, jarsNamed } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { isToldNow } from './is-told.ts'

/** Only looked at: another jar that is meant is asked for again. */
const LOOKS = /^(?:jar show|jar label|jar tag|syrup|cost|keeping|adjust|trouble|calendar)$/

/** `Bottled it, 5 x 500 ml`, where there is one jar: of that one, which says so itself if it is not so far. */
function ofOnlyJar(reading: TalkReading, sentence: Sentence): TalkReading {
  if (reading.kind !== 'question' || reading.about.kind !== 'lacks' || reading.about.option !== 'jar') return reading
  const { call, leftOut } = reading
  const [only, another] = sentence.jars.filter((jar) => !isOver(jar))
  const isNamed = sentence.bits.some(({ kind, role }) => (kind === 'plant' && role !== 'left_out') || kind === 'jar')
  if (only === undefined || another !== undefined || isNamed || !isToldNow(sentence, call.command)) return reading
  return { kind: 'call', call: { ...call, options: { jar: only.name, ...call.options } }, leftOut, does: 'record' }
}

/** `Will it be ready by Christmas` behind `shook the ginger`: of several jars, where none is named, the one that was spoken of last. */
function ofSpokenJar(reading: TalkReading, { bits, jars }: Sentence, { call }: Remembered): TalkReading {
  if (reading.kind !== 'question' || reading.about.kind !== 'which_jar' || !LOOKS.test(reading.call.command))
    return reading
  const last = call?.options.jar?.toLowerCase()
  if (last === undefined || jarsNamed(bits, jars).length > 0) return reading
  if (bits.some(({ kind }) => kind === 'plant' || kind === 'jar')) return reading
  const own = jars.find(({ name, id }) => name.toLowerCase() === last || `#${id}` === last)
  const choice = reading.choices.find(({ options }) => own !== undefined && options.jar === own.name)
  return choice === undefined ? reading : { kind: 'call', call: choice, leftOut: reading.leftOut, does: 'compute' }
}

/** With the jar that can only be meant, where none is named. */
export const ofMeantJar = (reading: TalkReading, sentence: Sentence, said: Remembered = NOTHING_SAID): TalkReading =>
  ofOnlyJar(ofSpokenJar(reading, sentence, said), sentence)
