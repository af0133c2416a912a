import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Sentence } from '../bits/bit.ts'
import type { Concept } from '../lexicon/lexicon.ts'

import { type Denial, denialAt } from './denied.ts'
import { type SymptomRule, symptomRules } from './symptom-rules.ts'

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

const ASKS_AHEAD = /^(?:would|will|wont|does|do|can|could|might|should|if|is it safe)$/
const IS_SO = /^(?:went|gone|turned|froze|became|has|its|got|was)$/

/** `Would a bottle of 24% go solid in the freezer`: asked of what may come, where its strength is told. */
const isFreezingAhead = ({ typed: { tokens }, bits, has }: Sentence): boolean =>
  has('freezes') &&
  bits.some(({ kind }) => kind === 'strength') &&
  !has('drink_named') &&
  ASKS_AHEAD.test(tokens[0]?.text ?? '') &&
  !tokens.some(({ text }) => IS_SO.test(text))

/** `Hot enough` is as somebody wants it. */
const isOnlyEnough = ({ spans, typed: { tokens } }: Sentence, concept: Concept): boolean => {
  const own = spans.filter((span) => span.concept === concept)
  return own.length > 0 && own.every(({ to }) => tokens[to]?.text === 'enough')
}

const GROWS = /^(?:growth|growing|grows|grown|cresc\p{L}*)$/u

/** `Sugar stones are growing at the bottom`: that crystals grow tells of nothing that lives. */
const isOnlyGrown = ({ spans, typed: { tokens }, has }: Sentence): boolean =>
  has('crystals') &&
  spans
    .filter(({ concept }) => concept === 'mould')
    .every(({ from, to }) => tokens.slice(from, to).every(({ text }) => GROWS.test(text)))

const holds = (sentence: Sentence): readonly SymptomRule[] =>
  symptomRules
    .filter(
      ({ symptom, said, unsaid }) =>
        !(symptom === 'frozen' && isFreezingAhead(sentence)) &&
        !(symptom === 'mould' && isOnlyGrown(sentence)) &&
        said.every((each) => sentence.has(each) && !isOnlyOfFruit(sentence, each) && !isOnlyEnough(sentence, each)) &&
        !unsaid.some((each) => sentence.has(each)),
    )
    .toSorted((one, other) => other.score - one.score || other.said.length - one.said.length)

/** Where, when and how it is noticed tells by itself of nothing. */
const AROUND: ReadonlySet<Concept> = new Set([
  'in_cold',
  'in_warm',
  'on_mixing',
  'weeks_later',
  'taste_word',
  'smell',
  'on_top',
  'bottom',
  'lid',
  'sugar_word',
  'colour',
  'kitchen',
  'fruit_part',
  'glassware',
  'instrument',
  'reads',
  'something',
])

const placesIn = ({ spans }: Sentence, concept: Concept) => spans.filter((span) => span.concept === concept)

/** What is said of the words that tell of it: null where it is so, wherever it is said. */
function denialOf({ said }: SymptomRule, sentence: Sentence): Denial | null {
  for (const concept of said.filter((each) => !AROUND.has(each))) {
    const places = placesIn(sentence, concept).map(({ from }) => denialAt(sentence, from))
    const [first = null] = places
    if (places.every((each) => each !== null)) return first
  }
  return null
}

/** `It doesn’t smell of vinegar`: that it has no smell is said only because it is not of vinegar. */
const isOfDenial = ({ said: [head] }: SymptomRule, sentence: Sentence, denied: readonly SymptomRule[]): boolean =>
  head === 'no_taste' &&
  denied.some((each) =>
    placesIn(sentence, each.said[0]!).some(({ from }) =>
      placesIn(sentence, head).some((span) => span.to <= from && from - span.to <= 2),
    ),
  )

function heldIn(sentence: Sentence): readonly SymptomRule[] {
  const all = holds(sentence)
  const denied = all.filter((each) => denialOf(each, sentence) !== null)
  return all.filter((each) => !denied.includes(each) && !isOfDenial(each, sentence, denied))
}

/** What goes wrong in a sentence, the likeliest; null where nothing does. */
export function symptomIn(sentence: Sentence): SymptomSaid | null {
  const [found] = heldIn(sentence)
  return found === undefined ? null : { id: found.symptom, score: found.score }
}

/** What a sentence says has not gone wrong, or is not to; null where something has, or nothing is said of it. */
export function symptomDenied(sentence: Sentence): (SymptomSaid & { readonly denial: Denial }) | null {
  if (symptomIn(sentence) !== null) return null
  for (const rule of holds(sentence)) {
    const denial = denialOf(rule, sentence)
    if (denial !== null) return { id: rule.symptom, score: rule.score, denial }
  }
  return null
}

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
  const placesOf = ({ said: [head] }: SymptomRule) =>
    sentence.spans.filter(({ concept, from }) => concept === head && denialAt(sentence, from) === null)
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
