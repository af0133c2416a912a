import type { TypedText } from '../../../core/quantity/read/tokens.ts'
import { type ConceptSpan, wordSet } from '../lexicon/concepts.ts'
import type { Lexicon } from '../lexicon/lexicon.ts'
import type { Bit, Role } from './bit.ts'

interface Around {
  readonly typed: TypedText
  readonly lexicon: Lexicon
  readonly spans: readonly ConceptSpan[]
}

/** A bit while roles are given. */
type Open = { -readonly [Key in keyof Bit]: Bit[Key] }

const STRENGTH = { least: 5, most: 97.2 } as const

const AMOUNTS = new Set<Bit['kind']>(['volume', 'mass', 'bare', 'bottles'])
const THINGS = new Set<Bit['kind']>(['plant', 'spirit', 'sugar', 'water'])

const isStrengthLike = ({ kind, value }: Bit): boolean =>
  kind === 'bare' && value >= STRENGTH.least && value <= STRENGTH.most

/** The words between two places. */
const wordsOf = ({ typed }: Around, from: number, to: number): readonly string[] =>
  typed.tokens.slice(from, to).map(({ text }) => text)

const STOP = /^[.;!?]$/

/** Whether only words that join stand between an amount and a thing. */
const joins = (around: Around, from: number, to: number): boolean => {
  const between = wordSet(around.lexicon.between)
  const loose = wordSet(around.lexicon.loose)
  return wordsOf(around, from, to).every((word) => between.has(word) || loose.has(word) || word === '-' || word === ')')
}

const roleOf = (kind: Bit['kind']): Role | null =>
  kind === 'plant' ? 'of_plant' : kind === 'sugar' ? 'of_sugar' : kind === 'water' ? 'of_water' : kind === 'spirit' ? 'of_spirit' : null

/** An amount directly before what it is of, then one directly behind it: `300 g raspberries`, `raspberries, 300g`. */
function attach(around: Around, bits: Open[]): void {
  bits.forEach((bit, at) => {
    if (!AMOUNTS.has(bit.kind) || bit.with !== undefined) return
    let to = at + 1
    // `70 cl 40% vodka`, `a litre of 95 alcohol`.
    while (bits[to] !== undefined && (bits[to]!.kind === 'strength' || isStrengthLike(bits[to]!)) && bit.kind !== 'bare' && joins(around, bits[to - 1]!.to, bits[to]!.from)) to++
    const next = bits[to]
    if (next === undefined || !THINGS.has(next.kind) || next.with !== undefined) return
    if (!joins(around, bits[to - 1]!.to, next.from)) return
    if (next.kind === 'plant' && to > at + 1) return
    if (!belongs(bit, next.kind)) return
    const loose = wordsOf(around, bit.to, next.from).find((word) => wordSet(around.lexicon.loose).has(word))
    bit.with = to
    bit.role = roleOf(next.kind)
    next.with = at
    if (loose !== undefined) next.loose = loose
  })
  bits.forEach((bit, at) => {
    const before = bits[at - 1]
    if (!AMOUNTS.has(bit.kind) || bit.with !== undefined || before === undefined) return
    if (!THINGS.has(before.kind) || !belongs(bit, before.kind)) return
    const between = wordsOf(around, before.to, bit.from)
    if (!between.every((word) => BEHIND.has(word))) return
    const first = before.with === undefined ? undefined : bits[before.with]
    // `a punnet of raspberries, 300g`: the weight tells more than the measure.
    if (first !== undefined && !(before.loose !== undefined && bit.kind === 'mass')) return
    if (first !== undefined) {
      first.role = 'gone'
    }
    bit.with = at - 1
    bit.role = roleOf(before.kind)
    before.with = at
  })
}

const BEHIND = new Set([',', '-', ':', '(', 'about', 'of', 'circa', 'some', '=', 'it', 'weighs', 'weighing', 'in', 'total', 'approx', 'roughly', 'nearly', 'them'])

/** Sugar is weighed, water and spirit are poured; a plant is counted or weighed. */
function belongs({ kind, value, count }: Bit, thing: Bit['kind']): boolean {
  if (thing === 'plant') return kind === 'mass' || kind === 'bare' || (kind === 'volume' && value <= 400) || (kind === 'bottles' && false)
  if (thing === 'sugar') return kind === 'mass' || (kind === 'volume' && value <= 2000) || (kind === 'bare' && value >= 20)
  if (thing === 'water') return kind === 'volume' || kind === 'mass' || (kind === 'bare' && value >= 50) || kind === 'bottles'
  return kind === 'volume' || kind === 'mass' || kind === 'bottles' || (kind === 'bare' && (value >= 100 || count !== undefined))
}

/** Whether a wish stands between the bit before and this one, or the one before is wished and this is joined to it. */
function isWished(around: Around, bits: readonly Open[], at: number): boolean {
  const bit = bits[at]!
  const from = bits[at - 1]?.to ?? 0
  const words = wordsOf(around, from, bit.from)
  const stop = words.findLastIndex((word) => STOP.test(word))
  const near = words.slice(stop + 1)
  const last = near.findLast((word) => !FILLING.has(word))
  const isCue = around.spans.some(({ concept, from: begin, to: end }) => concept === 'wish' && begin >= from && end <= bit.from && begin >= from + stop)
  if (isCue) return true
  if (last !== undefined && /^(?:to|until|towards|fino|a|ad)$/.test(last) && isToward(around, near, bits, at)) return true
  const before = bits[at - 1]
  return before?.role === 'want' && near.every((word) => JOIN.has(word))
}

const FILLING = new Set(['about', 'around', 'roughly', 'say', 'circa', 'a', 'the', 'it', 'nice', 'bit', 'of'])
const JOIN = new Set(['and', ',', 'e', 'with', 'n', 'at', 'about', 'around', 'quite', 'nice', '&', '+', 'but', 'on', 'the', 'con', 'circa', 'maybe', 'ed'])

/** `to` before a number that is no first one; in Italian `a` says `at` as well. */
function isToward({ lexicon }: Around, near: readonly string[], bits: readonly Open[], at: number): boolean {
  if (near.includes('to') || near.includes('until') || near.includes('towards')) return true
  if (lexicon.id !== 'it') return false
  return near.includes('fino') || bits.slice(0, at).some(({ kind, role }) => kind === 'strength' && role !== 'want')
}

/** Bare numbers that are strengths, by what stands before them. */
function strengths(around: Around, bits: Open[]): void {
  const { lexicon } = around
  const isLiquid = bits.some(({ kind }) => kind === 'volume' || kind === 'spirit' || kind === 'bottles' || kind === 'strength') ||
    around.spans.some(({ concept }) => LIQUID.has(concept)) || bits.some(({ kind, value }) => kind === 'bare' && value >= 100)
  bits.forEach((bit, at) => {
    if (!isStrengthLike(bit) || bit.with !== undefined || !isLiquid) return
    const before = around.typed.tokens[bit.from - 1]?.text ?? ''
    const next = around.typed.tokens[bit.to]?.text ?? ''
    if (/^(?:ml|minutes|people|times|years|pm|am)$/.test(next)) return
    const words = wordsOf(around, bits[at - 1]?.to ?? 0, bit.from)
    // `a glass of 40`, `un bicchierino da 40`, `a 40 ml`: that is the glass.
    const glass = around.spans.find(({ concept, to }) => concept === 'glass_of' && to <= bit.from && bit.from - to <= 1)
    if (glass !== undefined || (next === 'of' && bits[at + 1] === undefined && around.spans.some(({ concept }) => concept === 'units_of_alcohol'))) {
      bit.kind = 'volume'
      bit.text = `${bit.text} ml`
      bit.role = 'have'
      return
    }
    const wished = isWished(around, bits, at)
    const isCued = wordSet(lexicon.atStrength).has(before) || (wished && wordSet(lexicon.toStrength).has(before)) || (wished && words.length > 0)
    const isBehind = bits[at - 1]?.kind === 'volume' && words.every((word) => word === ',' || word === '@')
    if (!isCued && !isBehind && !(wished && JOIN.has(before))) return
    bit.kind = 'strength'
    bit.text = `${bit.text}%`
    bit.role = wished ? 'want' : 'have'
  })
}

const LIQUID = new Set<ConceptSpan['concept']>(['infusion', 'strained', 'reads', 'finished_drink', 'thin', 'glass_of', 'units_of_alcohol', 'freezes', 'too_sweet', 'too_strong', 'too_weak', 'too_dry', 'syrup'])

/** Strengths with a sign, and sweetnesses: there or wished. */
function wishes(around: Around, bits: Open[]): void {
  bits.forEach((bit, at) => {
    if (bit.kind !== 'strength' && bit.kind !== 'sweetness' && bit.kind !== 'style') return
    if (bit.role !== null) return
    bit.role = isWished(around, bits, at) ? 'want' : 'have'
  })
  // Of two strengths of one liquid the one behind is wished, where it is lower.
  const open = bits.filter(({ kind, role }) => kind === 'strength' && role === 'have')
  const liquids = bits.filter(({ kind, role }) => (kind === 'volume' && role !== 'of_water') || kind === 'bottles' || (kind === 'bare' && role === 'of_spirit'))
  const [first, second] = open
  if (open.length === 2 && liquids.length === 1 && second!.value < first!.value && !bits.some(({ role }) => role === 'want')) second!.role = 'want'
}

/** `700 of 40`, `measured 930`: a number too large for a strength is a volume where a liquid is spoken of. */
function volumes(around: Around, bits: Open[]): void {
  const isLiquid = around.spans.some(({ concept }) => VOLUMES.has(concept)) || bits.some(({ kind }) => kind === 'strength' || kind === 'spirit')
  bits.forEach((bit, at) => {
    if (bit.kind !== 'bare' || bit.with !== undefined && bit.role !== 'of_spirit' && bit.role !== 'of_water') return
    if (bit.value < 100 || bit.value > 20_000 || !isLiquid) return
    const next = bits[at + 1]
    const isOfStrength = next?.kind === 'strength' || next?.kind === 'spirit'
    const before = around.typed.tokens[bit.from - 1]?.text ?? ''
    if (bit.role === null && !isOfStrength && !/^(?:got|of|measured|now|have|a|is|about|had|came|out|just|,|it|only|me|left|ml|lemon|put|made|with|sono|ho|misurato)$/.test(before) && bit.from !== 0) return
    bit.kind = 'volume'
    bit.text = `${bit.text} ml`
    if (bit.role === null) bit.role = 'have'
  })
}

const VOLUMES = new Set<ConceptSpan['concept']>(['strained', 'infusion', 'reads', 'filtered', 'finished_drink', 'thin', 'pour_together', 'syrup', 'too_sweet', 'too_strong', 'too_weak', 'how_strong'])

/** `2.1 l at 27 and about 300`: of a liqueur whose strength is said, a number of that size is its sugar. */
function sweetnesses(around: Around, bits: Open[]): void {
  const strength = bits.findIndex(({ kind }) => kind === 'strength')
  if (strength === -1) return
  const isPlanned = bits.some(({ kind }) => kind === 'plant')
  bits.forEach((bit, at) => {
    const next = around.typed.tokens[bit.to]?.text ?? ''
    if (bit.kind === 'mass' && bit.with === undefined && !isPlanned && bit.value >= 20 && bit.value <= 600 && (/^(?:sugar|zucchero)$/.test(next) || at > strength) && !hasLiquid(bits)) {
      bit.kind = 'sweetness'
      bit.text = `${bit.value} g/L`
      bit.role = 'have'
      return
    }
    if (bit.kind !== 'bare' || bit.with !== undefined || at < strength || bit.value < 30 || bit.value > 600 || !hasLiquid(bits)) return
    const wished = isWished(around, bits, at)
    bit.kind = 'sweetness'
    bit.text = `${bit.text} g/L`
    bit.role = wished ? 'want' : 'have'
  })
}

const hasLiquid = (bits: readonly Open[]): boolean => bits.some(({ kind }) => kind === 'volume' || kind === 'bottles')

/** Plants and drinks that are to be left out: `without the ginger`. */
function leftOut(around: Around, bits: Open[]): void {
  const without = around.spans.filter(({ concept }) => concept === 'without')
  for (const { from, to } of without) {
    const bit = bits.find((each) => each.from >= to && each.from - to <= 2)
    const isNo = to - from === 1 && /^(?:no|non|meno|drop)$/.test(around.typed.tokens[from]!.text)
    if (bit === undefined || (bit.kind !== 'plant' && bit.kind !== 'sugar' && bit.kind !== 'water')) continue
    if (isNo && bit.kind === 'plant' && /^[,.]$/.test(around.typed.tokens[from + 1]?.text ?? '')) continue
    bit.role = 'left_out'
  }
}

const CURRENCY = /^(?:£|€|\$|quid|euros?|pounds|dollars|bucks)$/

function prices(around: Around, bits: Open[]): void {
  const isCost = around.spans.some(({ concept }) => concept === 'costs')
  bits.forEach((bit) => {
    const { tokens } = around.typed
    const isMarked = CURRENCY.test(tokens[bit.from - 1]?.text ?? '') || CURRENCY.test(tokens[bit.to]?.text ?? '')
    if (bit.kind === 'bare' && (isMarked || (isCost && bit.with === undefined))) bit.role = 'price'
  })
}

/** Gives every bit its role. */
export function withRoles(around: Around, read: readonly Bit[]): readonly Bit[] {
  const bits: Open[] = read.map((bit) => ({ ...bit }))
  prices(around, bits)
  attach(around, bits)
  strengths(around, bits)
  sweetnesses(around, bits)
  volumes(around, bits)
  wishes(around, bits)
  leftOut(around, bits)
  return bits
}
