import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { unitAt } from '../../../core/quantity/read/unit-at.ts'

/** Herbs and fruit whose names mean much else, where nothing is weighed. */
const ALSO_PLANTS =
  /^(?:sage|salvia|mint|menta|bay|alloro|lauro|balm|daisy|daisies|violets?|heather|sorrel|mallow|primroses?|figs?|noce|noci|uva)$/

/** `10 g of sage`, `alloro 10 g`: what is weighed out is a plant, be its name a word of something else too. */
export function isWeighed(typed: TypedText, at: number): boolean {
  if (!ALSO_PLANTS.test(wordAt(typed, at))) return false
  const before = /^(?:of|di|d|fresh|dried)$/.test(wordAt(typed, at - 1)) ? at - 2 : at - 1
  const isMass = (place: number): boolean =>
    typed.tokens[place] !== undefined && unitAt(typed, place, ['mass']) !== null
  return (
    (isMass(before) && typed.tokens[before - 1]?.kind === 'number') ||
    (typed.tokens[at + 1]?.kind === 'number' && isMass(at + 2))
  )
}
