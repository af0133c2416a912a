import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'

/** So much sugar is in a glug or a handful. Common practice, no source. */
const GLUG = '50 g'

/** Sugar that went in with the fruit and was not weighed; it stands in the line that is asked about. */
export function withGlug(reading: TalkReading, { bits }: Sentence): TalkReading {
  const isSugared = bits.some(({ kind, value, role }) => kind === 'sugar' && value === 0 && role !== 'left_out')
  if (reading.kind !== 'call' || !isSugared || !/^(?:plan|jar start)$/.test(reading.call.command)) return reading
  if (reading.call.options.sugar !== undefined) return reading
  const leftOut = reading.leftOut.filter(
    (word) => !/sugar|zucchero|glug|handful|splash|fistful|scoop|manciata|pugno/i.test(word),
  )
  return { ...reading, leftOut, call: { ...reading.call, options: { ...reading.call.options, sugar: GLUG } } }
}
