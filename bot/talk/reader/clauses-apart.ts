import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, Surroundings } from '../bits/bit.ts'
import { isOver, jarsNamed } from '../bits/jars-of.ts'
import { newNameAt, partNameAt } from '../bits/new-name-at.ts'
import { sentenceIn } from '../bits/sentence.ts'
import { symptomIn } from '../frames/symptoms.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { isOnlyWish } from '../memory/wish-of-nothing.ts'
import { isToldNow } from './is-told.ts'
import { newBatchBehind } from './new-batch.ts'
import { ratedAndAsked } from './rated-and-asked.ts'
import { shakingApart } from './shaking-left.ts'

/** What joins two things that are to be done. */
const JOIN = /^(?:and|e|ed|then|poi|but|ma|also|anche|plus|[,;.!?])$/

/** A question behind a deed stands apart by more than a comma: `strained it, 930 ml, how do I get to 30?` is asked. */
const STRONG = /^(?:and|e|ed|then|poi|but|ma|also|[;.!?])$/

/** Parts no words, where it stands by itself: `shook it - when is it ready`. */
const isDash = ({ typed: { tokens } }: Sentence, at: number): boolean => {
  const [before, sign, behind] = [tokens[at - 1], tokens[at]!, tokens[at + 1]]
  return (
    /^[-—]$/.test(sign.text) &&
    before !== undefined &&
    before.to < sign.from &&
    behind !== undefined &&
    sign.to < behind.from
  )
}

/**
 * Asked of a jar as it stands once that is done: `when is it ready`, `how long now`, `quanto manca`. What the jar shows answers it,
 * however slight what parts it from the deed.
 */
const HOW_LONG_NOW =
  /^(?:so |ok |right |and |e )?(?:when (?:is|will|do|does|can|could|should|shall)|whens|how (?:long|strong|sweet|many (?:more )?(?:days|weeks|months))|is it (?:ready|done|time)|what(?:s| is| do i do|) (?:next|now)|now what|does it need|do i need to|can (?:i|we) (?:drink|taste|bottle|strain|filter) it|quando|quanto (?:tempo|manca|e forte|e dolce|deve|ci vuole)|per quanto|e (?:adesso|ora|pronto)|cosa (?:faccio|viene)|poi cosa)(?!\p{L})/u

/** Of another jar: `shook the lemon, is the ginger ready`. */
const OF_ANOTHER =
  /^(?:is|are|how is|hows|when is|whens|e) (?:the |il |lo |la |my )?\p{L}+ (?:ready|done|doing|getting on|pront[oa])(?!\p{L})/u

/** An order at the beginning of a clause, with nothing of an amount in it. */
const ORDER =
  /^(?:(?:can|could|will|would) you (?:also |just |then )?|mi |puoi (?:anche )?)?(?:please )?(?:print|(?:do|get|make|write|run off) (?:me )?(?:the|its|some|a few) (?:labels?|tags?)|show|display|list|draw|make (?:it|this|that|one) again|make (?:me )?a (?:tag|label)|remind|nudge|rename|tell me|(?:now |so )?(?:leave|let|keep) (?:the |my )?\p{L}+ (?:alone|be|rest|in peace|till|until)|(?:now |so )?(?:dont|do not) (?:bother me|remind me|nag me|message me|mention|nudge me|ping me)|(?:ora |adesso )?lascia\p{L}* (?:stare |riposare )?(?:il |lo |la |l )?\p{L}+|(?:il |lo |la |l )\p{L}+ lascia\p{L}* (?:stare|riposare|in pace)|stampa\p{L}*|mostra\p{L}*|fammi vedere|dimmi|elenca|ricorda\p{L}*|rinomina\p{L}*|rifall[oa])(?!\p{L})/u

/** Labels that are wished for, behind what was filled: `labels next please`, `mi servono le etichette`. */
const LABELS =
  /^(?:(?:now|then|so|next|ora|adesso|poi) )*(?:(?:(?:i|we|id|wed|ill|well|im|were) )?(?:(?:would|will|d|ll|just|also|only|now|still) )*(?:need|want|like|needing|wanting|after)(?: (?:to have|to print|printing))? |(?:mi|ci) (?:\p{L}+ )?(?:serv|occorr|vorr|stamp|f(?:ai|aresti|ate))\p{L}*(?: (?:anche|ora|adesso))? |(?:vorrei|voglio|vogliamo) )?(?:(?:the|some|its|their|a few|my|le|delle|sue|un po di) )*(?:labels?|tags?|etichett[ae])(?: (?:for|per) (?:it|them|that|these|those|the lot|all of them|the bottles|tutte|le bottiglie))?(?: (?:next|now|then|please|pls|plz|too|as well|thanks|ta|ora|adesso|per favore|grazie|anche))*(?: ?[.!?])*$/u

/** A question of its own, with nothing of an amount in it. */
const QUESTION =
  /^(?:how (?:strong|sweet|much|many|long|old|do|does|is)|hows|whats|what|when|whens|which|is it|can i|should i|do i|quanto|quanta|quanti|quando|come|che|cosa)(?!\p{L})/u

/** Of all jars: `shook it, what’s due`. */
const OF_ALL =
  /^(?:so |ok |and |e )?(?:what(?:s| is| else is) (?:due|on|to do|left to do)|anything (?:due|else (?:due|to do))|cosa c e da fare|che c e da fare)(?!\p{L})/u

/** What is said whenever a jar is strained: what goes in next, and how much of it. */
const AFTER_STRAINING =
  /^(?:and |so |now |then |e |ora |adesso )*(?:how much (?:sugar|syrup|water|sugar and water|sugar and how much water)|(?:what|which|che|quale) (?:sugar and water|sugar|syrup|water|zucchero|sciroppo)|what (?:do|should|must|would|will|does) (?:i|we|it) (?:need|add|use|want|take|put in)(?: (?:for|of|in the way of|by way of))?(?: the)? (?:sugar and water|sugar|syrup|water)|what(?: comes|s| is| do i do)? (?:next|now)|now what|quanto (?:zucchero|sciroppo)|quanta acqua|e (?:adesso|ora)|cosa faccio (?:adesso|ora)|che faccio (?:adesso|ora))(?: (?:do|should|must|would|will|shall) i (?:need|add|use|put in|stir in))?(?: (?:goes|go|(?:does|will|would|should) (?:it|this|that|the \p{L}+) (?:need|want|take|get|like)|(?:(?:ci|gli|mi|le) )?vuole|(?:ci|gli) va|(?:(?:mi|gli|ci|le) )?serve|(?:mi|gli|ci|le) occorre|metto|ci metto|devo mettere))?(?: in)?(?: now| adesso| ora)? ?\??$/u

/** Deeds told with a taste, whose words are noted with it. */
const NOTED: ReadonlySet<Concept> = new Set(['tasted', 'rated'])

const TOLD: readonly Concept[] = [...DEEDS, 'renamed', 'rated']

const MOST_WORDS = 9

interface Cut {
  /** Where the clause before ends. */
  readonly end: number
  readonly begin: number
}

/** The last place at which another clause begins; null where none does. */
function lastCut(sentence: Sentence, surroundings: Surroundings): Cut | null {
  const { tokens } = sentence.typed
  const isTaste = sentence.spans.some(({ concept }) => NOTED.has(concept))
  const firstDeed = sentence.spans.find(({ concept }) => TOLD.includes(concept))
  const isJoin = (at: number): boolean => JOIN.test(tokens[at]!.text) || isDash(sentence, at)
  const nameAt = sentence.has('renamed', 'divided', 'other_vessel')
    ? ((newNameAt(sentence.typed.text) ?? partNameAt(sentence.typed.text))?.at ?? -1)
    : -1
  for (let at = tokens.length - 2; at > 0; at--) {
    if (!isJoin(at)) continue
    const begin = at + 1
    if (isJoin(begin)) continue
    let end = at
    while (end > 0 && isJoin(end - 1)) end--
    const rest = wordsFrom(sentence.typed, begin)
    const isStrong = tokens.slice(end, begin).some(({ text }) => STRONG.test(text))
    if (begin + MOST_WORDS < tokens.length) return null
    if (ORDER.test(rest) || LABELS.test(rest) || (isStrong && QUESTION.test(rest))) return { end, begin }
    const isAfterDeed = firstDeed !== undefined && firstDeed.to <= end
    if (isAfterDeed && (HOW_LONG_NOW.test(rest) || OF_ANOTHER.test(rest) || OF_ALL.test(rest)) && !/\d/.test(rest))
      return { end, begin }
    // What a jar is called says nothing of how it is.
    if (!isAfterDeed || isTaste || nameAt >= tokens[begin]!.from) continue
    const read = sentenceIn(textFrom(sentence.typed, begin, tokens.length), surroundings)
    if (symptomIn(read) !== null && !read.has(...TOLD, 'denial', 'asking') && !/\d/.test(rest)) return { end, begin }
  }
  return null
}

/** `Strained it, 3 cups, how much sugar`: what was strained, whose answer says the rest; null where something else is asked. */
function strainedAndAsked(sentence: Sentence): string | null {
  const { typed, bits, spans } = sentence
  const { tokens } = typed
  const strained = spans.find(({ concept }) => concept === 'strained')
  const at = tokens.findLastIndex(
    ({ text }, place) => place < tokens.length - 1 && (JOIN.test(text) || isDash(sentence, place)),
  )
  if (strained === undefined || at < strained.to) return null
  const rest = wordsFrom(typed, at + 1)
  const isMeasured = bits.some(({ kind, to }) => kind === 'volume' && to <= at)
  return isMeasured && AFTER_STRAINING.test(rest) ? textFrom(typed, 0, at) : null
}

/** How a jar is asked for that is spoken of. */
export const SHOWN = 'show me the '

const ASKS_OF_JAR = /^(?:whats|what is|what|show|how|is|when|which|any|list|cosa|che|mostra|quando|come)\b/

const HOW_IT_STANDS =
  /^(?:how (?:strong|sweet)|hows it (?:doing|going|getting on|coming along)|how is it (?:doing|going|getting on|coming along)|quanto e (?:forte|dolce))(?: (?:is|are) (?:it|that|this|they))?(?: now| adesso| ora)? ?\??$/

/**
 * Two clauses of which each asks, orders or tells something of its own, each as a sentence with the jar that it is of: `what's due and
 * how strong is it`, `tasted it, 4 stars, and print the tag`. Null where there is one.
 */
export function clausesApart(sentence: Sentence, surroundings: Surroundings): readonly string[] | null {
  if (surroundings.jars.every(isOver)) return null
  const shaking = shakingApart(sentence)
  if (shaking !== null) return shaking
  const rated = ratedAndAsked(sentence, surroundings)
  if (rated !== null) return rated
  const answered = strainedAndAsked(sentence)
  if (answered !== null) return [answered]
  const batch = newBatchBehind(sentence, surroundings)
  if (batch !== null) return batch
  const cut = lastCut(sentence, surroundings)
  if (cut === null) return null
  const { typed } = sentence
  const [one, other] = [textFrom(typed, 0, cut.end), textFrom(typed, cut.begin, typed.tokens.length)]
  const [first, second] = [sentenceIn(one, surroundings), sentenceIn(other, surroundings)]
  const isTold = first.has(...TOLD) && (isToldNow(first, 'jar rename') || first.has('renamed'))
  const isAsked = ASKS_OF_JAR.test(wordsFrom(first.typed)) && !first.bits.some(({ value }) => value > 0)
  if (!isTold && !isAsked) return null
  const [named] = jarsNamed(first.bits, surroundings.jars)
  const [own] = jarsNamed(second.bits, surroundings.jars)
  // What has a new name is meant by it.
  const isCarried = named !== undefined && own === undefined && !first.has('renamed')
  // `Make it again, double`: how the one is to be.
  if (isOnlyWish(second)) return null
  const words = wordsFrom(second.typed)
  const isOfJar = isTold && own === undefined && second.bits.length === 0 && HOW_LONG_NOW.test(words)
  // How it stands is what a jar shows.
  if (HOW_IT_STANDS.test(words) || isOfJar)
    return [one, `${SHOWN}${named === undefined || first.has('renamed') ? 'jar' : named.jar.name}`]
  return [one, isCarried ? `${named.jar.name}, ${other}` : other]
}
