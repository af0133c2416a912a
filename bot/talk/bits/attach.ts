import { isDescriptor } from '../../../core/botanical/find/plant-said.ts'
import type { TypedText } from '../../../core/quantity/read/tokens.ts'
import { type ConceptSpan, wordSet } from '../lexicon/concepts.ts'
import { DEEDS, type Lexicon } from '../lexicon/lexicon.ts'
import type { Bit, Role, TalkJar } from './bit.ts'
import { isOver, jarsOf } from './jars-of.ts'
import { isPutInto } from './put-into.ts'

export interface RolesAround {
  readonly typed: TypedText
  readonly lexicon: Lexicon
  readonly spans: readonly ConceptSpan[]
  readonly jars?: readonly TalkJar[]
}

/** Of these the plants are told with their amounts. */
const PUTS_IN = new Set<ConceptSpan['concept']>(['started', 'added', 'log_start'])

/** A jar's name where something is told of it: no amount behind it is of the plant. */
export function isJarName({ spans, typed, jars = [] }: RolesAround, bit: Bit): boolean {
  const isTold = spans.some(
    ({ concept, to }) =>
      DEEDS.has(concept) &&
      // `Into the ginger, 1 pod`: what goes in is counted.
      (!PUTS_IN.has(concept) || (concept === 'added' && to <= bit.from && isPutInto(typed.tokens, bit))),
  )
  return isTold && jarsOf(bit, jars).some((jar) => !isOver(jar))
}

/** A bit while roles are given. */
export type Open = { -readonly [Key in keyof Bit]: Bit[Key] }

export const STRENGTH = { least: 5, most: 97.2 } as const

export const AMOUNTS = new Set<Bit['kind']>(['volume', 'mass', 'bare', 'bottles'])

export const THINGS = new Set<Bit['kind']>(['plant', 'spirit', 'sugar', 'water'])

export const isStrengthLike = ({ kind, value, role }: Bit): boolean =>
  kind === 'bare' && role !== 'price' && role !== 'gone' && value >= STRENGTH.least && value <= STRENGTH.most

/** The words between two places. */
export const wordsOf = ({ typed }: RolesAround, from: number, to: number): readonly string[] =>
  typed.tokens.slice(from, to).map(({ text }) => text)

/** Whether only words that join stand between an amount and a thing. */
export const joins = (around: RolesAround, from: number, to: number): boolean => {
  const between = wordSet(around.lexicon.between)
  const loose = wordSet(around.lexicon.loose)
  return wordsOf(around, from, to).every((word) => between.has(word) || loose.has(word) || word === '-' || word === ')')
}

const roleOf = (kind: Bit['kind']): Role | null =>
  kind === 'plant'
    ? 'of_plant'
    : kind === 'sugar'
      ? 'of_sugar'
      : kind === 'water'
        ? 'of_water'
        : kind === 'spirit'
          ? 'of_spirit'
          : null

/** An amount directly before what it is of, then one directly behind it: `300 g raspberries`, `raspberries, 300g`. */
export function attach(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    if (!AMOUNTS.has(bit.kind) || bit.with !== undefined || bit.role === 'gone') return
    let to = at + 1
    // `70 cl 40% vodka`, `a litre of 95 alcohol`.
    while (
      bits[to] !== undefined &&
      (bits[to]!.kind === 'strength' || isStrengthLike(bits[to]!)) &&
      bit.kind !== 'bare' &&
      joins(around, bits[to - 1]!.to, bits[to]!.from)
    )
      to++
    // `a litre of plum brandy`: the spirit is poured.
    if (bit.kind !== 'bare' && bit.kind !== 'mass' && bits[to]?.spirit !== undefined && bits[to + 1]?.kind === 'spirit')
      to++
    const next = bits[to]
    if (next === undefined || !THINGS.has(next.kind) || next.with !== undefined || next.role !== null) return
    const last = bits[to - 1]!
    if (!joins(around, last.to, next.from) || (last.kind === 'plant' && !joins(around, bit.to, last.from))) return
    if (next.kind === 'plant' && to > at + 1) return
    if (next.kind === 'spirit' && bit.kind === 'mass' && isOfPlantBefore(around, bits, at, to)) return
    if (!belongs(bit, next.kind)) return
    const loose = wordsOf(around, bit.to, next.from).find((word) => wordSet(around.lexicon.loose).has(word))
    bit.with = to
    bit.role = roleOf(next.kind)
    next.with = at
    if (loose !== undefined) next.loose = loose
  })
  bits.forEach((bit, at) => {
    const before = bits[at - 1]
    if (!AMOUNTS.has(bit.kind) || bit.with !== undefined || bit.role === 'gone' || before === undefined) return
    if (!THINGS.has(before.kind) || before.role !== null || !belongs(bit, before.kind)) return
    // `The cherry one`; `earl grey in gin, 30 g`: what is steeped is weighed, not what it is steeped in.
    if (before.kind === 'plant' && wordsOf(around, bit.from, bit.to).join() === 'one') return
    if (before.kind === 'spirit' && bit.kind === 'mass' && hasOpenPlant(bits, at)) return
    // `Twelve small bottles of plum, 250 ml each`.
    const isOfBottles = bits.slice(0, at).some((other) => other.kind === 'bottles' && other.isSizeAssumed === true)
    if (
      bit.kind === 'volume' &&
      isOfBottles &&
      /^(?:each|apiece|ciascuna)$/.test(wordsOf(around, bit.to, bit.to + 1)[0] ?? '')
    )
      return
    const between = wordsOf(around, before.to, bit.from)
    if (!between.every((word) => BEHIND.has(word))) return
    // `how much water in 2 litres`: that is what it goes into.
    if (between.includes('in') && !between.includes('total')) return
    // `strained the lemon, 920`: nobody counts so many behind a name.
    if (bit.kind === 'bare' && before.kind === 'plant' && bit.value > MOST_BEHIND) return
    if (before.kind === 'plant' && isJarName(around, before)) return
    const first = before.with === undefined ? undefined : bits[before.with]
    // `a punnet of raspberries, 300g`: the weight tells more than the measure.
    if (first !== undefined && !(before.loose !== undefined && bit.kind === 'mass')) return
    if (first !== undefined) {
      first.role = 'gone'
    }
    bit.with = at - 1
    bit.role = roleOf(before.kind)
    before.with = at
    // `Rosemary, 6 sprigs`: what is counted of it.
    const [piece = '', form = ''] = wordsOf(around, bit.to, bit.to + 2)
    if (before.kind !== 'plant' || bit.kind !== 'bare' || !wordSet(around.lexicon.loose).has(piece)) return
    const isFormed = isDescriptor(form) && around.typed.tokens[bit.to + 1]!.kind === 'word'
    before.loose = isFormed ? `${piece} ${form}` : piece
    bit.to += isFormed ? 2 : 1
  })
}

/** `Sloes 450g gin 70cl`: a weight behind a plant, before a spirit that is poured. */
const isOfPlantBefore = (around: RolesAround, bits: readonly Open[], at: number, to: number): boolean => {
  const [plant, bit, behind] = [bits[at - 1], bits[at]!, bits[to + 1]]
  return (
    plant?.kind === 'plant' &&
    plant.with === undefined &&
    plant.role === null &&
    wordsOf(around, plant.to, bit.from).every((word) => BEHIND.has(word)) &&
    (behind?.kind === 'volume' || behind?.kind === 'bottles')
  )
}

const hasOpenPlant = (bits: readonly Open[], at: number): boolean =>
  bits.slice(0, at).some(({ kind, role, with: place }) => kind === 'plant' && role === null && place === undefined)

const MOST_BEHIND = 60

const BEHIND = new Set([
  ',',
  '-',
  ':',
  '(',
  'about',
  'of',
  'circa',
  'some',
  '=',
  'it',
  'weighs',
  'weighing',
  'in',
  'total',
  'approx',
  'roughly',
  'bout',
  'abt',
  'nearly',
  'them',
])

/** `1.6 water`: nobody pours so little by any other measure. */
export const isLitres = (text: string): boolean => /^[0-9][.,]\d{1,2}$/.test(text)

/** Sugar is weighed, water and spirit are poured; a plant is counted or weighed. */
export function belongs({ kind, value, count, text }: Bit, thing: Bit['kind']): boolean {
  if (thing === 'plant')
    return (
      kind === 'mass' ||
      kind === 'bare' ||
      (kind === 'volume' && (value <= 400 || /cup|tazz|pint|glass|quart/.test(text)))
    )
  if (thing === 'sugar')
    return kind === 'mass' || (kind === 'volume' && value <= 2000) || (kind === 'bare' && value >= 20)
  if (thing === 'water')
    return (
      kind === 'volume' || kind === 'mass' || (kind === 'bare' && (value >= 50 || isLitres(text))) || kind === 'bottles'
    )
  return (
    kind === 'volume' ||
    kind === 'mass' ||
    kind === 'bottles' ||
    (kind === 'bare' && (value >= 100 || count !== undefined))
  )
}
