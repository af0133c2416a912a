import { SPIRIT_BOTTLE_ML } from '../../../core/quantity/us-bottles.ts'
import type { Bit, Sentence } from '../bits/bit.ts'

/** A liquid of a sentence: how much, how strong, what it is called. */
export interface LiquidSaid {
  readonly amount: Bit
  readonly strength: Bit | null
  readonly sweetness: Bit | null
  readonly word: Bit | null
}

const isPoured = ({ kind, role }: Bit): boolean =>
  (kind === 'volume' && (role === null || role === 'have' || role === 'of_spirit')) ||
  (kind === 'bottles' && role === 'of_spirit')

/** The liquids in order, each with the strength that belongs to it: that behind it, or the one before. */
export function liquidsIn({ bits, has }: Sentence): readonly LiquidSaid[] {
  const isWeighed = has('infusion', 'finished_drink', 'syrup') && !bits.some(isPoured)
  const poured = bits.filter((bit) => isPoured(bit) || (isWeighed && bit.kind === 'mass' && bit.role === null))
  const taken = new Set<Bit>()
  const near = (amount: Bit, kind: Bit['kind']): Bit | null => {
    const at = bits.indexOf(amount)
    const nextAmount = bits.findIndex((each, place) => place > at && poured.includes(each))
    const behind = bits
      .slice(at + 1, nextAmount === -1 ? undefined : nextAmount)
      .find((each) => each.kind === kind && each.role === 'have' && !taken.has(each))
    const first =
      poured[0] === amount
        ? bits.slice(0, at).findLast((each) => each.kind === kind && each.role === 'have' && !taken.has(each))
        : undefined
    const found = behind ?? first ?? null
    if (found !== null) taken.add(found)
    return found
  }
  return poured.map((amount) => {
    const word = amount.with === undefined ? null : (bits[amount.with] ?? null)
    return { amount, strength: near(amount, 'strength'), sweetness: near(amount, 'sweetness'), word }
  })
}

/** How much, as an option takes it; a bottle of spirit is one as it is sold. */
function volumeText({ kind, text, count, isSizeAssumed, assumedMl = SPIRIT_BOTTLE_ML }: Bit): string {
  if (kind !== 'bottles') return text
  if (isSizeAssumed === true) {
    const size = `${assumedMl} ml`
    if (text.includes('x')) return text.replace(/^1 x /, '')
    return count === undefined || count === 1 ? size : `${count} x ${size}`
  }
  return text.replace(/^1 x /, '')
}

/** Drinks whose word says nothing that an option needs. */
const ALCOHOL = /alco|spirit|alcol|liquor|booze/

/** `Three vodkas`: each is a bottle of one. */
const onlyOne = (name: string): string =>
  name.replace(/^(vodka|gin|rum|brandy|whiskey)s$/, '$1').replace(/^(brand|whisk)ies$/, '$1y')

/** A spirit as an option takes it; its strength is the usual one of the drink where none was said. */
export function spiritText({ amount, strength, word }: LiquidSaid): string {
  const name = word === null || ALCOHOL.test(word.text) ? null : onlyOne(word.text.toLowerCase())
  const abv = strength?.text ?? (word !== null && word.value > 0 ? `${word.value}%` : null)
  const volume = amount.kind === 'volume' ? ouncesOf(volumeText(amount)) : volumeText(amount)
  return [volume, name, abv].filter((part) => part !== null).join(' ')
}

/** Ounces of what is poured are fluid. */
const ouncesOf = (text: string): string => text.replace(/(?<=\d\s?)(?:oz|ounces?)$/i, 'fl oz')

/** How much of a liquid that is no spirit. */
export const liquidText = ({ amount }: LiquidSaid): string => ouncesOf(volumeText(amount))
