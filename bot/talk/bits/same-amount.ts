import { unlessRefused } from '../../../core/domain-error.ts'
import { parseAmount } from '../../../core/quantity/read/parse-amount.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { Around } from './amount-bits.ts'
import { type Bit, bit } from './bit.ts'

/** `The same of sugar`, `as much sugar`, `altrettanto zucchero`: how the sugar is told that weighs as much as what stands before it. */
const AS_MUCH =
  /(?:^| )((?:(?:the |an? )?(?:same|equal|like)(?: again| amount| weight| quantity)?|(?:just )?as much(?: again)?|its weight|their weight|altrettant[oa]|(?:lo |la )?stess[oa](?: peso| quantita| dose)?|pari peso)(?: (?:of|in|di|d))?)$/

const BACK = 5

const sameBefore = (tokens: readonly Token[], at: number): number | null => {
  const before = tokens.slice(Math.max(0, at - BACK), at).map(({ text }) => text)
  const said = AS_MUCH.exec(before.join(' '))?.[1]
  return said === undefined ? null : at - said.split(' ').length
}

/** `500 g raspberries, the same of sugar`: as much of it as the plants before it weigh together. */
export function sameAmount({ typed }: Pick<Around, 'typed'>, bits: readonly Bit[]): readonly Bit[] {
  const at = bits.findIndex(({ kind, from }) => kind === 'sugar' && sameBefore(typed.tokens, from) !== null)
  const sugar = bits[at]
  if (sugar === undefined) return bits
  const from = sameBefore(typed.tokens, sugar.from)!
  const weighed = bits.slice(0, at).filter(({ kind, to }) => kind === 'mass' && to <= from)
  const isPlant = bits.some((each) => each.kind === 'plant' && each.to <= from)
  const [first] = weighed
  if (first === undefined || !isPlant || bits.some((each) => each.from < sugar.from && each.to > from)) return bits
  const grams = weighed.reduce((sum, { value }) => sum + value, 0)
  const text = weighed.length === 1 ? first.text : `${Math.round(grams)} g`
  return [...bits.slice(0, at), bit('mass', from, sugar.from, grams, text), ...bits.slice(at)]
}

const OF = /^(?:of|di|d)$/

/** The unit of a weight: `grams` of `500 grams`. */
const UNIT = /\p{L}+$/u

const weightOf = (text: string): number | null => {
  const amount = unlessRefused(() => parseAmount(text))
  return amount?.kind === 'mass' ? amount.massG : null
}

/** `500 g of redcurrants and 400 of raspberries`: a number that is *of* a plant has the unit of the weight before it. */
export function unitOfBefore({ typed }: Pick<Around, 'typed'>, bits: readonly Bit[]): readonly Bit[] {
  return bits.map((each, at) => {
    const [next, weighed] = [bits[at + 1], bits.slice(0, at).findLast(({ kind }) => kind === 'mass')]
    if (each.kind !== 'bare' || weighed === undefined || next?.kind !== 'plant') return each
    if (next.from !== each.to + 1 || !OF.test(typed.tokens[each.to]?.text ?? '')) return each
    const text = `${each.text} ${UNIT.exec(weighed.text)?.[0] ?? ''}`
    const grams = weightOf(text)
    return grams === null ? each : bit('mass', each.from, each.to, grams, text)
  })
}
