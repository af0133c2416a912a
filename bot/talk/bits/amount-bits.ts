import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { measureSaid } from '../../../core/quantity/said/measure-said.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { type ConceptSpan, wordSet } from '../lexicon/concepts.ts'
import type { Lexicon } from '../lexicon/lexicon.ts'
import { type Bit, bit, type TalkJar } from './bit.ts'
import { countable, thingAt } from './things.ts'
import { unitAlone } from './unit-words.ts'

export interface Around {
  readonly typed: TypedText
  readonly lexicon: Lexicon
  readonly spans: readonly ConceptSpan[]
  readonly jars: readonly TalkJar[]
  readonly today: CalendarDay
}

export const OF = new Set(['of', 'di', 'd', 'da', 'x', 'del', 'della'])

const PER_LITRE = new Set(['per', 'al', 'a', 'each', 'every', 'the', 'to'])

const LITRE = new Set(['litre', 'liter', 'l', 'litro', 'lt'])

/** A bottle where nothing is said of its size, ml: of spirit as it is sold, and as a liqueur is filled. Common practice. */
export const SPIRIT_BOTTLE_ML = 700

/** `6 bottles`, `5 x 500 ml`, `3 bottles of 500`; null where none begin. */
export function bottlesAt(around: Around, at: number): Bit | null {
  const { typed, lexicon } = around
  const things = countable(lexicon)
  const words = wordSet(lexicon.bottles)
  const count = numberSaid(typed, at, things)
  if (count === null) return bottleAlone(around, at)
  const litres = litreBottles(around, at)
  if (litres !== null) return litres
  const isTimes = wordAt(typed, count.next) === 'x'
  if (!isTimes && !words.has(wordAt(typed, count.next))) return sizeFirst(around, at)
  let next = count.next + 1
  if (isTimes && count.isWord) return null
  const from = OF.has(wordAt(typed, next)) ? next + 1 : next
  const size = measureSaid(typed, from, things)
  if (size !== null && size.kind === 'volume') {
    next = words.has(wordAt(typed, size.next)) ? size.next + 1 : size.next
    const text = `${count.text} x ${size.numberText} ${size.unitText}`
    return bit('bottles', at, next, count.value * size.value, text, { count: count.value })
  }
  const bare = from > next || isTimes ? numberSaid(typed, from, things) : null
  if (bare !== null && !bare.isWord && bare.value >= 50)
    return bit('bottles', at, bare.next, count.value * bare.value, `${count.text} x ${bare.text} ml`, {
      count: count.value,
    })
  if (isTimes) return null
  const isHalf = count.value === 0.5
  return bit('bottles', at, next, count.value, isHalf ? '1 x 350 ml' : count.text, {
    count: count.value,
    isSizeAssumed: true,
  })
}

/** `Bottle of gin 41`: one, of a spirit; not `per bottle of gin`. */
function bottleAlone({ typed, lexicon }: Around, at: number): Bit | null {
  if (!/^(?:bottle|btl|bottiglia)$/.test(wordAt(typed, at))) return null
  if (/^(?:per|each|every|any|which|a|ogni|che|quale)$/.test(wordAt(typed, at - 1))) return null
  const isOf = OF.has(wordAt(typed, at + 1))
  const thing = isOf ? thingAt(typed.tokens, at + 2, lexicon) : null
  if (thing?.kind !== 'spirit') return null
  return bit('bottles', at, at + 1, 1, '1', { count: 1, isSizeAssumed: true })
}

/** `four litre bottles`: four of a litre each. */
function litreBottles({ typed, lexicon }: Around, at: number): Bit | null {
  const count = numberSaid(typed, at, countable(lexicon))
  if (count === null || !Number.isInteger(count.value) || count.value < 2) return null
  const isLitre = /^(?:litre|liter)$/.test(wordAt(typed, count.next))
  if (!isLitre || !/^(?:bottles|btls)$/.test(wordAt(typed, count.next + 1))) return null
  const text = `${count.text} x 1 l`
  return bit('bottles', at, count.next + 2, count.value * 1000, text, { count: count.value })
}

/** `a 70cl bottle`, `two 500 ml bottles`. */
export function sizeFirst({ typed, lexicon }: Around, at: number): Bit | null {
  const words = wordSet(lexicon.bottles)
  const things = countable(lexicon)
  const count = numberSaid(typed, at, things)
  const isCounted = count !== null && measureSaid(typed, count.next, things) !== null
  const from =
    count === null || !(count.isWord || isCounted)
      ? /^(?:a|an|un|una|my|the)$/.test(wordAt(typed, at))
        ? at + 1
        : at
      : count.next
  const several = count !== null && (count.isWord || isCounted) ? count : null
  const size = measureSaid(typed, from, things)
  if (size === null || size.kind !== 'volume' || !words.has(wordAt(typed, size.next))) return null
  const number = several?.value ?? 1
  return bit('bottles', at, size.next + 1, number * size.value, `${number} x ${size.numberText} ${size.unitText}`, {
    count: number,
  })
}

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
  if (/^(?:stars?|stelle|stella)$/.test(words[0]!)) return bit('rating', at, number.next + 1, number.value, number.text)
  return null
}

export const NONE: ReadonlySet<string> = new Set()

/** An amount with its unit; grams of sugar to a litre are a sweetness. */
export function measureAt({ typed, lexicon }: Around, at: number): Bit | null {
  const alone = unitAlone(typed, at)
  if (alone !== null) return alone
  const measure = measureSaid(typed, at, countable(lexicon))
  if (measure === null) return null
  const { kind, value, numberText, unitText, next } = measure
  const text = `${numberText} ${unitText}`.trim()
  if (kind === 'mass') {
    const ofSugar = thingAt(typed.tokens, OF.has(wordAt(typed, next)) ? next + 1 : next, lexicon)
    const from = ofSugar?.kind === 'sugar' ? ofSugar.next : next
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
