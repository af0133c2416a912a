import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Path } from '../../calls/signatures.ts'
import type { Sentence } from '../bits/bit.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { isOnlyDescribed } from './only-described.ts'

/** Said as a wish and done at once: putting off, and another name. */
const ORDERED = new Set<Path>(['jar later', 'jar rename'])

/**
 * The one guard before anything is recorded: it is told as done, not asked, wished, denied or put off. `Ho filtrato, 930 ml a 85, come
 * arrivo a 30?` is a question.
 */
export function isToldNow(sentence: Sentence, command: Path): boolean {
  const clause = clauseOf(sentence)
  const within = (concept: Concept): boolean =>
    sentence.spans.some((span) => span.concept === concept && span.from >= clause.from && span.to <= clause.to)
  // `Mi ricordi sabato del limone?` is a request.
  if (command === 'jar later' && sentence.has('remind') && !ASKS_OF.test(sentence.typed.tokens[0]?.text ?? ''))
    return true
  if (sentence.typed.tokens[clause.to]?.text === '?') return false
  if (beginsAsked(sentence, clause.from)) return false
  if (within('asking') && !(command === 'jar taste' && isMarked(sentence))) return false
  if (ORDERED.has(command)) return true
  if (isAhead(sentence) || (command === 'jar start' && (isDoubted(sentence) || isOnlyDescribed(sentence)))) return false
  if (within('log_start')) return !sentence.has('wish', 'hypothesis')
  return (
    sentence.has(...DEEDS, 'renamed', 'rated', 'syrup_in') &&
    (command !== 'jar shake' || sentence.has('shook')) &&
    !isOnlyMeant(sentence, within) &&
    !isDenied(sentence)
  )
}

/** Before whom or what it is asked of: `does ginger keep in the fridge`, with no mark behind it; `had` and `have` may be told of oneself. */
const ASKS = /^(?:does|do|did|is|are|was|were|has|will|would|should|shall|can|could|may|might|must)$/
const LEADS = /^(?:so|and|but|hey|hi|hello|ok|well|please|oh|now|then|um|er|e|ma|allora|scusa|ciao|,)$/
const ARTICLE = /^(?:the|my|our|this|that|these|those|your)$/
const SUBJECT = /^(?:it|they|i|we|you|he|she|anyone|anybody|somebody|someone|there)$/

/** Whether the sentence begins as a question does, by the order of its words. */
function beginsAsked({ typed: { tokens }, bits }: Sentence, begin = 0): boolean {
  let at = begin
  while (LEADS.test(tokens[at]?.text ?? '')) at++
  const verb = tokens[at]?.text ?? ''
  const isOther = verb === 'have' && /^(?:i|we|you|they)$/.test(tokens[at + 1]?.text ?? '')
  if (!ASKS.test(verb) && !isOther) return false
  let behind = at + 1
  if (SUBJECT.test(tokens[behind]?.text ?? '')) return true
  while (ARTICLE.test(tokens[behind]?.text ?? '')) behind++
  return bits.some(({ kind, from }) => (kind === 'plant' || kind === 'jar') && from === behind)
}

/** `The gingery one is a 3 out of 5`: how good it is, in words that else ask what something is. */
const isMarked = ({ bits, spans, typed }: Sentence): boolean =>
  bits.some(({ kind }) => kind === 'rating') &&
  spans.every(({ concept, from, to }) => concept !== 'asking' || (from > 0 && textFrom(typed, from, to) === 'is a'))

/** Asked of what was set: `did I ask you to remind me of the lemon on Friday?` */
const ASKS_OF = /^(?:did|do|does|when|what|which|why|how|is|are|have|has|quando|che|cosa|perche|hai|ho|quali)$/
/** A verb as it is said of what is still to be done: `add a vanilla pod on Friday`; `put` may be over. */
const ORDER =
  /^(?:add|pop|drop|stir|pour|move|shift|carry|take|strain|filter|sweeten|bottle|open|give|tip|moving|shifting|taking|adding|putting|straining|filtering|bottling|aggiungi|aggiungo|metti|metto|sposta|sposto|filtra|filtro|togli|tolgo|imbottiglia|imbottiglio)$/

const DAY_OVER = /^(?:yesterday|today|ieri|oggi|last|l altro ieri)\b|\b(?:ago|fa|scors[oa])$|\d/

/** Told of a day that is to come, or only asked to be reminded of: `remind me to add a clove on Sunday`, `move it to the shed on Friday`. */
export function isAhead({ typed: { tokens }, spans, bits }: Sentence): boolean {
  const deed = spans.find(({ concept }) => DEEDS.has(concept))
  if (deed === undefined) return false
  if (spans.some(({ concept, from }) => concept === 'remind' && from < deed.from)) return true
  const first = tokens.findIndex(({ text }) => !/^(?:please|then|and|ok|so|im|i|am|we|are|were|poi|e)$/.test(text))
  return (
    ORDER.test(tokens[first]?.text ?? '') &&
    tokens.slice(first, deed.from).every(({ text }) => !/^(?:[,;.:-]|and|e|then|poi)$/.test(text)) &&
    bits.some(({ kind, text }) => kind === 'date' && !DAY_OVER.test(text.toLowerCase()))
  )
}

/** `Before I went to work`, `prima di uscire`: when it was, behind what was done. */
const AROUND = /^(?:before (?:i|we|it)|prima di|when (?:i|we)|quando|after i|dopo)$/
const GONE =
  /^(?:went|left|came|got|had|was|were|woke|started|set|closed|locked|turned|going|leaving|coming|setting|breakfast|lunch|dinner|supper|work|bed|church|andare|uscire|partire|venire|dormire|pranzo|cena|colazione|sono|siamo|ero|eravamo|tornat\p{L}*|arrivat\p{L}*)$/u

const MEASURED = /^(?:measur|check|test|misur|controll)/

/** Whether it is only meant to be done; what tells of the time of a deed that is told before it means nothing more. */
function isOnlyMeant({ typed, spans }: Sentence, within: (concept: Concept) => boolean): boolean {
  if (!within('hypothesis')) return false
  const deed = spans.find(({ concept }) => DEEDS.has(concept))
  return !spans
    .filter(({ concept }) => concept === 'hypothesis')
    .every(({ from, to }) => {
      const said = typed.tokens.slice(from, to).map(({ text }) => text)
      const behind = typed.tokens.slice(to, to + 2).map(({ text }) => text)
      if (deed === undefined || deed.to > from) return false
      // `Strained it, didn’t measure the strength`.
      if (behind.some((word) => MEASURED.test(word))) return true
      // `Before going to bed`.
      if (said[0] === 'going' && /^(?:before|after)$/.test(typed.tokens[from - 1]?.text ?? '')) return true
      return AROUND.test(said.join(' ')) && behind.some((word) => GONE.test(word))
    })
}

const DOUBT = /^(?:maybe|perhaps|possibly|forse|magari)$/

/** `If I had put`, `yesterday my sister put`: no batch of one's own. */
const OF_NOBODY =
  /^(?:(?:and|but|so|well|e|ma) )?(?:(?:if|se|suppose|supposing|imagine)|(?:(?:on )?\p{L}+ ){0,2}?(?:my|mia|mio) \p{L}+ (?:(?:has|had|once|just|ha|aveva) )?(?:put|laid|started|began|made|messo|fatto))(?!\p{L})/u

/** `Sloes perhaps`, not `maybe 500 g`. */
const isDoubted = ({ typed }: Sentence): boolean =>
  OF_NOBODY.test(wordsFrom(typed)) ||
  typed.tokens.some(
    ({ text }, at) =>
      DOUBT.test(text) && ![typed.tokens[at - 1], typed.tokens[at + 1]].some((by) => by?.kind === 'number'),
  )

/** `not`, `havent`, `non` directly before what was done. */
function isDenied({ typed, spans }: Sentence): boolean {
  const deeds = spans.filter(({ concept }) => DEEDS.has(concept))
  return deeds.some(({ from }) =>
    typed.tokens
      .slice(Math.max(0, from - 3), from)
      .some(({ text }) =>
        /^(?:not|no|nothing|dont|didnt|havent|hasnt|never|non|niente|nulla|mai|without|senza|almost|nearly|quasi)$/.test(
          text,
        ),
      ),
  )
}

/** The clause in which it is told, between stops: `shook it. when do i taste?` is told and asked. */
function clauseOf({ typed, spans }: Sentence): { readonly from: number; readonly to: number } {
  const deed = spans.find(({ concept }) => DEEDS.has(concept))?.from ?? 0
  const isStop = (at: number): boolean => /^[.;!?]$/.test(typed.tokens[at]?.text ?? '')
  let [from, to] = [deed, deed]
  while (from > 0 && !isStop(from - 1)) from--
  while (to < typed.tokens.length && !isStop(to)) to++
  return { from, to }
}

/** Whether it is a question, by its words or its mark. */
export const isAsked = (sentence: Sentence): boolean =>
  sentence.has('asking') || sentence.typed.tokens.some(({ text }) => text === '?') || beginsAsked(sentence)

/** `Posso guidare dopo un limoncello?`: what is asked of the time after something puts nothing off. */
export function mayBe(command: Path, sentence: Sentence): boolean {
  const { typed, spans, has } = sentence
  // `Ho guidato dopo l’assaggio` is over.
  const isOver = typed.tokens.some(
    ({ text }, at) => /^(?:ho|abbiamo|ha|hanno)$/.test(text) && !/^bisogn/.test(typed.tokens[at + 1]?.text ?? ''),
  )
  if (command !== 'jar later' || !(isAsked(sentence) || isOver) || has('remind')) return true
  const isAfterIt = (at: number): boolean =>
    typed.tokens[at]?.text === 'dopo' && (typed.tokens[at + 1]?.kind ?? 'sign') !== 'sign'
  return spans.some(({ concept, from }) => concept === 'put_off' && !isAfterIt(from))
}
