import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import { isPerson } from '../lexicon/people.ts'

/** `I’ve been given two bottles`, `who gave me this`: it came to whoever tells it. */
const isReceived = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.text === 'given' && /^(?:been|was|were|got|being|get)$/.test(tokens[at - 1]?.text ?? '')

/** `I need six bottles to give away`: what they are for. */
const isFor = (tokens: readonly Token[], at: number): boolean =>
  /^(?:to|da|per)$/.test(tokens[at - 1]?.text ?? '') && !/^(?:went|going|gone)$/.test(tokens[at - 2]?.text ?? '')

/** `Strength 27`, `gradazione: 30`: told, not asked. */
const isTold = (tokens: readonly Token[], to: number): boolean =>
  /^(?:strength|abv|gradazione|finale|gradi)$/.test(tokens[to - 1]?.text ?? '') &&
  (tokens[to]?.text === ':' ? tokens[to + 1] : tokens[to])?.kind === 'number'

/** `It got a 4` is a mark, `got a basket of pears` is none. */
const isMark = (tokens: readonly Token[], { from, to }: ConceptSpan): boolean =>
  tokens[from]!.text !== 'got' ||
  tokens[to - 1]!.text !== 'a' ||
  tokens[to]?.kind === 'number' ||
  MARKS.test(tokens[to]?.text ?? '')

/** `Hot syrup`, `a hot scrub`: how warm it is, no taste. */
const OF_HEAT = /^(?:syrup|water|sugar|scrub|tap|room|shed|day|days|weather|summer|wash|rinse|jar|bottle|stuff)$/
const HOT: ReadonlySet<string> = new Set(['harsh', 'spicy'])

const MARKS = /^(?:one|two|three|four|five|solid|strong|weak|good|full|low|high)$/

const POLITE = /^(?:would|could|can|will) (?:you|u|ya)(?: (?:please|pls|plz|kindly))?$/
const PLEASE = /^(?:please|pls|plz|kindly|mate|love|thanks|ta|[?.!])$/

/** `Nudge me on friday, would you`: it is asked for, nothing is asked. */
function isPoliteEnd(tokens: readonly Token[], { from, to }: ConceptSpan): boolean {
  const said = tokens.slice(from, to).map(({ text }) => text)
  return from > 0 && POLITE.test(said.join(' ')) && tokens.slice(to).every(({ text }) => PLEASE.test(text))
}

const AWAY: ReadonlySet<string> = new Set(['be_quiet', 'away', 'until'])

const THEY = /^(?:she|shes|he|hes|they|theyre|lei|lui|loro)$/

const isOfOther = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some(({ text }) => /^(?:away|via|off|gone)$/.test(text)) &&
  tokens.slice(Math.max(0, from - 2), from).some(({ text }) => isPerson(text) || THEY.test(text))

const ON_SKIN = /^(?:hives|rash|spots|lumps|bumps|blotches|welts)$/

/** `My aunt comes out in hives`, `he came out of rehab`: somebody does, nothing comes out of a jar. */
const isOfSomebody = (tokens: readonly Token[], { from, to }: ConceptSpan): boolean =>
  /^c[ao]mes?$/.test(tokens[from]!.text) &&
  (isPerson(tokens[from - 1]?.text ?? '') ||
    THEY.test(tokens[from - 1]?.text ?? '') ||
    (tokens[to]?.text === 'in' && tokens.slice(to + 1, to + 4).some(({ text }) => ON_SKIN.test(text))))

/** `L’ho scosso` is told; only with its mark, or with `già`, it may be asked whether it was. */
const isToldOfIt = (tokens: readonly Token[], { from, to }: ConceptSpan): boolean =>
  to - from === 2 &&
  tokens[to - 1]!.text === 'ho' &&
  tokens[to]?.text !== 'gia' &&
  !tokens.some(({ text }) => text === '?')

const TELLING = /^(?:tell|say|mention|log|note|record|write|report)$/

/** `Forgot to tell you, …`, `by the way, …`: told late, and neither thought of nor for a day. */
const isOnlyLed = (tokens: readonly Token[], { concept, from, to }: ConceptSpan): boolean =>
  concept === 'hypothesis'
    ? tokens[to - 1]!.text === 'to' && TELLING.test(tokens[to]?.text ?? '')
    : concept === 'by_day' && to === from + 1 && tokens[to]?.text === 'the' && tokens[to + 1]?.text === 'way'

const isCounted = (tokens: readonly Token[], { to }: ConceptSpan): boolean =>
  /^(?:call|say)$/.test(tokens[to - 2]?.text ?? '') && tokens[to]?.kind === 'number'

const WELL =
  /^(?:ok|okay|okey|fine|good|well|right|clear|quiet|normal|calm|grand|dandy|looks|looking|seems|bene|regolare|tranquillo|posto|apposto)$/

/** `All ok`, `tutto bene`: how it stands, not how many jars. */
const isWell = (tokens: readonly Token[], { to }: ConceptSpan): boolean => {
  const next = tokens[to]?.text === 'a' ? tokens[to + 1] : tokens[to]
  return /^(?:all|everything|tutto)$/.test(tokens[to - 1]!.text) && WELL.test(next?.text ?? '')
}

/** `Four out of five, I should say`: so it is held to be. */
const isSaying = (tokens: readonly Token[], { from, to }: ConceptSpan): boolean =>
  /^(?:should|would|shall|must|d)$/.test(tokens[to - 1]!.text) &&
  tokens[from - 1]?.text === 'i' &&
  /^(?:say|think|guess|reckon|imagine)$/.test(tokens[to]?.text ?? '')

const HOUR = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|1[0-2]|[1-9])$/

/** `Half past seven`, `at half seven`: an hour, and half of nothing. */
const isHour = (tokens: readonly Token[], { from, to }: ConceptSpan): boolean =>
  tokens[to]?.text === 'past' ||
  (HOUR.test(tokens[to]?.text ?? '') &&
    /^(?:at|by|around|about|for|until|till|after|before)$/.test(tokens[from - 1]?.text ?? ''))

/** Said behind `really`. */
const HOW_MUCH =
  /^(?:too|far|way|very|so|quite|rather|much|not|sweet|strong|weak|dry|bitter|harsh|sickly|good|nice|lovely|bad|like|love|enjoy)$/

/** The phrases that say what they seem to, by what stands before and behind them. */
export const spansMeant = (spans: readonly ConceptSpan[], tokens: readonly Token[]): readonly ConceptSpan[] =>
  spans.filter((span) => {
    const { concept, from, to } = span
    if (isOnlyLed(tokens, span)) return false
    if (concept === 'all_of_them' && isWell(tokens, span)) return false
    if (concept === 'halve' && isHour(tokens, span)) return false
    if (concept === 'hypothesis' && isSaying(tokens, span)) return false
    // `I have take out the pieces`: told, nothing is wished away.
    if (concept === 'without' && /^(?:have|has|had|ive|just)$/.test(tokens[from - 1]?.text ?? '')) return false
    // `It’s really too sweet`: how much so, and not what it is in truth.
    if (
      (concept === 'true_strength' || concept === 'why') &&
      /^(?:really|truly)$/.test(tokens[from]!.text) &&
      HOW_MUCH.test(tokens[to]?.text ?? '')
    )
      return false
    // `Again, but better`: nothing is compared.
    if (
      concept === 'better_of' &&
      tokens[to - 1]!.text === 'better' &&
      /^(?:but|only|just|even)$/.test(tokens[from - 1]?.text ?? '')
    )
      return false
    // `A jam jar`: what it is in, not how it runs.
    if (concept === 'jelly' && /^(?:jars?|jarful|lids?|pots?)$/.test(tokens[to]?.text ?? '')) return false
    // `For Burns Night`: a feast.
    if (tokens[to - 1]!.text === 'burns' && tokens[to]?.text === 'night') return false
    // `It stands in the dark` tells no colour.
    if (
      concept === 'dark' &&
      tokens[from]!.text === 'dark' &&
      /^(?:the|total|complete|pitch)$/.test(tokens[from - 1]?.text ?? '')
    )
      return false
    // `A bag of lemons, call it 12`: counted, not named.
    if ((concept === 'renamed' || concept === 'call_it') && isCounted(tokens, span)) return false
    // `No more than thirty per cent` asks for no peace.
    if (concept === 'be_quiet' && tokens[to]?.text === 'than') return false
    // `Sa di medicina e basta`: of nothing else.
    if (concept === 'be_quiet' && tokens[from]!.text === 'basta' && to === from + 1 && tokens[from - 1]?.text === 'e')
      return false
    // `My wife’s away till Thursday`: whoever else is away wants no peace.
    if (AWAY.has(concept) && isOfOther(tokens, from, to)) return false
    if (concept === 'took_out' && isOfSomebody(tokens, span)) return false
    // `Give me a shout to shake it`: asked for, not done.
    if (concept === 'shook' && tokens[to - 1]!.text === 'shake' && tokens[to - 2]?.text === 'to') return false
    // `Took a bottle down to the cellar`: carried there, not drunk.
    if (
      concept === 'opened' &&
      tokens[to - 1]!.text === 'down' &&
      /^(?:to|in|into|at|the)$/.test(tokens[to]?.text ?? '')
    )
      return false
    if (concept === 'gave_away') return !(isReceived(tokens, from) || isFor(tokens, from))
    // `Oggi non ce la faccio`: told.
    if (concept === 'asking' && tokens[to - 1]!.text === 'faccio' && tokens[from - 1]?.text === 'non') return false
    // `Rum is a tenner`: told.
    if (concept === 'asking')
      return !isPoliteEnd(tokens, span) && !/^(?:fiver|tenner|quid)$/.test(tokens[to]?.text ?? '')
    if (concept === 'show_jar') return !isToldOfIt(tokens, span)
    if (HOT.has(concept) && tokens[from]!.text === 'hot') return !OF_HEAT.test(tokens[to]?.text ?? '')
    if (concept === 'how_strong') return !isTold(tokens, to)
    return concept !== 'tasted' || isMark(tokens, span)
  })
