import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import type { Sentence } from '../bits/bit.ts'
import { leftOutOf } from '../frames/left-out.ts'
import type { TalkReading } from '../frames/reading.ts'

const NONE: ReadonlySet<string> = new Set()

/** Of a jar that is known only these tell of a plant. */
const TELLS_PLANT = /^jar (?:add|take-out|start)$/

/** Long enough to have few neighbours, and no plant that is left out as it stands: `a coffee filter`. */
const isUnknown = (word: string): boolean =>
  /^\p{L}{5,}$/u.test(word) && plantSaid(saidText(word).tokens, 0, NONE) === null

/** `Half a pound of dasmons and a bottle of gin`: a word that nothing knows may be a plant with a slip. */
function mayBeMisspelt(reading: TalkReading, sentence: Sentence): boolean {
  if (reading.kind === 'topic') return leftOutOf(sentence, sentence.bits).some(isUnknown)
  if (reading.kind !== 'call' && reading.kind !== 'question') return false
  const { command, options } = reading.call
  return (options.jar === undefined || TELLS_PLANT.test(command)) && reading.leftOut.some(isUnknown)
}

/** The sentence read with slips in its plants mended, where that takes up a word that nothing knew; null where it does not. */
export function withSlips(
  reading: TalkReading,
  sentence: Sentence,
  once: (sentence: Sentence) => TalkReading,
): TalkReading | null {
  if (!mayBeMisspelt(reading, sentence)) return null
  const forgivingly = sentence.forgiving()
  if (forgivingly.bits.length <= sentence.bits.length) return null
  const forgiving = once(forgivingly)
  return /^(?:call|question|refused)$/.test(forgiving.kind) ? forgiving : null
}
