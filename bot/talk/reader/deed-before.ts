import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'

/** Where what is told of a danger may begin. */
const JOIN = /^(?:[,;.!]|and|but|then|while|though|so|e|ed|ma|poi|mentre|pero)$/

/** A deed that was read, or that lacks an amount or its jar. */
const isDeed = (reading: TalkReading): reading is Extract<TalkReading, { kind: 'call' | 'question' }> =>
  (reading.kind === 'call' && reading.does === 'record') ||
  (reading.kind === 'question' &&
    (reading.about.kind === 'lacks' || reading.about.kind === 'which_jar') &&
    /^jar (?!start)/.test(reading.call.command))

/** How a part of a sentence is looked at. */
interface Parts {
  readonly isDangerous: (part: Sentence) => boolean
  readonly partOf: (text: string) => Sentence
  readonly read: (part: Sentence) => TalkReading
}

/**
 * What was done, told before a danger: `bottled the orange, 3 x 500 ml, my dad’s been sober for years, should he stay away`. The
 * longest part that is read as a deed and tells of no danger itself; null where there is none.
 */
export function deedBefore(
  sentence: Sentence,
  { isDangerous, partOf, read }: Parts,
): Extract<TalkReading, { kind: 'call' | 'question' }> | null {
  const { typed, spans } = sentence
  const deed = spans.find(({ concept }) => DEEDS.has(concept))
  if (deed === undefined) return null
  for (let at = typed.tokens.length - 2; at >= deed.to; at--) {
    if (!JOIN.test(typed.tokens[at]!.text) || JOIN.test(typed.tokens[at - 1]?.text ?? '')) continue
    if (wordsFrom(typed, at + 1) === '') continue
    const part = partOf(textFrom(typed, 0, at))
    if (isDangerous(part)) continue
    const reading = read(part)
    if (isDeed(reading)) return reading
  }
  return null
}
