import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'

/** Between a place and how cold it is: `is now`, `stays`, `ora è`. */
const IS =
  /^(?:is|are|s|was|were|sits?|sat|stands?|stood|stays?|stayed|runs?|kept|set|gone|lives|now|still|always|usually|e|era|sta|resta|ora|adesso)$/
const AT = /^(?:at|to|down|up|a)$/

/** Said before a place where something is in it: `in the freezer`. */
const IN =
  /^(?:in|into|inside|on|onto|under|behind|beside|by|near|at|to|of|from|nel|nella|nello|nell|sul|sulla|sullo|sotto|dietro|accanto|dentro|del|della|dal|dalla)$/
const ITS = /^(?:the|a|an|my|our|its|this|that|il|lo|la|l|un|una|mio|mia|nostro|nostra)$/

/**
 * Concepts without the places that are spoken of themselves: `my freezer is at -18` tells how cold it is, never where a jar
 * stands. In `the lemon in my freezer is at 30 %` the place is that of the lemon.
 */
export function withoutPlaceItself(typed: TypedText, spans: readonly ConceptSpan[]): readonly ConceptSpan[] {
  const places = spans.filter(({ concept }) => concept === 'place_word')
  const isItself = ({ from, to }: ConceptSpan): boolean => {
    // `The chest freezer`: of two places side by side the first tells of what kind the second is.
    const second = places.find((place) => place.from === to)
    if (second !== undefined) return isItself(second)
    let at = to
    while (IS.test(wordAt(typed, at))) at++
    let before = (places.find((place) => place.to === from)?.from ?? from) - 1
    while (ITS.test(wordAt(typed, before))) before--
    return at > to && AT.test(wordAt(typed, at)) && !IN.test(wordAt(typed, before))
  }
  return spans.filter((span) => !places.includes(span) || !isItself(span))
}
