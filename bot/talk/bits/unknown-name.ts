import { textFrom } from '../../../core/quantity/read/tokens.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import type { Sentence } from './bit.ts'

const ARTICLE = /^(?:the|my|our|il|lo|la|l|i|gli|le|mio|mia|nostr[oa])$/
/** Before the name of what something goes into, of what it comes out of, and of what a note is for. */
const INTO = /^(?:in|into|inside|to|onto|nel|nello|nella|nell|al|allo|alla|all)$/
const OUT_OF = /^(?:of|from|off|di|da|del|dello|della|dell|dal|dallo|dalla|dall)$/
const FOR = /^(?:for|of|on|about|per|su|sul|sulla|del|della)$/
const WITH = /^(?:with|of|from|con|di|del|dello|della|dell)$/
/** `Ho dato una scossa al mostro`. */
const TO_THE = /^(?:to|of|al|allo|alla|all|a)$/
/** `Before going to class`, `prima di andare a lezione`: where somebody goes. */
const GOING =
  /^(?:go|going|went|goes|off|back|drive|driving|drove|walk|walking|run|running|on|way|and\p{L}*|vado|torn\p{L}*|usc\p{L}*|corr\p{L}*|part\p{L}*)$/u
const BEFORE: Readonly<Record<string, RegExp>> = {
  'jar bottle': WITH,
  'jar shake': TO_THE,
  'jar add': INTO,
  'jar sweeten': INTO,
  'jar note': FOR,
}
/** Behind the name of what a deed was done to. */
const BEHIND = /^(?:is|are|was|were|got|has|now|done|out|off|in|on|under|e|era|fatto|fuori)$/
/** What is in every jar, and what it is called by anybody. */
const ANY_JAR =
  /^(?:jars?|lots?|stuff|batch(?:es)?|brews?|mix|mixture|liquids?|liquors?|liqueurs?|infusions?|rest|things?|contents|bottles?|fruits?|berr(?:y|ies)|peels?|solids|pulp|dregs|sediment|bits|one|ones|others?|results?|drinks?|spirits?|alcohol|booze|macerate|maceration|tincture|product|potion|concoction|herbs?|spices?|flowers?|leaves|roots?|seeds?|pods?|sticks?|whole|half|vas[oi]|barattol[oi]|liquore|infuso|infusione|frutta|scorze|tutto|macerato|damigiana)$/
/** Before what is told beside a deed: `opened the first bottle with dinner`. */
const BESIDE = /^(?:with|after|before|at|for|over|during|by|to|on|in|from|and|con|dopo|prima|per|durante|a)$/
const IT = /^(?:it|them|everything|all)$/

const MOST_WORDS = 4

/** Whether a word says something of itself: a filler, or one of a phrase that is understood. */
function isUnderstood({ lexicon, spans, typed }: Sentence, at: number): boolean {
  const { text } = typed.tokens[at]!
  const words = [lexicon.fillers, lexicon.between, lexicon.loose, lexicon.small]
  const isInPhrase = spans.some(({ from, to, gaps }) => from <= at && at < to && gaps?.includes(at) !== true)
  return words.some((list) => wordSet(list).has(text)) || isInPhrase
}

/**
 * A name that is neither a plant nor any word that is understood, where the name of a jar stands: `shook the old faithful`, `2 cloves
 * into Foxglove Cottage`. Null where there is none, or where the jar is only called `it`.
 */
export function unknownName(sentence: Sentence, command: string): string | null {
  const { typed, bits, spans, lexicon } = sentence
  const { tokens, text } = typed
  if (tokens.some((token) => IT.test(token.text))) return null
  const isIn = (at: number): boolean => bits.some(({ from, to }) => from <= at && at < to)
  const isUnknown = (at: number): boolean => {
    const token = tokens[at]
    return (
      token?.kind === 'word' &&
      token.text.length > 2 &&
      !isIn(at) &&
      !ANY_JAR.test(token.text) &&
      !isUnderstood(sentence, at)
    )
  }
  // `Gave the neighbours a bottle`: to whom.
  const isDeed = (at: number): boolean =>
    command !== 'bottles' && spans.some(({ concept, from, to }) => DEEDS.has(concept) && from <= at && at < to)
  // `The old faithful`.
  const isFiller = (at: number): boolean =>
    !ARTICLE.test(tokens[at]!.text) &&
    !ANY_JAR.test(tokens[at]!.text) &&
    !BESIDE.test(tokens[at]!.text) &&
    tokens[at]!.text.length > 2 &&
    wordSet(lexicon.fillers).has(tokens[at]!.text)
  // `Gave gran’s best a shake`: what stands between the words of a deed is the name, whatever it says of itself.
  const isBetween = (at: number): boolean =>
    !isIn(at) && spans.some(({ concept, gaps }) => DEEDS.has(concept) && gaps?.includes(at) === true)
  // `Big Bertha`.
  const isCalled = (at: number): boolean => isBetween(at) && at > 0 && /^\p{Lu}/u.test(text.slice(tokens[at]!.from))
  for (let at = 0; at < tokens.length; at++) {
    if (!isUnknown(at)) continue
    let to = at + 1
    while (
      to - at < MOST_WORDS &&
      (isUnknown(to) || (isBetween(at) && isBetween(to) && !/^an?$/.test(tokens[to]!.text)))
    )
      to++
    // `The citrus one`: told by a property.
    const isOne = /^ones?$/.test(tokens[to]?.text ?? '')
    let begin = at
    while (begin > 0 && (isFiller(begin - 1) || isCalled(begin - 1))) begin--
    const isShaken =
      command === 'jar shake' &&
      TO_THE.test(tokens[begin - 1]?.text ?? '') &&
      !GOING.test(tokens[begin - 2]?.text ?? '')
    const isNamed = ARTICLE.test(tokens[begin - 1]?.text ?? '') && !isOne
    const isCapital = at > 0 && /^\p{Lu}/u.test(text.slice(tokens[at]!.from))
    const before = isNamed ? begin - 2 : at - 1
    const isBegun = isNamed && before < 0 && [to, to + 1].some((next) => BEHIND.test(tokens[next]?.text ?? ''))
    const isBehind = before >= 0 && ((BEFORE[command] ?? OUT_OF).test(tokens[before]!.text) || isDeed(before))
    if (isBegun || ((isNamed || isShaken || isCapital || to - at > 1) && isBehind))
      return textFrom(typed, isNamed ? begin : at, to)
    at = to
  }
  return null
}
