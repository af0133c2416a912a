import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'

/** `Strained it, 900 ml, really 32 %`: no hydrometer showed that, so it is told of what was strained, once that is written down. */
export function withTrueStrength(reading: TalkReading, { has }: Pick<Sentence, 'has'>): TalkReading {
  if (reading.kind !== 'call' || reading.call.command !== 'jar strain' || !has('true_strength')) return reading
  const { strength, ...options } = reading.call.options
  if (strength === undefined || options.jar === undefined) return reading
  const { jar } = options
  return { ...reading, call: { ...reading.call, options }, next: { command: 'measure', options: { jar, strength } } }
}
