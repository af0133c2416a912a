import { DomainError } from '../../domain-error.ts'
import { isJuice, type MaterialId, materialOf } from '../materials.ts'
import type { WaterOrKind, WaterRead } from '../quantities.ts'
import { amountAt } from './amount-at.ts'
import { materialNamed } from './material-named.ts'
import { hasAmount, sweeteningOf } from './parse-sugar.ts'
import { splitAt } from './split-list.ts'
import { expectEnd, readText, shown, type TypedText, textFrom } from './tokens.ts'

const WATER_WORDS: ReadonlySet<string> = new Set('of water acqua cold warm boiled still'.split(' '))

/** Plants by themselves; for the water they are brewed. */
const BREWED: ReadonlySet<string> = new Set(['coffee', 'tea'])

const otherWater = (typed: TypedText, at: number): DomainError =>
  new DomainError('bad_value', 'other_water', { typed: shown(typed.text), extra: shown(textFrom(typed, at)) })

/** The juice named from piece `at` on; null for plain water. */
function juiceAt(typed: TypedText, at: number): MaterialId | null {
  const words = typed.tokens.slice(at).map(({ text }) => text)
  if (words.every((word) => WATER_WORDS.has(word))) return null
  if (typed.tokens.slice(at).some(({ kind }) => kind === 'number')) expectEnd(typed, at)
  const material = materialNamed(BREWED.has(words.at(-1)!) && !words.includes('brewed') ? ['brewed', ...words] : words)
  if (material === null || !isJuice(material)) throw otherWater(typed, at)
  return material
}

/**
 * Water, and what stands for it, joined with `+`: `1 l`, `500 ml apple juice + 30 ml lemon juice`, `5 g citric acid`. Bare `oz` of water
 * could be either and is asked back. Anything else throws `other_water`.
 */
export function parseWaters(text: string): WaterRead {
  const items = splitAt(text, 'amount').map((typed) => {
    const { amount, next } = amountAt(typed, 0)
    const material = juiceAt(typed, next)
    return { amount, juice: material === null ? null : sweeteningOf({ ...typed, wanted: 'sugar' }, material) }
  })
  return {
    waters: items.flatMap(({ amount, juice }) => (juice === null ? amount : [])),
    juices: items.flatMap(({ juice }) => juice ?? []),
  }
}

/** What stands for the water, without an amount: that is worked out. Throws `amount_worked_out` where one was typed. */
export function parseFiller(text: string): MaterialId {
  const typed = readText(text, 'filler')
  const at = hasAmount(typed) ? amountAt(typed, 0).next : 0
  const material = juiceAt(typed, at)
  // An acid alone is no liquid.
  if (material === null || !materialOf(material).isSyrup) throw otherWater(typed, at)
  if (at === 0) return material
  throw new DomainError('bad_value', 'amount_worked_out', {
    typed: shown(typed.text),
    fix: materialOf(material).names[0]!,
  })
}

/** So much water as a recipe gives, or of one thing that stands for it; what stands for it, without an amount. */
export function parseWaterOrKind(text: string): WaterOrKind {
  if (!hasAmount(readText(text, 'filler'))) return parseFiller(text)
  const read = parseWaters(text)
  const [juice, ...others] = read.juices
  if (juice === undefined) return read
  // An acid alone is no liquid.
  const isOne = others.length === 0 && read.waters.length === 0
  return isOne && materialOf(juice.material).isSyrup ? read : parseFiller(text)
}
