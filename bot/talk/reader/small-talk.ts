import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { dangerAsked } from './danger-asked.ts'
import { whoIsYoung } from './for-a-child.ts'
import { isOfSpentFruit } from './kitchen-asked.ts'
import { weakLowAcid } from './weak-low-acid.ts'

const MOST_SAID = 6
/** Thanks say more of the same: `ta very much, you’re a gem`. */
const MOST_THANKS = 12

/** Greetings and thanks, said alone. */
export function smallTalk(sentence: Sentence): TalkReading | null {
  const { typed, spans, bits } = sentence
  if (bits.length > 0 || typed.tokens.length > MOST_THANKS) return null
  if (sentence.has('erase', 'not_this_week')) return null
  if (sentence.has('never_mind') && typed.tokens.length <= 5) return { kind: 'last', what: 'let_be' }
  const covers = (concept: 'greeting' | 'thanks' | 'help_me'): boolean =>
    typed.tokens.every(
      ({ kind }, at) =>
        kind === 'sign' ||
        spans.some(
          (span) =>
            (span.concept === concept || (concept !== 'help_me' && span.concept === 'greeting')) &&
            span.from <= at &&
            at < span.to,
        ),
    )
  if (sentence.has('thanks') && covers('thanks')) return { kind: 'small_talk', key: 'thanks' }
  // However it is greeted before: `hello, what can you do?`.
  const isOf = (at: number, ...concepts: readonly string[]): boolean =>
    spans.some(({ concept, from, to }) => concepts.includes(concept) && from <= at && at < to)
  const said = typed.tokens.filter(({ kind }, at) => kind !== 'sign' && (isOf(at, 'help_me') || !isOf(at, 'greeting')))
  if (said.length > MOST_SAID) return null
  if (
    sentence.has('help_me') &&
    (covers('help_me') || spans.some((span) => span.concept === 'help_me' && span.to - span.from >= 3))
  )
    return { kind: 'small_talk', key: 'help' }
  return sentence.has('greeting') && covers('greeting') ? { kind: 'small_talk', key: 'greeting' } : null
}

/** Something is to be put in a drink, or eaten for another. */
const TAKEN = /\b(?:instead of|al posto d\p{L}+|tequila|brandy|whisk(?:y|ey)|grappa|mezcal|limoncello|\d+ ?g)\b/iu

/** Of jam, beer, bars or carpets, where nothing of one's own jars or of spirit is said. */
export const isElsewhere = ({ has, bits, typed }: Sentence): boolean =>
  has('elsewhere') &&
  !has('own_jar') &&
  !bits.some(({ kind }) => kind === 'spirit' || kind === 'strength') &&
  !isOfSpentFruit(typed.text)

/** Of a garden bed, not of a jar. */
export const isOfGarden = ({ has, bits, typed }: Sentence): boolean =>
  has('gardening') && !has('kitchen') && !bits.some(({ kind }) => kind === 'spirit') && !TAKEN.test(typed.text)

/** Children who only want to know. */
const CURIOUS =
  /\b(?:kids?|children|grandchildren|grandkids|sons?|daughters?|little ones|bambini|figli|nipoti)\b (?:\S+ ){0,2}(?:ask(?:s|ed|ing)?(?! for| if they| to (?:try|taste|drink|have))|wonder(?:s|ing)?|wants? to know|curious|chied\S+|vogliono sapere)\b/iu

/** On fire by its taste. */
const ITS_MOUTH =
  /\b(?:mouth|throat|tongue|lips|palate|gums|bocca|gola|lingua|labbra|palato)\b[^.!?]{0,20}\b(?:on fire|a fuoco|in fiamme)/iu

/** What harms without being an ingredient: spirit over heat, children, a baby on its way, medicines and the rest of `dangerAsked`. */
export function dangerTopic(sentence: Sentence): string | null {
  const { bits, has, typed } = sentence
  if (has('pregnant')) return 'pregnancy'
  const asked = dangerAsked(typed.text)
  const grown = asked ?? weakLowAcid(sentence)
  if (grown !== null) return grown
  // `A tag for the sloe, the kids keep asking what it is`: nobody of them drinks.
  if (has('print_tag', 'print_label') && CURIOUS.test(typed.text)) return null
  const young = whoIsYoung(typed.text)
  if (young === 'nearly') return 'old_enough'
  if (young === 'child' || (has('infant') && has('kitchen'))) return 'children'
  const isSpirit = bits.some(
    ({ kind, value, role }) =>
      kind === 'spirit' ||
      (kind === 'strength' && value >= 35 && role !== 'want') ||
      (kind === 'bare' && value >= 90 && value <= 97),
  )
  return has('heat') && isSpirit && !ITS_MOUTH.test(typed.text) && !has('syrup', 'instrument', 'boiled_off', 'freezes')
    ? 'flame'
    : null
}
