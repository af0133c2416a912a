import type { TypedText } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import type { Bit } from './bit.ts'

/** What is said changes by what stands beside it: concepts that hold only together, or not together. */
export function weighTogether(
  said: Set<Concept>,
  bits: readonly Bit[],
  spans: readonly ConceptSpan[],
  typed: TypedText,
): void {
  // `How many lemons for half a litre?`: the plant is what is asked for.
  const asksPlant = spans.some(
    ({ concept, to }) =>
      concept === 'how_much' &&
      bits.some(({ kind, from, with: place }) => kind === 'plant' && from === to && place === undefined),
  )
  if (asksPlant) said.add('how_much_of_it')
  // `5 kg of oranges. How much 95% do I buy?`: as much as they need.
  const asksSpirit = spans.some(
    ({ concept, to }) =>
      concept === 'how_much' &&
      bits.some(
        ({ kind, from, role }) =>
          (kind === 'spirit' || (kind === 'strength' && role === 'have')) && from >= to && from - to <= 1,
      ),
  )
  if (asksSpirit && said.has('plant_amount') && !bits.some(({ kind }) => kind === 'volume')) {
    said.add('as_needed')
    said.delete('how_much')
  }
  if (said.has('plants_and_spirit') && isOfThingsAlone(typed, bits)) said.add('things_alone')
  if (said.has('how_strong')) for (const told of ['recipe_told', 'amounts_planned'] as const) said.delete(told)
  if (said.has('syrup') || said.has('sugar_word')) said.delete('only_thinned')
  if (!said.has('by_day') || [...DEEDS].some((deed) => said.has(deed))) said.delete('planned_by_day')
  // `1 l of vodka, not very sweet` is wished of what is planned, not found of what is there.
  if (said.has('wish_dry') && said.has('plants_and_spirit') && !said.has('own_jar'))
    for (const found of ['too_dry', 'not_sweet'] as const) said.delete(found)
}

const MOST_ALONE = 8

/** `Lemons. Vodka. Go`: a plant and a spirit, and nothing else but what joins them. */
const isOfThingsAlone = ({ tokens }: TypedText, bits: readonly Bit[]): boolean =>
  tokens.length <= MOST_ALONE &&
  bits.every(({ kind }) => kind === 'plant' || kind === 'spirit') &&
  tokens.every(
    ({ kind, text }, at) =>
      kind === 'sign' ||
      /^(?:and|plus|with|in|go|then|please|e|con|vai|via)$/.test(text) ||
      bits.some(({ from, to }) => from <= at && at < to),
  ) &&
  !tokens.some(({ text }) => text === '?')
