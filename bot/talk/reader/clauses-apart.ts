import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, Surroundings } from '../bits/bit.ts'
import { isOver, jarsNamed } from '../bits/jars-of.ts'
import { sentenceIn } from '../bits/sentence.ts'
import { symptomIn } from '../frames/symptoms.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { isToldNow } from './is-told.ts'

/** What joins two things that are to be done. */
const JOIN = /^(?:and|e|ed|then|poi|but|ma|also|anche|plus|[,;.!?])$/

/** A question behind a deed stands apart by more than a comma: `strained it, 930 ml, how do I get to 30?` is asked. */
const STRONG = /^(?:and|e|ed|then|poi|but|ma|also|[;.!?])$/

/** An order at the beginning of a clause, with nothing of an amount in it. */
const ORDER =
  /^(?:please )?(?:print|show|display|list|draw|make (?:it|this|that|one) again|make (?:me )?a (?:tag|label)|remind|nudge|rename|tell me|stampa\p{L}*|mostra\p{L}*|fammi vedere|dimmi|elenca|ricorda\p{L}*|rinomina\p{L}*|rifall[oa])(?!\p{L})/u

/** A question of its own, with nothing of an amount in it. */
const QUESTION =
  /^(?:how (?:strong|sweet|much|many|long|old|do|does|is)|hows|whats|what|when|whens|which|is it|can i|should i|do i|quanto|quanta|quanti|quando|come|che|cosa)(?!\p{L})/u

/** What is said whenever a jar is strained: what goes in next, and how much of it. */
const AFTER_STRAINING =
  /^(?:and |so |now |then |e |ora |adesso )?(?:how much (?:sugar|syrup|water|sugar and water|sugar and how much water)|what(?: comes|s| is| do i do)? (?:next|now)|now what|quanto (?:zucchero|sciroppo)|quanta acqua|e (?:adesso|ora)|cosa faccio (?:adesso|ora)|che faccio (?:adesso|ora))(?: (?:do|should|must|would) i (?:need|add|use|put in|stir in))?(?: (?:goes|go|does it need|ci vuole|serve|metto|ci metto|devo mettere))?(?: in)?(?: now| adesso| ora)? ?\??$/

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
  for (let at = tokens.length - 2; at > 0; at--) {
    if (!JOIN.test(tokens[at]!.text)) continue
    const begin = at + 1
    if (JOIN.test(tokens[begin]!.text)) continue
    let end = at
    while (end > 0 && JOIN.test(tokens[end - 1]!.text)) end--
    const rest = wordsFrom(sentence.typed, begin)
    const isStrong = tokens.slice(end, begin).some(({ text }) => STRONG.test(text))
    if (begin + MOST_WORDS < tokens.length) return null
    if (ORDER.test(rest) || (isStrong && QUESTION.test(rest))) return { end, begin }
    const isAfterDeed = firstDeed !== undefined && firstDeed.to <= end
    if (!isAfterDeed || isTaste) continue
    const read = sentenceIn(textFrom(sentence.typed, begin, tokens.length), surroundings)
    if (symptomIn(read) !== null && !read.has(...TOLD, 'denial', 'asking') && !/\d/.test(rest)) return { end, begin }
  }
  return null
}

/** `Strained it, 3 cups, how much sugar`: what was strained, whose answer says the rest; null where something else is asked. */
function strainedAndAsked({ typed, bits, spans }: Sentence): string | null {
  const { tokens } = typed
  const strained = spans.find(({ concept }) => concept === 'strained')
  const at = tokens.findLastIndex(({ text }, place) => JOIN.test(text) && place < tokens.length - 1)
  if (strained === undefined || at < strained.to) return null
  const rest = wordsFrom(typed, at + 1)
  const isMeasured = bits.some(({ kind, to }) => kind === 'volume' && to <= at)
  return isMeasured && AFTER_STRAINING.test(rest) ? textFrom(typed, 0, at) : null
}

const ASKS_OF_JAR = /^(?:whats|what is|what|show|how|is|when|which|any|list|cosa|che|mostra|quando|come)\b/

const HOW_IT_STANDS =
  /^(?:how (?:strong|sweet)|hows it (?:doing|going|getting on|coming along)|how is it (?:doing|going|getting on|coming along)|quanto e (?:forte|dolce))(?: (?:is|are) (?:it|that|this|they))?(?: now| adesso| ora)? ?\??$/

/**
 * Two clauses of which each asks, orders or tells something of its own, each as a sentence with the jar that it is of: `what's due and
 * how strong is it`, `tasted it, 4 stars, and print the tag`. Null where there is one.
 */
export function clausesApart(text: string, surroundings: Surroundings): readonly string[] | null {
  if (surroundings.jars.every(isOver)) return null
  const sentence = sentenceIn(text, surroundings)
  const answered = strainedAndAsked(sentence)
  if (answered !== null) return [answered]
  const cut = lastCut(sentence, surroundings)
  if (cut === null) return null
  const { typed } = sentence
  const [one, other] = [textFrom(typed, 0, cut.end), textFrom(typed, cut.begin, typed.tokens.length)]
  const first = sentenceIn(one, surroundings)
  const isTold = first.has(...TOLD) && (isToldNow(first, 'jar rename') || first.has('renamed'))
  const isAsked = ASKS_OF_JAR.test(wordsFrom(first.typed)) && !first.bits.some(({ value }) => value > 0)
  if (!isTold && !isAsked) return null
  const [named] = jarsNamed(first.bits, surroundings.jars)
  const [own] = jarsNamed(sentenceIn(other, surroundings).bits, surroundings.jars)
  // What has a new name is meant by it.
  const isCarried = named !== undefined && own === undefined && !first.has('renamed')
  // How it stands is what a jar shows.
  if (HOW_IT_STANDS.test(wordsFrom(sentenceIn(other, surroundings).typed)))
    return [one, `show me the ${named === undefined || first.has('renamed') ? 'jar' : named.jar.name}`]
  return [one, isCarried ? `${named.jar.name}, ${other}` : other]
}
