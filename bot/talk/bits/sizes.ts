import { wordSet } from '../lexicon/concepts.ts'
import { isAskedFor } from './asked-for.ts'
import { AMOUNTS, type Open, type RolesAround } from './attach.ts'
import { asManyOf, EACH, isOfOne, sizedBehindStrength } from './size-behind.ts'

/** Plants and drinks that are to be left out: `without the ginger`. */
export function leftOut(around: RolesAround, bits: Open[]): void {
  const without = around.spans.filter(({ concept }) => concept === 'without')
  for (const { from, to } of without) {
    // `Leave the ginger out`: within the words that say so.
    const inside =
      bits.find((each) => each.kind === 'plant' && each.from > from && each.to < to) ??
      // `The ginger I haven’t got, leave it out`.
      (isItself(around, from, to)
        ? bits.findLast((each) => each.kind === 'plant' && each.to <= from && each.with === undefined)
        : undefined)
    const bit = inside ?? bits.find((each) => each.from >= to && each.from - to <= 2)
    const isNo = to - from === 1 && /^(?:no|non|meno|drop)$/.test(around.typed.tokens[from]!.text)
    if (bit === undefined || (bit.kind !== 'plant' && bit.kind !== 'sugar' && bit.kind !== 'water')) continue
    if (isNo && bit.kind === 'plant' && /^[,.]$/.test(around.typed.tokens[from + 1]?.text ?? '')) continue
    bit.role = 'left_out'
  }
}

const isItself = ({ typed }: RolesAround, from: number, to: number): boolean =>
  typed.tokens
    .slice(from, to)
    .some(({ text }) => /^(?:it|them|that|lascial[oaie]|lasciamol[oaie]|toglil[oaie]|leval[oaie])$/.test(text))

const CURRENCY = /^(?:£|€|\$|p|pence|cents?|centesimi|quid|euros?|pounds|dollars|bucks)$/

/** `A fiver`, `a tenner`. */
const COIN = /^(?:fiver|tenner)$/

export function prices(around: RolesAround, bits: Open[]): void {
  const isCost = around.spans.some(({ concept }) => concept === 'costs')
  bits.forEach((bit) => {
    const { tokens } = around.typed
    const isMarked = CURRENCY.test(tokens[bit.from - 1]?.text ?? '') || CURRENCY.test(tokens[bit.to]?.text ?? '')
    if (bit.kind === 'bare' && (isMarked || (isCost && bit.with === undefined))) bit.role = 'price'
  })
  // `22 quid a litre`: of one litre it is told what it costs, not of how much there is.
  bits.forEach((bit) => {
    const { tokens } = around.typed
    const isOne = /^(?:an?|un|una|per)$/.test(tokens[bit.from]?.text ?? '') || tokens[bit.from - 1]?.text === '/'
    const paid = tokens[bit.from - 1]?.text ?? ''
    if (isOne && AMOUNTS.has(bit.kind) && (CURRENCY.test(paid) || COIN.test(paid))) bit.role = 'price'
  })
}

/** `a bottle of gin (350 ml, 40 %)`: the size of a bottle stands behind it, `4 x 500 and one 250` another size. */
export function sized(around: RolesAround, bits: Open[]): void {
  // `2.5 litres in five bottles`: each holds its share.
  bits.forEach((bit, at) => {
    const whole = bits[at - 1]
    if (bit.kind !== 'bottles' || bit.isSizeAssumed !== true || whole?.kind !== 'volume' || whole.role !== null) return
    const isIn = /^(?:in|into|across|between|over|dentro)$/.test(around.typed.tokens[whole.to]?.text ?? '')
    if (!isIn || whole.to + 1 !== bit.from || bit.count === undefined) return
    bit.text = `${bit.count} x ${Math.round(whole.value / bit.count)} ml`
    whole.role = 'gone'
  })
  // `One bottle vodka 750 ml`: the bottle is that of the spirit.
  bits.forEach((bit, at) => {
    const [word, size] = [bits[at + 1], bits[at + 2]]
    const isOne = bit.kind === 'bottles' && bit.isSizeAssumed === true && bit.role === null && bit.count === 1
    const isBeside = word?.kind === 'spirit' && word.from - bit.to <= 1 && size?.kind === 'volume'
    if (isOne && isBeside && size.from - word.to <= 2) bit.role = 'gone'
  })
  sizedBehindStrength(around, bits)
  bits.forEach((bit, at) => {
    if (bit.kind !== 'bottles' || bit.isSizeAssumed !== true || bit.role !== 'of_spirit' || bit.with === undefined)
      return
    const word = bits[bit.with]!
    const size = bits.find(
      (each, place) =>
        place > at &&
        each.kind === 'volume' &&
        each.role === null &&
        (each.from - word.to <= 3 || isOfOne(around, each)),
    )
    if (size === undefined) return
    bit.role = 'gone'
    asManyOf(around, size, bit.count ?? 1)
    size.role = 'of_spirit'
    size.with = bit.with
    word.with = bits.indexOf(size)
  })
  // `12 bottles of coffee liqueur, half litres`, `5 bottles, 700 ml each`.
  bits.forEach((bit, at) => {
    const size = bits.find((each, place) => place > at && each.kind === 'volume' && each.role === null)
    if (bit.kind !== 'bottles' || bit.isSizeAssumed !== true || bit.role !== null || size === undefined) return
    const isEach = EACH.test(around.typed.tokens[size.to]?.text ?? '')
    const isSeveral = /(?:litres|liters|litri|bottles)$/.test(size.text) && size.value <= 1000 && bit.value > 1
    if ((!isEach && !isSeveral) || size.value > 3000) return
    bit.text = `${bit.text} x ${size.text}`
    bit.value *= size.value
    delete bit.isSizeAssumed
    size.role = 'gone'
  })
  bits.forEach((bit, at) => {
    const [count, size] = [bits[at + 1], bits[at + 2]]
    if (bit.kind !== 'bottles' || count?.kind !== 'bare' || size === undefined || size.from !== count.to) return
    if ((size.kind !== 'bare' && size.kind !== 'volume') || size.value < 50 || count.value > 20) return
    count.kind = 'bottles'
    count.text = `${count.text} x ${size.kind === 'bare' ? `${size.text} ml` : size.text}`
    count.count = count.value
    size.role = 'gone'
  })
}

/** A weight that stands by itself belongs to the one plant that has no amount. */
export function weighed(around: RolesAround, bits: Open[]): void {
  // `Lemon at 22 and 180 grams, freezer ok?`: of sugar.
  if (around.spans.some(({ concept }) => concept === 'freezes')) return
  const loose = wordSet(around.lexicon.loose)
  const open = bits.filter(
    ({ kind, with: place, role }) => kind === 'plant' && place === undefined && role !== 'left_out',
  )
  const masses = bits.filter(({ kind, with: place, role }) => kind === 'mass' && place === undefined && role === null)
  const measured = bits.filter(({ kind, loose: measure }) => kind === 'plant' && measure !== undefined)
  const [plant] = open.length > 0 ? open : measured
  const [mass] = masses
  if (plant === undefined || mass === undefined || masses.length > 1 || (open.length > 0 ? open : measured).length > 1)
    return
  const before = plant.with === undefined ? undefined : bits[plant.with]
  if (before !== undefined) before.role = 'gone'
  mass.with = bits.indexOf(plant)
  mass.role = 'of_plant'
  plant.with = bits.indexOf(mass)
  // `2 punnets (800 g)`: the weight tells.
  for (const bit of bits) {
    const next = around.typed.tokens[bit.to]?.text ?? ''
    const isMeasure = bit.kind === 'bare' && bit.with === undefined && loose.has(next) && !PIECE.test(next)
    if (isMeasure) bit.role = 'gone'
  }
}

/** Pieces, which hold nothing. */
const PIECE =
  /^(?:pods?|sticks?|leaf|leaves|sprigs?|cloves?|stars?|slices?|pinch|pinches|beans?|fogli[ae]|stecc(?:a|he)|baccell[oi]|chiod[oi]|ramett[oi]|fett[ae])$/

const LIQUEUR = /^(?:liqueur|liqueurs|liquore|liquori|finished|limoncello|nocino)$/

/** `I want 3 litres of orange liqueur at 28 %`: so much is to come out; whether any was said. */
export function finished(around: RolesAround, bits: Open[]): boolean {
  const isSaid = (...concepts: readonly string[]) => around.spans.some(({ concept }) => concepts.includes(concept))
  const isWish = isSaid('wish', 'make')
  const at = bits.findIndex(({ kind, role }) => kind === 'volume' && role === null)
  const bit = bits[at]
  if (bit === undefined || bits.filter(({ kind }) => kind === 'volume').length > 1) return false
  const isOfPlant = isPlainPlant(around, bit, bits[at + 1]) && !isSaid(...AT_HAND)
  if (isOfPlant && (isWish || isSaid('by_day', 'what_can_i_make'))) return toFill(bit)
  if (isAskedFor(around, bits, at)) return toFill(bit)
  if (!isWish) return false
  const behind = around.typed.tokens.slice(bit.to, bit.to + 4)
  const isFirst = !bits.slice(0, at).some(({ kind }) => kind === 'strength')
  if (!isFirst || !behind.some(({ text }) => LIQUEUR.test(text)) || !bits.some(({ kind }) => kind === 'plant'))
    return false
  return toFill(bit)
}

function toFill(bit: Open): true {
  bit.kind = 'bottles'
  bit.count = 1
  bit.text = `1 x ${bit.text}`
  return true
}

/** Said of what is in a jar already. */
const AT_HAND = [
  'infusion',
  'strained',
  'syrup',
  'thin',
  'too_sweet',
  'too_strong',
  'too_weak',
  'sweetened',
  'bottled',
  'filtered',
  'freezes',
  'how_strong',
  'have',
]

const LEAST_ML = 500

/** `Five litres of orange`, of which nobody says what spirit it is: how much is to come out. */
const isPlainPlant = (around: RolesAround, { value, to }: Open, plant: Open | undefined): boolean =>
  plant?.kind === 'plant' &&
  plant.spirit === undefined &&
  value >= LEAST_ML &&
  /^(?:of|di)$/.test(around.typed.tokens[to]?.text ?? '') &&
  plant.from === to + 1
