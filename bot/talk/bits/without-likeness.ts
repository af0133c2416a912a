import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Concept } from '../lexicon/lexicon.ts'

/** Of `cracked open`, `popped the cork` and `split the lemon` only the whole holds: nothing is broken, nothing has come apart. */
const LIKE: readonly (readonly [Concept, ReadonlySet<Concept>])[] = [
  ['opened', new Set<Concept>(['broken', 'pops', 'swelling', 'lid', 'hypothesis', 'before_it', 'emptied'])],
  ['divided', new Set<Concept>(['layers', 'curdled'])],
  // The last drop is no order to drop it, `com’era il limone` puts no step right.
  ['emptied', new Set<Concept>(['without', 'lost'])],
  ['state_of', new Set<Concept>(['was_other_jar'])],
  // Whoever went off with two is no milk, and a crystal that grows no mould.
  ['gave_away', new Set<Concept>(['mould'])],
  // `Lemon is a dull name` asks nothing.
  ['renamed', new Set<Concept>(['asking', 'turned', 'cloud'])],
  ['crystals', new Set<Concept>(['mould'])],
]

export const withoutLikeness = (spans: readonly ConceptSpan[]): readonly ConceptSpan[] =>
  spans.filter(
    ({ concept, from }) =>
      !LIKE.some(
        ([deed, alike]) =>
          alike.has(concept) && spans.some((whole) => whole.concept === deed && whole.from <= from && from < whole.to),
      ),
  )

/** `Forgot to say`: nothing stood forgotten. */
export const withoutLateTelling = (
  spans: readonly ConceptSpan[],
  tokens: readonly { readonly text: string }[],
): readonly ConceptSpan[] =>
  spans.filter(
    ({ concept, from }) =>
      (concept !== 'forgotten' && concept !== 'hypothesis') ||
      !/^forgot to (?:say|mention|tell|note|write|add that)\b/.test(
        tokens
          .slice(from, from + 4)
          .map(({ text }) => text)
          .join(' '),
      ),
  )

/** Of `not too sweet` only the whole holds: that it is too sweet is not said. */
const OPPOSED = /^(?:wish_|too_|drier|sweeter|stronger|weaker|not_sweet|cloying)/

export function withoutShorter(spans: readonly ConceptSpan[]): readonly ConceptSpan[] {
  return spans.filter(
    (span) =>
      !OPPOSED.test(span.concept) ||
      !spans.some(
        (other) =>
          OPPOSED.test(other.concept) &&
          other.from <= span.from &&
          span.to <= other.to &&
          other.to - other.from > span.to - span.from,
      ),
  )
}
