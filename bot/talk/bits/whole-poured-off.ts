import type { ConceptSpan } from '../lexicon/concepts.ts'
import { jarsOf, runningAmong } from './jars-of.ts'
import type { Told } from './told-of-part.ts'

const POURED = /^(?:poured|pour|tipped|drew|drawn|siphoned|syphoned|decanted|took)$/
const SOME =
  /^(?:some|half|thirds?|quarters?|bit|little|part|most|of|any|top|enough|few|first|cups?|glass(?:es)?|pints?|lees|sediment|clear)$/
const ENDS = /^[,.:;]$/
/** How many words tell what was poured off: `the rest of` is no more than part of it. */
const MOST_WORDS = 4

/** `Poured off the sloe, near enough 800 ml`: all of what is poured off, no amount of it. */
function isWhole({ typed: { tokens }, bits }: Told, { from, to }: ConceptSpan): boolean {
  if (!POURED.test(tokens[from]?.text ?? '')) return false
  const off = tokens.findIndex(({ text }, at) => at > from && at < to && text === 'off')
  if (off === -1) return false
  const begin = off === from + 1 ? off + 1 : from + 1
  const behind = tokens.slice(begin, off === from + 1 ? begin + MOST_WORDS : off)
  const end = behind.findIndex(({ text }) => ENDS.test(text))
  const object = end === -1 ? behind : behind.slice(0, end)
  const isMeasured = bits.some(
    (bit) =>
      (bit.kind === 'volume' || bit.kind === 'mass' || bit.kind === 'bare') &&
      bit.from >= begin &&
      bit.from < begin + object.length,
  )
  return object.length > 0 && !isMeasured && !object.some(({ text }) => SOME.test(text))
}

/**
 * What steeps and is poured off as a whole is strained: a part of it is told by its amount (`poured off 300 ml of the sloe`),
 * by a share, or by another vessel.
 */
export function wholePouredOff(told: Told): readonly ConceptSpan[] {
  const { spans, bits, jars } = told
  const parts = spans.filter(({ concept }) => concept === 'divided')
  const isOther = spans.some(({ concept }) => concept === 'other_vessel' || concept === 'renamed')
  if (parts.length === 0 || isOther || !parts.every((span) => isWhole(told, span))) return spans
  const running = runningAmong(jars)
  const named = bits.filter(({ kind }) => kind === 'plant' || kind === 'jar').flatMap((bit) => jarsOf(bit, running))
  const meant = named.length > 0 ? named : running
  if (!meant.some(({ stage }) => stage === 'steeping')) return spans
  return spans.map((span) => (span.concept === 'divided' ? { ...span, concept: 'strained' } : span))
}
