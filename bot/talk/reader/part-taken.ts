import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { withTrueStrength } from './true-strength.ts'

/** `Took half the peel out`, `tolto metà delle bucce`: some of it, of a plant and no liquid. */
const PART_OUT =
  /(?<!\p{L})(?:took|take|taken|taking|fished|pulled|lifted|removed|remove|scooped|picked|got|tolt[oaie]|lev[ao]t[oaie]|tirat[oaie])(?: out)? (?:(?:about|just|only|out|circa|solo) )*(half|some|a few|part|most|a third|a quarter|one|two|three|four|\d+|met[aà]|alcun[ie]|qualche|parte|un po|due|tre)(?: (?:of|di|de[li]|della|delle|the|its|my))* (?!\d|ml\b|cl\b|l\b|litres?\b|glass|cup|bottle|shot|hour|day|week|month|ore\b|giorn|bicchier)/iu

/** Of a plant of which some was lifted out nothing is strained; that it was some of it is handed on to the command, which says what to do. */
export function partTaken(reading: TalkReading, sentence: Sentence): TalkReading {
  const { typed, bits } = sentence
  if (reading.kind !== 'call' || reading.does !== 'record') return reading
  const { command, options } = reading.call
  if (command !== 'jar strain' && command !== 'jar take-out') return reading
  const told = withTrueStrength(reading, sentence)
  if (told !== reading) return told
  // How much came out is told with it.
  if (/^\d/.test(options.of ?? '')) return reading
  const said = PART_OUT.exec(typed.text)
  const plant = options.of ?? bits.find(({ kind }) => kind === 'plant')?.text
  if (said === null || plant === undefined || options.measured !== undefined) return reading
  const of = `${said[1]} ${plant}`.toLowerCase()
  return { ...reading, call: { command: 'jar take-out', options: { ...(options.jar && { jar: options.jar }), of } } }
}
