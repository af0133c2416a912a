import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { measureSaid } from '../../../core/quantity/said/measure-said.ts'
import { type NumberSaid, numberSaid } from '../../../core/quantity/said/number-said.ts'
import { type ConceptSpan, wordSet } from '../lexicon/concepts.ts'
import type { Lexicon } from '../lexicon/lexicon.ts'
import { type Bit, bit, type TalkJar } from './bit.ts'
import { cupsOfSize, ouncesOfProof, ouncesStrained } from './fluid-size.ts'
import { countable, thingAt } from './things.ts'
import { stoneAt, unitAlone } from './unit-words.ts'

export interface Around {
  readonly typed: TypedText
  readonly lexicon: Lexicon
  readonly spans: readonly ConceptSpan[]
  readonly jars: readonly TalkJar[]
  readonly today: CalendarDay
  /** A bottle of spirit whose size was not said, ml. */
  readonly spiritBottleMl: number
}

export const OF = new Set(['of', 'ae', 'di', 'd', 'da', 'x', 'del', 'della'])

const PER_LITRE = new Set(['per', 'al', 'a', 'each', 'every', 'the', 'to'])

const ARTICLE = /^(?:the|a|each|every|ogni)$/

const LITRE = new Set(['litre', 'liter', 'l', 'litro', 'lt'])

/** `4/5`, `4 out of 5`, `four stars`. */
export function ratingAt({ typed }: Around, at: number): Bit | null {
  const whole = /^[1-5]$/.test(wordAt(typed, at))
    ? { value: Number(wordAt(typed, at)), text: wordAt(typed, at), next: at + 1 }
    : null
  const number = whole ?? numberSaid(typed, at, NONE)
  if (number === null || !Number.isInteger(number.value) || number.value < 1 || number.value > 5) return null
  const words = [0, 1, 2].map((more) => wordAt(typed, number.next + more))
  const of =
    words[0] === '/' || words[0] === 'su' ? 1 : words[0] === 'out' && words[1] === 'of' ? 2 : words[0] === 'of' ? 1 : 0
  if (of > 0 && /^(?:5|five|cinque)$/.test(words[of] ?? '')) {
    const next = number.next + of + 1
    return bit(
      'rating',
      at,
      /^(?:stars?|stelle)$/.test(wordAt(typed, next)) ? next + 1 : next,
      number.value,
      number.text,
    )
  }
  // `Five star anise` are a spice.
  if (/^(?:anise|aniseed|anice|anis)$/.test(words[1]!)) return null
  if (/^(?:stars?|stelle|stella)$/.test(words[0]!) && isOfStars(typed, at)) return null
  if (/^(?:stars?|stelle|stella)$/.test(words[0]!)) return bit('rating', at, number.next + 1, number.value, number.text)
  return null
}

/** `Plum and star anise, 1 kg plums 3 stars`: of the spice that was named. */
const isOfStars = ({ tokens }: Around['typed'], at: number): boolean =>
  tokens.slice(0, at).some(({ text }) => /^(?:anise|anice|badiana)$/.test(text))

export const NONE: ReadonlySet<string> = new Set()

/** An amount with its unit; grams of sugar to a litre are a sweetness. */
export function measureAt({ typed, lexicon, spans }: Around, at: number): Bit | null {
  const alone =
    unitAlone(typed, at) ??
    stoneAt(typed, at) ??
    packsAt({ typed, lexicon }, at) ??
    cupsOfSize(typed, lexicon, at) ??
    ouncesOfProof(typed, at) ??
    ouncesStrained(typed, spans, at)
  if (alone !== null) return alone
  const measure = measureSaid(typed, at, countable(lexicon))
  if (measure === null) return null
  const { kind, value, numberText, unitText, next } = measure
  const text = `${numberText} ${unitText}`.trim()
  if (kind === 'mass') {
    const ofSugar = thingAt(typed.tokens, OF.has(wordAt(typed, next)) ? next + 1 : next, lexicon)
    const behind = ofSugar?.kind === 'sugar' ? ofSugar.next : next
    // `250 grams to the litre`.
    const from =
      /^(?:to|for|per)$/.test(wordAt(typed, behind)) && ARTICLE.test(wordAt(typed, behind + 1)) ? behind + 1 : behind
    const isPer = PER_LITRE.has(wordAt(typed, from)) || wordAt(typed, from) === '/'
    if (isPer && LITRE.has(wordAt(typed, from + 1))) return bit('sweetness', at, from + 2, value, `${value} g/L`)
  }
  if (kind === 'sweetness') return bit('sweetness', at, next, value, `${Number(value.toPrecision(6))} g/L`)
  if (kind === 'strength') {
    const isDegrees = measure.unit.key === 'degrees'
    return bit(
      'strength',
      at,
      next,
      value,
      isDegrees || measure.unit.key === 'percent' || measure.unit.key === 'vol' ? `${numberText}%` : text,
    )
  }
  return bit(kind, at, next, value, text)
}

export const isGravity = (text: string): boolean => /^(?:0[.,]9|1[.,][01])\d{1,2}$/.test(text)

/** `3 punnets of 150 g`: what they weigh together. */
function packsAt({ typed, lexicon }: Pick<Around, 'typed' | 'lexicon'>, at: number): Bit | null {
  const count = numberSaid(typed, at, NONE)
  if (count === null || !wordSet(lexicon.loose).has(wordAt(typed, count.next))) return null
  const isOf = /^(?:of|da|di|x|at|each)$/.test(wordAt(typed, count.next + 1))
  const each = isOf && Number.isInteger(count.value) ? measureSaid(typed, count.next + 2, NONE) : null
  if (each === null || each.kind !== 'mass') return null
  const grams = count.value * each.value
  return bit('mass', at, each.next, grams, `${grams} g`)
}

/** Sweetnesses that a bare number may be, g/L. */
const SWEET = { least: 50, most: 600 } as const

/** `I want 30 and 150 a litre`: of sugar, where nothing else is behind it and no price is told. */
export function sweetnessPerLitre(
  { typed, spans, lexicon }: Around,
  at: number,
  { value, text, next: end }: NumberSaid,
): Bit | null {
  // `260 sugar per litre`.
  const sugar = thingAt(typed.tokens, OF.has(wordAt(typed, end)) ? end + 1 : end, lexicon)
  const next = sugar?.kind === 'sugar' ? sugar.next : end
  const isPer = PER_LITRE.has(wordAt(typed, next)) || wordAt(typed, next) === '/'
  const isLitre = isPer && LITRE.has(wordAt(typed, next + 1))
  if (!isLitre || value < SWEET.least || value > SWEET.most || OF.has(wordAt(typed, next + 2))) return null
  if (spans.some(({ concept }) => concept === 'costs')) return null
  return bit('sweetness', at, next + 2, value, `${text} g/L`)
}
