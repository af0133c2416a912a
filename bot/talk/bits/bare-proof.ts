import { joins, type Open, type RolesAround } from './attach.ts'
import type { Bit } from './bit.ts'

/**
 * What stands on a label in US proof, twice the percent by volume (27 CFR 5.1): from 100 on no strength is meant by percent. Below
 * it only drinks that are sold near 40 % are so meant, by `80` and what is next to it.
 */
const PROOF = { least: 100, most: 192 } as const
const OF_DRINK = /^(?:80|84|86|88|90|92|94|96)$/
/** Nobody measures so many millilitres. */
const LABEL = /^(?:101|107|114|151|190)$/

/** Where a number is of something that is no strength. */
const COUNTED =
  /^(?:ml|cl|g|gr|day|days|week|weeks|month|months|year|years|people|times|minutes|bottles?|giorni|anni|mesi)$/

const US_UNIT = /(?:fifth|handle|quart|qt|cup|pint|gallon|fl oz|lb|ounce|oz|750 ml|1750 ml)/

const isLiquid = ({ kind }: Bit): boolean => kind === 'volume' || kind === 'bottles'

/** `a quart of 151`, `190 grain alcohol, a litre`, `a fifth of 80 brandy`: the number on the label, with no word behind it. */
export function bareProof(around: RolesAround, bits: Open[]): void {
  const word = (at: number): string => around.typed.tokens[at]?.text ?? ''
  bits.forEach((bit, at) => {
    if (bit.kind !== 'bare' || bit.role !== null || !Number.isInteger(bit.value) || COUNTED.test(word(bit.to))) return
    const [before, next] = [bits[at - 1], bits[at + 1]]
    const spirit =
      next?.kind === 'spirit' && joins(around, bit.to, next.from) && !/^(?:of|di)$/.test(word(bit.to)) ? next : null
    const isAfterSpirit = before?.kind === 'spirit' && before.to === bit.from
    const isMeasured = before !== undefined && isLiquid(before) && joinsOf(word, before.to, bit.from)
    const beside = spirit ?? (isAfterSpirit ? before : null)
    const isPoured = isMeasured || bits.some((each, place) => isLiquid(each) && isFree(bits, place))
    const isProof = bit.value >= PROOF.least && bit.value <= PROOF.most && (isPoured || LABEL.test(bit.text))
    const isSold = beside !== null && beside.value > 0 && beside.value <= 50
    const isOfDrink = isSold && OF_DRINK.test(bit.text) && bits.some(({ text }) => US_UNIT.test(text))
    if (!(isProof || isOfDrink) || (beside === null && !isMeasured)) return
    bit.kind = 'strength'
    bit.text = `${bit.text} proof`
    bit.value /= 2
    bit.role = 'have'
    if (isMeasured && spirit === null && before.with === undefined) before.role = 'of_spirit'
  })
}

const joinsOf = (word: (at: number) => string, from: number, to: number): boolean =>
  from === to || (to === from + 1 && /^(?:of|di|da|a)$/.test(word(from)))

/** An amount that no plant, sugar or water follows. */
const isFree = (bits: readonly Bit[], at: number): boolean =>
  !['plant', 'sugar', 'water'].includes(bits[at + 1]?.kind ?? '') || bits[at + 1]!.from - bits[at]!.to > 1
