import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import type { Bit } from './bit.ts'
import { isOver, jarsNamed } from './jars-of.ts'
import { liftedOut } from './lifted-out.ts'
import { putInto } from './put-into.ts'
import { sugarInto } from './sugar-into.ts'
import { type Told, toldOfPart } from './told-of-part.ts'

/** Said behind a jar's name, with how much there is: what steeped in it came out. */
const OUT = /^(?:out|off|done|fuori|tolto|tolta|tolti|tolte|fatto|fatta)$/
const BETWEEN_OUT = /^(?:is|are|s|now|all|just|e|ora|jar|one)$/
const ON = /^(?:in|on|under|behind|at|up|down|inside|next|beside|by|above|below|near|gone|sat|:)$/
const OTHERS = new Set<Bit['kind']>(['spirit', 'sugar', 'water'])
/** How far behind its jar a place is told. */
const MOST_AWAY = 5

/** `Sloe's`: it is, not several of it. */
const isPossessive = ({ from, to }: Token, text: string): boolean => /['’]s$/i.test(text.slice(from, to))

/** Nobody counts so many, and no strength is so large: ml. */
const LEAST_ML = 100

const isMeasured = ({ kind, value }: Bit): boolean => kind === 'volume' || (kind === 'bare' && value >= LEAST_ML)

/** `Lemon out, 920 ml at 86%`: a jar that steeps, and how much came out of it. */
function cameOff({ typed: { tokens, text }, bits, jars }: Told): readonly ConceptSpan[] {
  return jarsNamed(bits, jars).flatMap(({ jar, bit }) => {
    // Of a spirit, sugar or water that is named the amount is another.
    if (jar.stage !== 'steeping' || bits.some(({ kind }) => OTHERS.has(kind))) return []
    let at = bit.to
    while (at < bit.to + 2 && BETWEEN_OUT.test(tokens[at]?.text ?? '')) at++
    // `The ginger is off` may be spoilt.
    const isSpoilt = (at > bit.to || isPossessive(tokens[bit.to - 1]!, text)) && tokens[at]?.text === 'off'
    const isOut = !isSpoilt && OUT.test(tokens[at]?.text ?? '') && !/^(?:of|with|by)$/.test(tokens[at + 1]?.text ?? '')
    const measured = bits.find((one) => isMeasured(one) && one.from > at)
    const isBetween = bits.some(({ from, kind }) => kind === 'plant' && from > at && from < (measured?.from ?? 0))
    return isOut && measured !== undefined && !isBetween ? [{ concept: 'strained', from: at, to: at + 1 } as const] : []
  })
}

/** Said between a jar that was strained and the bottles that it went into. */
const FILLED = /^(?:is|are|s|all|now|done|gone|went|finished|up|off|e|tutto|ora|fatt[oa]|finit[oa]|andat[oa])$/
const IN = /^(?:in|into|to|[,:])$/

/** `Lemon done in 5 x 500 ml`: a jar that is past its fruit, and the bottles it is in. */
function wentInto({ typed: { tokens }, bits, jars }: Told): readonly ConceptSpan[] {
  return jarsNamed(bits, jars).flatMap(({ jar, bit }) => {
    if (jar.stage !== 'strained' && jar.stage !== 'sweetened') return []
    if (bits.some(({ kind }) => OTHERS.has(kind) || kind === 'strength' || kind === 'sweetness')) return []
    let at = bit.to
    while (FILLED.test(tokens[at]?.text ?? '')) at++
    const isIn = at > bit.to && IN.test(tokens[at]?.text ?? '')
    const isFilled = bits.some(({ kind, from }) => kind === 'bottles' && from === at + 1)
    return isIn && isFilled ? [{ concept: 'bottled', from: bit.to, to: at } as const] : []
  })
}

/** `Got 930 ml out of the lemon`: so much came out of a jar that steeps. */
function gotOut({ typed: { tokens }, bits, jars }: Told): readonly ConceptSpan[] {
  return jarsNamed(bits, jars).flatMap(({ jar, bit }) => {
    if (jar.stage !== 'steeping') return []
    const measured = bits.findLast((one) => isMeasured(one) && one.to <= bit.from)
    const between = tokens.slice(measured?.to ?? 0, bit.from).map(({ text }) => text)
    const isFrom = /^(?:out of|from|off|dal|dallo|dalla|dai|dalle) ?(?:the|my|our|l)?$/.test(between.join(' '))
    const got = tokens.slice(Math.max(0, (measured?.from ?? 0) - 3), measured?.from ?? 0)
    const isGot = got.some(({ text }) => /^(?:got|had|came|ottenuto|ricavato|uscito|usciti)$/.test(text))
    if (measured === undefined || !isFrom || !isGot) return []
    return [{ concept: 'strained', from: measured.to, to: bit.from } as const]
  })
}

/** `Sloe's on the top shelf`: a jar, and the place it is in, with no other word of it. */
function isIn({ typed: { tokens, text }, bits, jars, spans }: Told): readonly ConceptSpan[] {
  return jarsNamed(bits, jars).flatMap(({ bit }) => {
    const isShort = isPossessive(tokens[bit.to - 1]!, text)
    const next = tokens[bit.to]?.text === 's' ? bit.to + 1 : bit.to
    const place = spans.find(({ concept, from }) => concept === 'place_word' && from > next && from - next <= MOST_AWAY)
    const isNamed = tokens[next]?.text === ':'
    const isPlaced = (isShort || isNamed) && ON.test(tokens[next]?.text ?? '') && place !== undefined
    return isPlaced ? [{ concept: 'stands', from: next, to: next + 1 } as const] : []
  })
}

/** Amounts: a question that has one is no look at a jar. */
const NUMBERS = new Set<Bit['kind']>([
  'volume',
  'mass',
  'strength',
  'sweetness',
  'bare',
  'bottles',
  'gravity',
  'rating',
])

/** What else may be asked of a plant or a liquid. */
const OTHERWISE_ASKED: readonly Concept[] = [
  ...(['per_litre', 'may_i', 'have', 'what_can_i_make', 'whats_ripe', 'spent', 'costs', 'cost_me'] as const),
  ...(['remind', 'to_buy', 'would_it', 'better_of', 'keeps_long', 'print_label'] as const),
]

/** `How's the ginger coming along?`: one jar that is named, and how it stands with it or since when. */
function askedOf({ typed: { tokens }, bits, jars, spans }: Told): readonly ConceptSpan[] {
  const says = (concept: Concept): boolean => spans.some((span) => span.concept === concept)
  const state = spans.find(({ concept }) => concept === 'state_of')
  const isAsked = says('asking') || tokens.at(-1)?.text === '?'
  const isOfJar = jarsNamed(bits, jars).length === 1 && bits.filter(({ kind }) => kind === 'plant').length <= 1
  // `When can I drink it` asks for no leave.
  const isBeside = (concept: Concept): boolean =>
    spans.some(
      (span) => span.concept === concept && !(state !== undefined && state.from <= span.from && span.from < state.to),
    )
  const isMuch = says('how_much') && !says('how_long') && !says('how_strong')
  const isOther =
    isMuch || bits.some(({ kind }) => NUMBERS.has(kind) || OTHERS.has(kind)) || OTHERWISE_ASKED.some(isBeside)
  if (state === undefined || !isAsked || !isOfJar || isOther) return []
  return [{ ...state, concept: 'asked_of_jar' }]
}

/** Where one of these is said, the name alone tells no straining. */
const KNOWN = [
  'strained',
  'bottled',
  'filtered',
  'sweetened',
  'divided',
  'threw_out',
  'emptied',
  'smell',
  'mould',
  'vinegar',
  'denial',
] as const

/** What is told of a jar by its name and what stands beside it, where no word of a deed does. */
export function toldOfJar(told: Told): readonly ConceptSpan[] {
  if (told.jars.every(isOver)) return []
  const says = (concept: ConceptSpan['concept']): boolean => told.spans.some((span) => span.concept === concept)
  if (says('asking') || told.typed.tokens.at(-1)?.text === '?') return askedOf(told)
  if (says('hypothesis') || says('wish')) return []
  const isKnown = KNOWN.some(says)
  return [
    ...(isKnown ? [] : [...cameOff(told), ...gotOut(told)]),
    ...(says('bottled') || says('denial') ? [] : wentInto(told)),
    ...(says('stands') ? [] : isIn(told)),
    ...liftedOut(told.typed.tokens, told.bits),
    ...(says('denial') || says('started') ? [] : putInto(told)),
    ...(says('started') ? [] : sugarInto(told)),
    ...(says('denial') ? [] : toldOfPart(told)),
  ]
}
