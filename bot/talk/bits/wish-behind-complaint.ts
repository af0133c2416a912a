import type { Concept } from '../lexicon/lexicon.ts'
import type { Open, RolesAround } from './attach.ts'

/** A complaint, what it is of, and whether a wish lies above or below what is there. */
const COMPLAINTS = [
  ['too_sweet', 'sweetness', -1],
  ['drier', 'sweetness', -1],
  ['too_dry', 'sweetness', 1],
  ['sweeter', 'sweetness', 1],
  ['too_strong', 'strength', -1],
  ['weaker', 'strength', -1],
  ['too_weak', 'strength', 1],
  ['stronger', 'strength', 1],
] as const satisfies readonly (readonly [Concept, Open['kind'], number])[]

/** What is wished of a liqueur, % vol and g/L. */
const WISHED = { strength: [10, 60], sweetness: [30, 600] } as const
const SIGN = { strength: '%', sweetness: ' g/L' } as const

/**
 * `2 litres at 35 % and 310 g a litre are too sweet, 200 would be better`: where it is said what is wrong with a drink whose strength or
 * sweetness is told, one more number of that kind on the other side is the wish.
 */
export function wishBehindComplaint(around: RolesAround, bits: Open[]): void {
  if (bits.filter(({ kind, role }) => kind === 'volume' && role !== 'of_water').length !== 1) return
  for (const [concept, kind, side] of COMPLAINTS) {
    if (!around.spans.some((span) => span.concept === concept)) continue
    const first = bits.findIndex((bit) => bit.kind === kind && bit.role !== 'want')
    if (first === -1 || bits.some((bit) => bit.kind === kind && bit.role === 'want')) continue
    const [least, most] = WISHED[kind]
    const open = bits.filter(
      (bit, at) =>
        at > first &&
        bit.with === undefined &&
        (bit.role === null || bit.role === 'have') &&
        (bit.kind === kind || bit.kind === 'bare') &&
        bit.value >= least &&
        bit.value <= most,
    )
    const [wish, another] = open
    if (wish === undefined || another !== undefined || (wish.value - bits[first]!.value) * side <= 0) continue
    if (wish.kind === 'bare') wish.text = `${wish.text}${SIGN[kind]}`
    wish.kind = kind
    wish.role = 'want'
  }
}
