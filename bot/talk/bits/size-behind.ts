import { SPIRIT_BOTTLE_ML } from '../../../core/quantity/us-bottles.ts'
import type { Open, RolesAround } from './attach.ts'

export const EACH = /^(?:each|ciascuna|ciascuno|ones|l una|cadauna|cad)$/

/** `It’s a 70 cl one`: how large the bottle is that was spoken of. */
export const isOfOne = ({ typed }: RolesAround, { to, value }: Open): boolean =>
  value <= MOST_BOTTLE_ML && /^(?:ones?|bottles?|size|each|apiece|ciascuna)$/.test(typed.tokens[to]?.text ?? '')

/** As bottles are sold near 700 ml. */
const NEAR_ML = 100

/** From here on several bottles hold it together. */
const MOST_BOTTLE_ML = 1400

/** `2 bottles of gin, 70 cl each`, `half a bottle of gin, a 70 cl one`: that many times the size. */
export function asManyOf({ typed }: RolesAround, size: Open, count: number): void {
  const isEach = EACH.test(typed.tokens[size.to]?.text ?? '')
  // `Half a bottle (350 ml)`: that is what is left.
  const isLeft = Math.abs(size.value / count - SPIRIT_BOTTLE_ML) < NEAR_ML
  if (count === 1 || (size.value >= MOST_BOTTLE_ML && !isEach) || (isLeft && !isEach)) return
  const each = /^[\d.,]+ ?(?:ml|cl|l)$/i.test(size.text) ? size.text : `${size.value} ml`
  size.text = Number.isInteger(count) ? `${count} x ${each}` : `${Math.round(count * size.value)} ml`
  size.value *= count
}

const ALCOHOL = /alco|alcol|spirit/

/** `Una bottiglia di vodka da 70`: how large the bottle is, in cl, of a drink that is sold by its name. */
export function centilitresBehind({ typed }: RolesAround, bits: Open[]): void {
  bits.forEach((bottle, at) => {
    const [word, size] = [bits[at + 1], bits[at + 2]]
    if (bottle.kind !== 'bottles' || bottle.isSizeAssumed !== true || word?.kind !== 'spirit') return
    if (size?.kind !== 'bare' || ALCOHOL.test(word.text) || !SOLD_CL.has(size.value)) return
    if (typed.tokens[word.to]?.text !== 'da' || size.from !== word.to + 1) return
    size.kind = 'volume'
    size.value *= 10
    size.text = `${size.text} cl`
  })
}

/** Bottles of spirit as they are sold, cl, that no drink is so strong as. */
const SOLD_CL: ReadonlySet<number> = new Set([70, 75, 100, 150])

/** Of no liqueur: what is so strong is a spirit, % vol. */
const LEAST_SPIRIT = 35

/** `2 bottles of 95% 50cl`, `a bottle of 95% alcohol, 50 cl`: what stands behind the strength is how large such a bottle is. */
export function sizedBehindStrength(around: RolesAround, bits: Open[]): void {
  bits.forEach((bottle, at) => {
    const strength = bits[at + 1]
    if (bottle.kind !== 'bottles' || bottle.isSizeAssumed !== true) return
    if (strength?.kind !== 'strength' || strength.value < LEAST_SPIRIT || strength.from - bottle.to > 1) return
    const word = bits[at + 2]?.kind === 'spirit' ? bits[at + 2] : undefined
    const size = bits[word === undefined ? at + 2 : at + 3]
    const behind = (word ?? strength).to
    const joined = around.typed.tokens.slice(behind, size?.from ?? behind).map(({ text }) => text)
    if (size?.kind !== 'volume' || size.role !== null || !joined.every((text) => /^(?:[,(]|da|di|of)$/.test(text)))
      return
    bottle.role = 'gone'
    asManyOf(around, size, bottle.count ?? 1)
    size.role = 'of_spirit'
    if (word === undefined) return
    size.with = bits.indexOf(word)
    word.with = bits.indexOf(size)
  })
}
