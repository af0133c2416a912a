import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { US_FLUID_OUNCE_ML } from '../../../core/quantity/customary.ts'
import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { type MeasureSaid, measureSaid } from '../../../core/quantity/said/measure-said.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Lexicon } from '../lexicon/lexicon.ts'
import { type Bit, bit } from './bit.ts'
import { thingAt } from './things.ts'

/** How much a vessel holds. */
export interface FluidSize {
  readonly text: string
  readonly ml: number
  readonly next: number
}

const isOunces = ({ kind, unit }: MeasureSaid): boolean => kind === 'mass' && unit.key === 'oz'

/** The size of a vessel that begins at a piece: what it holds is poured, so that its ounces are fluid. */
export function fluidSizeAt(typed: TypedText, at: number, things: ReadonlySet<string>): FluidSize | null {
  const size = measureSaid(typed, at, things)
  if (size === null) return null
  if (size.kind === 'volume') return { text: `${size.numberText} ${size.unitText}`, ml: size.value, next: size.next }
  if (!isOunces(size)) return null
  return {
    text: `${size.numberText} fl oz`,
    ml: (size.value / size.unit.factor) * US_FLUID_OUNCE_ML,
    next: size.next,
  }
}

const JAR = /^(?:jars?|flasks?|decanters?|vasett[oi]|barattol[oi])$/
const LIQUEUR = /^(?:liqueurs?|cordials?|ratafia|finished|liquor[ei]|rosolio)$/
const MOST_FROM_JAR = 4

/** Whether jars there hold a finished drink, not the fruit that steeps: `six 8 oz jars of lemon liqueur`. */
export function areJarsOfDrink(typed: TypedText, lexicon: Lexicon, at: number): boolean {
  if (!JAR.test(wordAt(typed, at)) || !/^(?:of|di)$/.test(wordAt(typed, at + 1))) return false
  const behind = typed.tokens.slice(at + 2, at + 2 + MOST_FROM_JAR).map(({ text }) => text)
  const named = lexicon.drinks.flatMap(([names]) => names.split(',').map((name) => name.trim()))
  return behind.some((word) => LIQUEUR.test(word) || named.includes(word))
}

/** What is steeped in is at least so strong, % vol. */
const LEAST_SPIRIT = 20
const MOST_NAMED = 2
const NO_NAME = /^(?:of|di|and|e|with|con|in|plus|or|to|at|for|per)$/

/** `16 oz of 190 proof`, `25 oz of zorble 151 proof`: of a spirit, told by how strong it is, ounces are fluid; null where none begin. */
export function ouncesOfProof(typed: TypedText, at: number): Bit | null {
  const none: ReadonlySet<string> = new Set()
  const size = measureSaid(typed, at, none)
  if (size === null || !isOunces(size)) return null
  const from = /^(?:of|di)$/.test(wordAt(typed, size.next)) ? size.next + 1 : size.next
  let next = from
  const isNamed = (place: number): boolean =>
    typed.tokens[place]?.kind === 'word' &&
    !NO_NAME.test(wordAt(typed, place)) &&
    plantSaid(typed.tokens, place, none) === null
  while (next - from < MOST_NAMED && isNamed(next)) next++
  const strength = measureSaid(typed, next, none)
  if (strength?.kind !== 'strength' || strength.value < LEAST_SPIRIT) return null
  const ounces = size.value / size.unit.factor
  return bit('volume', at, size.next, ounces * US_FLUID_OUNCE_ML, `${size.numberText} fl oz`)
}

/** What is said of it behind `of`: `22 oz of it`. */
const LIQUID = /^(?:it|this|that|them|liquid|infusion|clear|clean|liquor|spirit|juice|stuff)$/

/** `Strained it, came to 22 ounces`: what runs through a cloth is poured, so that its ounces are fluid; null where none begin. */
export function ouncesStrained(typed: TypedText, spans: readonly ConceptSpan[], at: number): Bit | null {
  const strained = spans.find(({ concept }) => concept === 'strained')
  const none: ReadonlySet<string> = new Set()
  const size = strained === undefined ? null : measureSaid(typed, at, none)
  if (size === null || !isOunces(size)) return null
  const isOf = /^(?:of|di)$/.test(wordAt(typed, size.next))
  const behind = isOf ? size.next + 1 : size.next
  if (isOf ? !LIQUID.test(wordAt(typed, behind)) : plantSaid(typed.tokens, behind, none) !== null) return null
  const ounces = size.value / size.unit.factor
  return bit('volume', at, size.next, ounces * US_FLUID_OUNCE_ML, `${size.numberText} fl oz`)
}

const CUP = /^(?:cups?|glass|glasses|mugs?|tumblers?|bicchier[ei]|tazz[ae])$/

/** `two 8 oz cups of vodka`: ounces before what is drunk from are fluid; null where none begin. */
export function cupsOfSize(typed: TypedText, lexicon: Lexicon, at: number): Bit | null {
  const none: ReadonlySet<string> = new Set()
  const alone = measureSaid(typed, at, none)
  const count = alone === null ? numberSaid(typed, at, none) : null
  const size = alone ?? (count === null ? null : measureSaid(typed, count.next, none))
  if (size === null || !isOunces(size) || !CUP.test(wordAt(typed, size.next))) return null
  // `2 oz cup of sugar`: what is weighed is not poured.
  const from = /^(?:of|di)$/.test(wordAt(typed, size.next + 1)) ? size.next + 2 : size.next + 1
  if (thingAt(typed.tokens, from, lexicon)?.kind === 'sugar') return null
  const ounces = (count?.value ?? 1) * (size.value / size.unit.factor)
  const shown = Number(ounces.toPrecision(4))
  return bit('volume', at, size.next + 1, ounces * US_FLUID_OUNCE_ML, `${shown} fl oz`)
}
