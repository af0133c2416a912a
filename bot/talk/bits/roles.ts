import { type ConceptSpan, wordSet } from '../lexicon/concepts.ts'
import { atReference } from './at-reference.ts'
import { attach, isStrengthLike, type Open, type RolesAround, wordsOf } from './attach.ts'
import { bareProof } from './bare-proof.ts'
import type { Bit } from './bit.ts'
import { corrected } from './corrected.ts'
import { withoutDenied } from './denied-spirits.ts'
import { drinksCounted } from './drinks-counted.ts'
import { eachOf } from './each-of.ts'
import { formBehind } from './form-behind.ts'
import { jarSizes } from './jar-sizes.ts'
import { isMetered } from './metered.ts'
import { aboutSoStrong } from './mild-wish.ts'
import { litresSold, ouncesPoured } from './ounces-poured.ts'
import { partOfSugar } from './part-of-sugar.ts'
import {
  asStrongAs,
  bottlesPoured,
  liqueursNamed,
  madeOf,
  namedStrength,
  ofThem,
  respectively,
  weighedInBrackets,
} from './pours.ts'
import { articles, countedBehind, saidAgain, sizeInBrackets } from './said-again.ts'
import { sameAmount, unitOfBefore } from './same-amount.ts'
import { centilitresBehind } from './size-behind.ts'
import { finished, leftOut, prices, sized, weighed } from './sizes.ts'
import { strengthsOfFill } from './strengths-of-fill.ts'
import { sugarInside } from './sugar-inside.ts'
import { sweetnesses } from './sweetnesses.ts'
import { syrupParts } from './syrup-roles.ts'
import { volumes } from './volumes.ts'
import { wishBehindComplaint } from './wish-behind-complaint.ts'
import { isStronger, isWished, JOIN, wishes } from './wished.ts'

/** Bare numbers that are strengths, by what stands before them. */
function strengths(around: RolesAround, bits: Open[]): void {
  const { lexicon } = around
  const isLiquid =
    bits.some(({ kind }) => kind === 'volume' || kind === 'spirit' || kind === 'bottles' || kind === 'strength') ||
    around.spans.some(({ concept }) => LIQUID.has(concept)) ||
    bits.some(({ kind, value }) => kind === 'bare' && value >= 100)
  bits.forEach((bit, at) => {
    if (!isStrengthLike(bit) || bit.with !== undefined || !isLiquid) return
    const before = around.typed.tokens[bit.from - 1]?.text ?? ''
    const next = around.typed.tokens[bit.to]?.text ?? ''
    if (/^(?:ml|minutes|people|times|years|pm|am)$/.test(next)) return
    // `Liquore all’alloro, 30 foglie`: leaves are counted. `Spirit at 22 quid`: it is paid.
    if (wordSet(lexicon.loose).has(next) || /^(?:p|quid|euros?|pounds|dollars|bucks|pence|cents)$/.test(next)) return
    const words = wordsOf(around, bits[at - 1]?.to ?? 0, bit.from)
    // `a glass of 40`, `un bicchierino da 40`, `a 40 ml`: that is the glass.
    const glass = around.spans.find(
      ({ concept, to }) =>
        concept === 'glass_of' &&
        to <= bit.from &&
        bit.from - to <= 1 &&
        (bit.from === to || /^(?:of|da|di)$/.test(before)),
    )
    if (
      glass !== undefined ||
      (next === 'of' &&
        bits[at + 1] === undefined &&
        around.spans.some(({ concept }) => concept === 'units_of_alcohol'))
    ) {
      bit.kind = 'volume'
      bit.text = `${bit.text} ml`
      bit.role = 'have'
      return
    }
    // `My 95` is there, whatever is to be brought about.
    const isOwn = /^(?:my|our|mio|nostro)$/.test(before) && !bits.some(({ kind }) => kind === 'volume')
    const wished = !isOwn && isWished(around, bits, at)
    // `Some 96, about 600 ml`.
    const isSome =
      /^(?:some|del|dell|della)$/.test(before) && next === ',' && bit.value >= 35 && bits[at + 1]?.kind === 'volume'
    // `Strong, like 35`, `gradazione 30`.
    const isStrong = bit.value < LEAST_SPIRIT && at > 0 && words.some((word) => SAYS_STRENGTH.test(word))
    const isCued =
      isOwn ||
      isStrong ||
      isSome ||
      isMetered(around, bit) ||
      wordSet(lexicon.atStrength).has(before) ||
      (wished && wordSet(lexicon.toStrength).has(before)) ||
      (wished && words.length > 0)
    const isBehind =
      (isVolume(around, bits[at - 1]) && words.every((word) => /^(?:,|@|and|e|&|-)$/.test(word))) ||
      (bits[at - 1]?.kind === 'spirit' && words.every((word) => word === ',' || word === 'a'))
    if (!isCued && !isBehind && !(wished && JOIN.has(before))) return
    bit.kind = 'strength'
    bit.text = `${bit.text}%`
    bit.role = wished || (isStrong && hasOther(bits, at)) ? 'want' : 'have'
  })
}

/** An amount of liquid, or of what was strained a number that no strength is: `strained it, 930, 87`. */
const isVolume = ({ spans }: RolesAround, bit: Open | undefined): boolean =>
  bit?.kind === 'volume' ||
  (bit?.kind === 'bare' &&
    bit.value > 100 &&
    bit.with === undefined &&
    spans.some(({ concept }) => concept === 'strained'))

/** Another strength that is that of what is there. */
const hasOther = (bits: readonly Open[], at: number): boolean =>
  bits.some((bit, place) => place !== at && (bit.kind === 'strength' || bit.value >= 60 || isStronger(bit)))

/** No spirit to steep in is weaker than this, % vol. Common practice, no source. */
const LEAST_SPIRIT = 45

const SAYS_STRENGTH = /^(?:strong|strongish|strength|forte|gradazione)$/

const LIQUID = new Set<ConceptSpan['concept']>([
  'infusion',
  'strained',
  'reads',
  'finished_drink',
  'thin',
  'glass_of',
  'units_of_alcohol',
  'freezes',
  'too_sweet',
  'too_strong',
  'too_weak',
  'too_dry',
  'syrup',
])

/** Gives every bit its role. */
export function withRoles(around: RolesAround, read: readonly Bit[]): readonly Bit[] {
  const bits: Open[] = eachOf(
    around,
    unitOfBefore(around, sameAmount(around, withoutDenied(around, read))).map((bit) => ({ ...bit })),
  )
  prices(around, bits)
  atReference(around, bits)
  corrected(around, bits)
  leftOut(around, bits)
  jarSizes(around, bits)
  liqueursNamed(bits)
  madeOf(around, bits)
  ofThem(around, bits)
  respectively(around, bits, 2)
  bareProof(around, bits)
  litresSold(around, bits)
  drinksCounted(around, bits)
  aboutSoStrong(around, bits)
  attach(around, bits)
  ouncesPoured(bits)
  centilitresBehind(around, bits)
  partOfSugar(around, bits)
  sizeInBrackets(around, bits)
  countedBehind(around, bits)
  articles(around, bits)
  syrupParts(around, bits)
  namedStrength(around, bits)
  asStrongAs(around, bits)
  sized(around, bits)
  weighedInBrackets(around, bits)
  respectively(around, bits, 1)
  weighed(around, bits)
  formBehind(around, bits)
  const isAmountWished = finished(around, bits)
  strengths(around, bits)
  sugarInside(around, bits)
  wishBehindComplaint(around, bits)
  sweetnesses(around, bits)
  volumes(around, bits)
  strengthsOfFill(around, bits, isAmountWished)
  wishes(around, bits)
  bottlesPoured(around, bits)
  saidAgain(around, bits)
  return bits
}
