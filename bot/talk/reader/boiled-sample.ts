import type { RefusedSaid } from '../../../core/botanical/refuse/refused-in.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'

/** Refused for its heat, and for nothing that poisons. */
const isHeated = ({ id }: RefusedSaid): boolean => id === 'heated'

const BOILED = /\b(?:boil\p{L}*|evaporat\p{L}*|evaporar\p{L}*|cooked off|driven off|drove off|boll\p{L}*)/iu
const BEFORE = /^(?:before|prima)$/
const STOP = /^[.,;:!?]$/

/** The reading that `before` stands beside, with no stop between; the first that was told where none is. */
function beforeOf({ typed: { tokens } }: Sentence, [one, other]: readonly [Bit, Bit]): Bit {
  const at = tokens.findIndex(({ text }) => BEFORE.test(text))
  if (at < 0) return one
  const isBeside = ({ from, to }: Bit): boolean =>
    !tokens.slice(Math.min(to, at), Math.max(from, at)).some(({ text }) => STOP.test(text))
  const behind = [one, other].find((each) => each.from > at && isBeside(each))
  const ahead = [other, one].find((each) => each.to <= at && isBeside(each))
  return ahead ?? behind ?? one
}

/**
 * `Hydrometer said 1.021 before boiling off the alcohol and 1.060 after`: a sample was boiled so as to be measured, as laboratories do.
 * It is worked out, with how that is done safely; nothing is to be drunk of it. Null where no two readings are told.
 */
export function boiledSample(sentence: Sentence, danger: RefusedSaid | undefined): TalkReading | null {
  if (danger !== undefined && !isHeated(danger)) return null
  const { bits, typed } = sentence
  const [one, other, more] = bits.filter(({ kind }) => kind === 'gravity')
  if (one === undefined || other === undefined || more !== undefined || !BOILED.test(typed.text)) return null
  const before = beforeOf(sentence, [one, other])
  const after = before === one ? other : one
  const leftOut = bits.filter(({ kind }) => kind === 'plant' || kind === 'jar').map(({ text }) => text)
  return {
    kind: 'call',
    call: { command: 'measure', options: { before: before.text, after: after.text } },
    leftOut,
    does: 'compute',
  }
}
