import { type TypedText, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { isPerson } from '../lexicon/people.ts'
import type { Bit, TalkJar } from './bit.ts'
import { jarsNamed, jarsOf, runningAmong } from './jars-of.ts'

/** What is looked through for what was told of jars. */
export interface Told {
  readonly typed: TypedText
  readonly bits: readonly Bit[]
  readonly jars: readonly TalkJar[]
  readonly spans: readonly ConceptSpan[]
}

const spanOf = ({ spans }: Told, concept: Concept): ConceptSpan | undefined =>
  spans.find((span) => span.concept === concept)

const jarsIn = ({ bits, jars }: Told, stages: ReadonlySet<TalkJar['stage']>): readonly TalkJar[] => {
  const running = runningAmong(jars)
  const named = bits.filter(({ kind }) => kind === 'plant' || kind === 'jar').flatMap((bit) => jarsOf(bit, running))
  return [...new Set(named)].filter(({ stage }) => stages.has(stage))
}

const IN_BOTTLES: ReadonlySet<TalkJar['stage']> = new Set(['resting', 'ready'])
const LIQUID: ReadonlySet<TalkJar['stage']> = new Set(['strained', 'sweetened', 'resting'])
const POURED: ReadonlySet<TalkJar['stage']> = new Set(['steeping', 'strained', 'sweetened'])
const OTHERS = new Set<Bit['kind']>(['spirit', 'sugar', 'water', 'strength', 'rating', 'sweetness'])
const PART = /^(?:half|thirds?|quarters?|meta|terzo|quarto)$/
const ONE_OF = /\b(?:one|another) of (?:the|my|our|them|those|these)\b|\buna? (?:delle|dei|di quelle)\b/
const COUNTED = /^(?:a|an|one|another|un|una|uno)$/

/** Rooms and shelves of one’s own, where nobody is given anything. */
const OWN_ROOM =
  /^(?:cellar|basement|pantry|larder|fridge|freezer|cupboard|shelf|kitchen|attic|loft|garage|shed|window|windowsill|sink|table|counter|cantina|frigo|dispensa|ripiano|scaffale|cucina)$/

/** `Took a bottle down to the cellar`: it stands somewhere else, and nobody has it. */
const isMovedOnly = ({ typed }: Told, { to }: ConceptSpan): boolean =>
  typed.tokens.slice(to, to + 3).some(({ text }) => OWN_ROOM.test(text)) &&
  !typed.tokens.slice(to).some(({ text }) => isPerson(text))

/** `Took a bottle of raspberry round to the neighbours`: bottles of a jar that is in bottles, and a word of handing on. */
function handedOn(told: Told): readonly ConceptSpan[] {
  const { bits, typed } = told
  const verb = spanOf(told, 'handed_on')
  const isCounted =
    bits.some(({ kind }) => kind === 'bottles' || kind === 'bare') ||
    bits.some(({ kind, from }) => kind === 'plant' && COUNTED.test(typed.tokens[from - 1]?.text ?? '')) ||
    ONE_OF.test(wordsFrom(typed))
  const isOther = bits.some(({ kind }) => OTHERS.has(kind) || kind === 'volume' || kind === 'mass')
  if (verb === undefined || !isCounted || isOther || jarsIn(told, IN_BOTTLES).length !== 1) return []
  return isMovedOnly(told, verb) ? [] : [{ ...verb, concept: 'gave_away' }]
}

/** `Kept back 300 ml of the orange in a jar of its own`: a part of a jar, and another vessel for it. */
function putApart(told: Told): readonly ConceptSpan[] {
  const { bits, typed } = told
  const other = spanOf(told, 'other_vessel')
  const isPart = bits.some(({ kind }) => kind === 'volume') || typed.tokens.some(({ text }) => PART.test(text))
  const isOther = bits.some(({ kind }) => OTHERS.has(kind))
  if (other === undefined || !isPart || isOther || jarsIn(told, POURED).length !== 1) return []
  return [{ ...other, concept: 'divided' }]
}

const INTO = /^(?:into|to|in|nel|nella|nello|nell|al|allo|alla)$/
const POURS =
  /^(?:put|tipped|poured|stirred|added|went|gone|joined|joins|share|shares|became|become|got|mixed|blended|emptied|married|made|are|is|live|lives|versat[oaie]|mess[oaie]|aggiunt[oaie]|unit[oaie]|mescolat[oaie]|stanno|sono|e)$/

/** Between the names of two that are one now. */
const JOINED = /^(?:joined|married)$/

/** `Stirred the orange into the lemon`: two jars that steep no more, one in the other or both in one. */
function madeOne(told: Told): readonly ConceptSpan[] {
  const { bits, jars, typed } = told
  const [one, other, another] = jarsNamed(bits, jars)
  if (one === undefined || other === undefined || another !== undefined) return []
  const isLiquid = LIQUID.has(one.jar.stage) && LIQUID.has(other.jar.stage)
  const isOther = bits.some(
    ({ kind, value }) => kind !== 'plant' && kind !== 'jar' && kind !== 'date' && !(kind === 'bare' && value === 1),
  )
  const verb = typed.tokens.findIndex(({ text }) => POURS.test(text))
  const isInto = typed.tokens.slice(one.bit.to, other.bit.from).some(({ text }) => INTO.test(text))
  const isJoined = typed.tokens.slice(one.bit.to, other.bit.from).some(({ text }) => JOINED.test(text))
  const isOne = isInto || isJoined || spanOf(told, 'one_vessel') !== undefined
  if (!isLiquid || isOther || verb === -1 || !isOne) return []
  return [{ concept: 'united', from: verb, to: verb + 1 }]
}

/** What is told of bottles, of a part of a jar, and of two jars, by what they are. */
export const toldOfPart = (told: Told): readonly ConceptSpan[] => [
  ...handedOn(told),
  ...putApart(told),
  ...madeOne(told),
]
