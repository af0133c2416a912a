import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Sentence } from '../bits/bit.ts'
import type { Concept } from '../lexicon/lexicon.ts'

/** `cloud in_cold`: both are said; `-` before one: it is not. */
type Rule = readonly [symptom: SymptomId, score: number, concepts: string]

/** The highest score that holds is what is meant. A danger stands above what merely looks bad. */
const RULES: readonly Rule[] = [
  ['cloudy_in_cold', 5.2, 'cloud in_cold'],
  ['cloudy_in_cold', 5.3, 'cloud in_warm'],
  ['cloudy_later', 4.8, 'cloud weeks_later'],
  ['cloudy_on_mixing', 5, 'cloud on_mixing'],
  ['cloudy_on_mixing', 4, 'cloud'],
  ['oil_ring', 5, 'oily ring'],
  ['oil_ring', 4.6, 'oily on_top'],
  ['oil_ring', 4.2, 'ring colour'],
  ['oil_ring', 4, 'oily turned'],
  ['separated', 4.5, 'layers -creamy'],
  ['bitter', 4.2, 'bitter'],
  ['harsh_hot', 3.6, 'harsh'],
  ['harsh_hot', 4.5, 'harsh no_taste'],
  ['harsh_hot', 4.1, 'harsh taste_word'],
  ['too_spicy', 4.5, 'spicy harsh'],
  ['too_spicy', 4, 'spicy taste_word'],
  ['too_spicy', 3.9, 'spicy'],
  ['too_sweet', 4, 'too_sweet'],
  ['too_sweet', 4.4, 'too_sweet jelly -turned'],
  ['too_sweet', 3.6, 'cloying'],
  ['too_dry_or_sour', 4, 'not_sweet'],
  ['too_dry_or_sour', 4, 'too_dry'],
  ['too_weak', 4, 'too_weak'],
  ['too_weak', 3.6, 'watery'],
  ['weak_taste', 4.3, 'no_taste'],
  ['brown', 4, 'brown turned'],
  ['brown', 3.6, 'dark turned'],
  ['faded', 4.2, 'pale turned'],
  ['faded', 4, 'colour lost'],
  ['fruit_went_pale', 4.6, 'pale fruit_part'],
  ['sediment', 4.4, 'bits bottom'],
  ['sediment', 3.4, 'bits turned'],
  ['gelled', 4.3, 'jelly'],
  ['gelled', 4.7, 'jelly strings'],
  ['gelled', 3.9, 'strings'],
  ['crystals', 4.6, 'crystals sugar_word'],
  ['crystals', 4.5, 'crystals bottom'],
  ['crystals', 4.7, 'crystals in_cold'],
  ['crystals', 4.1, 'crystals'],
  ['sugar_not_dissolving', 5.2, 'undissolved sugar_word'],
  ['sugar_not_dissolving', 4.2, 'undissolved'],
  ['frozen', 4.8, 'solid_ice in_cold -how_strong'],
  ['frozen', 4, 'solid_ice turned -jelly'],
  ['frozen', 3.7, 'solid_ice -jelly -how_strong'],
  ['mould', 5, 'mould'],
  ['mould', 5.5, 'mould on_top'],
  ['fermenting', 4.8, 'fizz'],
  ['fermenting', 5.2, 'fizz yeasty'],
  ['fermenting', 4.6, 'yeasty smell'],
  ['fermenting', 4.4, 'yeasty taste_word'],
  ['pressure', 5.3, 'swelling lid'],
  ['pressure', 4.9, 'swelling -jelly'],
  ['pressure', 5.1, 'pops lid'],
  ['stuck_filter', 4.6, 'slow_filter'],
  ['black_or_metal', 4.4, 'metal taste_word'],
  ['black_or_metal', 4.3, 'black turned'],
  ['black_or_metal', 4.2, 'metal lid turned'],
  ['black_or_metal', 3.9, 'metal smell'],
  ['leaves_went_black', 4.9, 'leaves black'],
  ['curdled', 4.9, 'curdled creamy'],
  ['curdled', 4.2, 'curdled -crystals'],
  ['vinegar', 4.6, 'vinegar smell'],
  ['vinegar', 4.5, 'vinegar taste_word'],
  ['vinegar', 4.3, 'vinegar turned'],
  ['solvent', 5.2, 'solvent smell'],
  ['solvent', 5.1, 'solvent taste_word'],
  ['wrong_spirit', 5.2, 'spirit_wrong'],
  ['unknown_plant', 5.2, 'strange_plant'],
  ['cracked_stones', 5, 'stones taste_word'],
  ['cracked_stones', 4.9, 'stones broken'],
  ['broken_glass', 5.4, 'broken glassware -reads -instrument'],
  ['lead_crystal', 4.8, 'crystal_ware'],
  ['garlic_or_vegetable', 4.2, 'garlic turned kitchen -smell'],
  ['pink_orange_slime', 5.2, 'slime -strings'],
  ['too_sour', 4.1, 'sour -vinegar'],
  ['rotten_egg', 5.6, 'rotten_egg'],
  ['soapy_perfume', 4.5, 'soapy'],
  ['hairs_or_spines', 4.5, 'hairs -mould'],
  ['floating_bits', 4, 'floating bits -mould'],
  ['insects', 4.8, 'insects'],
  ['skin_on_top', 4.5, 'skin_film on_top -oily'],
  ['skin_on_top', 4, 'skin_film turned -oily -fruit_part'],
  ['leaking_lid', 4.3, 'leaks lid -slow_filter'],
  ['leaking_lid', 4, 'leaks glassware -slow_filter'],
  ['left_in_sun', 4.3, 'left_in_sun forgotten'],
  ['left_in_sun', 4.3, 'left_in_sun lying'],
  ['forgotten', 3.6, 'forgotten'],
  ['cloth_or_paper_taste', 4.5, 'cloth_taste taste_word'],
  ['cloth_or_paper_taste', 4.4, 'cloth_taste smell'],
  ['musty', 4.3, 'musty smell'],
  ['musty', 4.2, 'musty taste_word'],
  ['plastic_taste', 4.6, 'plastic_taste taste_word'],
  ['plastic_taste', 4.5, 'plastic_taste smell'],
  ['hydrometer_odd', 5.1, 'odd_reading instrument'],
  ['hydrometer_odd', 4.4, 'odd_reading reads'],
]

interface Compiled {
  readonly symptom: SymptomId
  readonly score: number
  readonly said: readonly Concept[]
  readonly unsaid: readonly Concept[]
}

const compiled: readonly Compiled[] = RULES.map(([symptom, score, concepts]) => {
  const words = concepts.split(' ')
  return {
    symptom,
    score,
    said: words.filter((word) => !word.startsWith('-')) as Concept[],
    unsaid: words.filter((word) => word.startsWith('-')).map((word) => word.slice(1)) as Concept[],
  }
})

export interface SymptomSaid {
  readonly id: SymptomId
  readonly score: number
}

/** What is said of a fruit that is bought: `sour cherries`, `ciliegie acide`. */
const OF_FRUIT: ReadonlySet<Concept> = new Set(['sour', 'bitter'])

/** Said of the fruit that is named, wherever it is said: `sour cherries and bourbon` went wrong in nothing. */
const isOnlyOfFruit = ({ spans, bits, typed, has }: Sentence, concept: Concept): boolean =>
  OF_FRUIT.has(concept) &&
  !has('taste_word') &&
  spans
    .filter((span) => span.concept === concept)
    .every(({ from, to }) =>
      bits.some(
        (bit) =>
          bit.kind === 'plant' &&
          to - from === 1 &&
          ((bit.from <= from && to <= bit.to) ||
            bit.from === to ||
            (bit.to === from && /^(?:acid|amar|aspr|agr)[aei]$/.test(typed.tokens[from]!.text))),
      ),
    )

const heldIn = (sentence: Sentence): readonly Compiled[] =>
  compiled
    .filter(
      ({ said, unsaid }) =>
        said.every((each) => sentence.has(each) && !isOnlyOfFruit(sentence, each)) &&
        !unsaid.some((each) => sentence.has(each)),
    )
    .toSorted((one, other) => other.score - one.score || other.said.length - one.said.length)

/** What goes wrong in a sentence, the likeliest; null where nothing does. */
export function symptomIn(sentence: Sentence): SymptomSaid | null {
  const [found] = heldIn(sentence)
  return found === undefined ? null : { id: found.symptom, score: found.score }
}

const NOT = /^(?:not|isnt|wasnt|arent|no|never|without|nor|non|senza|mai|ne|neither)$/

/** `It’s not cloudy, but …`. */
const isDenied = ({ typed }: Sentence, at: number): boolean =>
  typed.tokens.slice(Math.max(0, at - 2), at).some(({ text }) => NOT.test(text))

const ADDS = /^(?:and|but|also|plus|besides|e|ed|ma|anche|pure|inoltre|[.;!?])$/

/** `Cloudy, and it fizzes`: said beside it, where `gone from green to brown` says one thing twice. */
const isAddedTo = (
  { typed }: Sentence,
  { from, to }: { readonly from: number; readonly to: number },
  told: readonly { readonly from: number; readonly to: number }[],
): boolean =>
  told.every((one) =>
    typed.tokens.slice(Math.min(one.to, to), Math.max(one.from, from)).some(({ text }) => ADDS.test(text)),
  )

/** From here on a second one is meant, not hinted at. */
const TELLING = 3.9

/** What goes wrong beside a symptom, in words that tell of nothing else: `cloudy, and it fizzes` are two, `furry mould` is one. */
export function symptomsBeside(sentence: Sentence, symptom: SymptomId): readonly SymptomId[] {
  const held = heldIn(sentence)
  const own = held.filter((each) => each.symptom === symptom)
  const placesOf = ({ said: [head] }: Compiled) =>
    sentence.spans.filter(({ concept, from }) => concept === head && !isDenied(sentence, from))
  const told = own.flatMap(placesOf)
  const others: SymptomId[] = []
  for (const each of held) {
    const isOfTold = placesOf(each).every(({ from, to }) => told.some((one) => one.from < to && from < one.to))
    if (each.score < TELLING || each.symptom === symptom || others.includes(each.symptom) || isOfTold) continue
    if (!placesOf(each).some((place) => isAddedTo(sentence, place, told))) continue
    others.push(each.symptom)
    told.push(...placesOf(each))
  }
  return others
}
