import type { Sentence } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'

/** Only looked at: another jar that is meant is asked for again. */
const LOOKS = /^(?:jar show|jar label|jar tag|syrup|cost|keeping|adjust|trouble|calendar)$/

/** `Will it be ready by Christmas` behind `shook the ginger`: of several jars, where none is named, the one that was spoken of last. */
export function ofSpokenJar(reading: TalkReading, { bits, jars }: Sentence, { call }: Remembered): TalkReading {
  if (reading.kind !== 'question' || reading.about.kind !== 'which_jar' || !LOOKS.test(reading.call.command))
    return reading
  const last = call?.options.jar?.toLowerCase()
  if (last === undefined || jarsNamed(bits, jars).length > 0) return reading
  if (bits.some(({ kind }) => kind === 'plant' || kind === 'jar')) return reading
  const own = jars.find(({ name, id }) => name.toLowerCase() === last || `#${id}` === last)
  const choice = reading.choices.find(({ options }) => own !== undefined && options.jar === own.name)
  return choice === undefined ? reading : { kind: 'call', call: choice, leftOut: reading.leftOut, does: 'compute' }
}
