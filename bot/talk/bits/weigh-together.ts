import type { TypedText } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import type { Bit } from './bit.ts'
import { isPastDay } from './past-day.ts'
import { steepSpan } from './steep-span.ts'

const MEASURES: ReadonlySet<Concept> = new Set(['metric_measures', 'us_measures', 'imperial_measures'])

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
  if (isToldOnDay(said, bits, spans, typed)) {
    said.add('remind')
    for (const asked of ['tell_me_about', 'asking', 'how_much'] as const) said.delete(asked)
  }
  if (isForBottles(said, bits, spans)) {
    said.add('for_bottles')
    said.delete('units_of_alcohol')
  }
  // `How many bottles from 10 lemons and a litre of 95`: what is planned says it.
  if (said.has('plants_and_spirit') && said.has('plant_amount') && spans.some((span) => isBottlesAsked(span, typed)))
    for (const asked of ['how_much', 'show_jar'] as const) said.delete(asked)
  // `In US units`: of measures, not of alcohol.
  const measures = spans.filter(({ concept }) => MEASURES.has(concept))
  const ofAlcohol = spans.filter(({ concept }) => concept === 'units_of_alcohol')
  const isOfMeasures = ({ from, to }: ConceptSpan): boolean =>
    measures.some((span) => span.from <= from && to <= span.to)
  if (ofAlcohol.every(isOfMeasures)) said.delete('units_of_alcohol')
  // `Quanto dura il nocino`: how long, not how much.
  const long = spans.filter(({ concept }) => concept === 'keeps_long')
  const much = spans.filter(({ concept }) => concept === 'how_much')
  const isWithin = ({ from, to }: ConceptSpan): boolean => long.some((span) => span.from <= from && to <= span.to)
  if (long.length > 0 && much.every(isWithin)) said.delete('how_much')
  if (isCountAsked(said, bits, much, typed)) {
    said.add('as_needed')
    said.delete('how_much')
  }
  if (said.has('amounts_planned') && !said.has('own_jar')) planned(said, spans, typed)
  const steeped = said.has('plants_and_spirit') ? steepSpan({ bits, typed }) : null
  // `Cherries and bourbon, steep for 25 days` tells how long.
  if (steeped !== null && !said.has('asking')) said.delete('how_long')
  if (said.has('plants_and_spirit') && isOfThingsAlone(typed, bits, steeped)) said.add('things_alone')
  if (said.has('how_strong')) for (const told of ['recipe_told', 'amounts_planned'] as const) said.delete(told)
  if (said.has('syrup') || said.has('sugar_word')) said.delete('only_thinned')
  // `Ho 700 ml di infuso a 82 e vorrei arrivare a 30`: an infusion gets its syrup, unless water is all that is asked for.
  if (said.has('infusion') && said.has('wished_low') && said.has('thin') && spans.every(isToward(typed)))
    for (const thinned of ['only_thinned', 'thin'] as const) said.delete(thinned)
  // `Would a quince one started now be done by March`: nothing is started yet.
  if (isThoughtOf(typed)) for (const begun of ['started', 'log_start'] as const) said.delete(begun)
  // `Will a lemon one started now be ready by Easter`: it is only thought of.
  const isBegun = [...DEEDS].some((deed) => said.has(deed) && !(deed === 'started' && said.has('hypothesis')))
  if (!said.has('by_day') || isBegun || said.has('asked_of_jar')) said.delete('planned_by_day')
  // `1 l of vodka, not very sweet` is wished of what is planned, not found of what is there.
  if (said.has('wish_dry') && said.has('plants_and_spirit') && !said.has('own_jar'))
    for (const found of ['too_dry', 'not_sweet'] as const) said.delete(found)
}

const WATERED =
  /\b(?:dilu\p{L}*|water\p{L}*|cut\p{L}*|thin\p{L}*|allung\p{L}*|acqua|annacqu\p{L}*|tagli\p{L}*|proof)\b/u

/** Whether a phrase of thinning only says how far down it is to go. */
const isToward =
  ({ tokens }: TypedText) =>
  ({ concept, from, to }: ConceptSpan): boolean =>
    concept !== 'thin' ||
    !WATERED.test(
      tokens
        .slice(from, to)
        .map(({ text }) => text)
        .join(' '),
    )

/** `On Monday please tell me about the pear`: of a jar of one's own, on a day that is to come, it is spoken of then. */
const isToldOnDay = (
  said: ReadonlySet<Concept>,
  bits: readonly Bit[],
  spans: readonly ConceptSpan[],
  { tokens }: TypedText,
): boolean =>
  said.has('own_jar') &&
  bits.some((each) => each.kind === 'date' && !isPastDay(each) && !/^(?:today|oggi)$/.test(each.text)) &&
  bits.every(({ kind }) => kind === 'date' || kind === 'plant' || kind === 'jar') &&
  spans.some(
    ({ concept, from }) => concept === 'tell_me_about' && /^(?:tell|parlami|dimmi)$/.test(tokens[from]?.text ?? ''),
  )

/** No infusion to sweeten is told of beside a plant at such a strength, % vol. */
const SPIRIT_ABV = 90

/** `1.5 l of 96, want mandarin at around 28, how many do I need`: how many of the one plant go into a spirit that is told. */
const isCountAsked = (
  said: ReadonlySet<Concept>,
  bits: readonly Bit[],
  much: readonly ConceptSpan[],
  { tokens }: TypedText,
): boolean =>
  !said.has('own_jar') &&
  !said.has('infusion') &&
  much.some(
    ({ from, to }) =>
      /^(?:many|quant[ie])$/.test(tokens[to - 1]?.text ?? '') &&
      from > 0 &&
      /^(?:do|i|we|should|will|ne|mi|)$/.test(tokens[to]?.text ?? ''),
  ) &&
  bits.some(({ kind, with: place }) => kind === 'plant' && place === undefined) &&
  bits.some(({ kind, value, role }) => kind === 'strength' && role === 'have' && value >= SPIRIT_ABV) &&
  bits.filter(({ kind }) => kind === 'volume').length === 1

/** `Sugar`, `syrup`: what a plan says how much of. */
const OF_PLAN = /^(?:sugar|syrup|water|zucchero|sciroppo|acqua)$/
const ENOUGH = /^(?:enough|sufficient|bastano|basta|bastera|basteranno|bastare|bastino)$/

/** Of plants and a spirit that are told with their amounts a plan says how much sugar, for how long, and whether they are enough. */
function planned(said: Set<Concept>, spans: readonly ConceptSpan[], { tokens }: TypedText): void {
  const isSweetAsked = spans.some(({ concept, to }) => concept === 'how_much' && OF_PLAN.test(tokens[to]?.text ?? ''))
  if (isSweetAsked) for (const asked of ['how_much', 'how_long', 'syrup'] as const) said.delete(asked)
  if (tokens.some(({ text }) => ENOUGH.test(text)))
    for (const asked of ['how_much', 'per_litre', 'asking_bare'] as const) said.delete(asked)
}

const isBottlesAsked = ({ concept, to }: ConceptSpan, { tokens }: TypedText): boolean =>
  concept === 'how_much' && /^(?:bottles|bottiglie)$/.test(tokens[to]?.text ?? '')

/**
 * `How many lemons for two bottles`, `six half litre bottles of plum, how much spirit do I buy`: what a shelf takes, worked out backwards;
 * of one bottle, of no size, it is asked how much goes into it.
 */
function isForBottles(said: ReadonlySet<Concept>, bits: readonly Bit[], spans: readonly ConceptSpan[]): boolean {
  const bottles = bits.filter(({ kind, role }) => kind === 'bottles' && role === null)
  const isFew = bottles.every(({ isSizeAssumed, count = 1 }) => isSizeAssumed === true && count < 2)
  const isPlant = bits.some(({ kind, role }) => kind === 'plant' && role !== 'left_out')
  const isOther = bits.some(
    ({ kind, role }) =>
      (kind === 'volume' && role !== 'price') || (kind === 'mass' && role !== 'price') || role === 'of_plant',
  )
  if (bottles.length === 0 || isFew || !isPlant || isOther) return false
  const isDone = [...DEEDS].some((deed) => said.has(deed)) || said.has('glass_of')
  return !isDone && spans.some(({ concept }) => concept === 'how_much' || concept === 'to_buy')
}

const isThoughtOf = ({ tokens }: TypedText): boolean =>
  /^(?:would|could|might|will)$/.test(tokens[0]?.text ?? '') &&
  tokens.some(
    ({ text }, at) =>
      /^(?:started|begun)$/.test(text) && /^(?:now|today|tonight|tomorrow|this|next)$/.test(tokens[at + 1]?.text ?? ''),
  )

const MOST_ALONE = 8

const STEEPING =
  /^(?:steep\p{L}*|soak\p{L}*|infus\p{L}*|macer\p{L}*|let|leave|sit|stand|rest|it|them|to|for|about|in|per|circa|ripos\p{L}*|lasci\p{L}*)$/u

/** `Lemons. Vodka. Go`: a plant and a spirit, and nothing else but what joins them. */
const isOfThingsAlone = ({ tokens }: TypedText, bits: readonly Bit[], steeped: Bit | null): boolean =>
  tokens.length <= (steeped === null ? MOST_ALONE : 2 * MOST_ALONE) &&
  bits.every((bit) => bit.kind === 'plant' || bit.kind === 'spirit' || bit === steeped) &&
  tokens.every(
    ({ kind, text }, at) =>
      kind === 'sign' ||
      (steeped !== null && STEEPING.test(text)) ||
      /^(?:and|plus|with|in|go|then|please|e|con|vai|via)$/.test(text) ||
      bits.some(({ from, to }) => from <= at && at < to),
  ) &&
  !tokens.some(({ text }) => text === '?')
