import type { ReadStrength } from '../../../core/jar/entry/entry.ts'
import { massG as liquidMassG } from '../../../core/liquid/liquid.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import { abvPercent, massG, sugarGPerL, sweeteningG, volumeMl } from '../../../core/quantity/measured/precision.ts'
import type {
  Mass,
  Strength,
  SugarRead,
  SweeteningRead,
  Sweetness,
  Volume,
  WaterRead,
} from '../../../core/quantity/quantities.ts'
import type { PartOfIt } from '../../../core/quantity/read/parse-share.ts'
import type { DrinkPart } from '../../../core/recipe/drinks-in.ts'
import { liquidOf, type NamedPortion, type Portion } from '../../../core/recipe/portion.ts'
import { propagate, type Values } from '../../../core/recipe/propagate.ts'
import type { Sweetening } from '../../../core/recipe/sweetening.ts'
import type { Given } from '../../calls/option.ts'
import { ChatError } from '../../chat/chat-error.ts'

/** An amount as read, and at which temperature. */
export const amountOf = (amount: Volume | Mass): Pick<Portion, 'amount' | 'by' | 'atC'> =>
  amount.kind === 'mass'
    ? { amount: massG(amount), by: 'mass', atC: 20 }
    : { amount: volumeMl(amount), by: 'volume', atC: amount.atC ?? 20 }

/** What is poured off a jar: an amount, or a part of it. */
export const pouredOff = (amount: Volume | Mass | PartOfIt) => (amount.kind === 'share' ? amount : amountOf(amount))

/** A hydrometer tells nothing of the strength of what is sweet. */
function expectNoSweetReading(strength: Strength | null, sweetGPerL: Measured): void {
  if (typeof strength?.atC !== 'number' || sweetGPerL.value <= 0) return
  throw new ChatError('bad_value', 'sweet_reading', {}, { option: 'strength' })
}

/** A liquid as its maker measured it; `tool` is what the strength was read from. */
export const portionOf = (
  amount: Volume | Mass,
  strength: Strength | null,
  sweetness: Sweetness | null,
  tool: 'label' | 'hydrometer',
): Portion => {
  const sweetGPerL = sweetness === null ? exactly(0) : sugarGPerL(sweetness)
  expectNoSweetReading(strength, sweetGPerL)
  return {
    ...amountOf(amount),
    abvPercent: strength === null ? exactly(0) : abvPercent(strength, tool),
    abvAtC: strength?.atC ?? null,
    readsProof: strength?.unit === 'proof',
    sugarGPerL: sweetGPerL,
  }
}

/** As much of it, of the strength that was said. */
export function ofStrength(portion: Portion, strength: Strength): Portion {
  expectNoSweetReading(strength, portion.sugarGPerL)
  return {
    ...portion,
    abvPercent: abvPercent(strength, 'label'),
    abvAtC: strength.atC,
    readsProof: strength.unit === 'proof',
  }
}

export const waterOf = (amount: Volume | Mass): Portion => portionOf(amount, null, null, 'label')

/** Grams of water, poured or weighed; none where nothing was given. */
export const waterG = (given: Given<Volume | Mass | WaterRead> | undefined): Measured => {
  const all = given === undefined ? [] : 'waters' in given.is ? given.is.waters : [given.is]
  if (all.length === 0) return exactly(0)
  const poured = all.map(waterOf)
  const sum = (each: Values<readonly Portion[]>) => each.reduce((total, one) => total + liquidMassG(liquidOf(one)), 0)
  return propagate({ poured }, (values) => ({ massG: sum(values.poured) })).massG
}

/** What a hydrometer showed of a strained liquid. */
export const strengthRead = (strength: Strength): ReadStrength => ({
  abvPercent: abvPercent(strength, 'hydrometer'),
  abvAtC: strength.atC,
  readsProof: strength.unit === 'proof',
})

/** Spirits and liqueurs, each with its strength: said beside it, or by the `strength:` option. */
export function spiritPortions(
  spirits: readonly DrinkPart[],
  strength: Given<Strength> | undefined,
): readonly Portion[] {
  if (strength !== undefined && spirits.every((spirit) => spirit.strength !== null)) {
    throw new ChatError('too_many_options', 'strength_twice', {}, { option: 'strength' })
  }
  return spirits.map(({ amount, strength: own, sweetness }) => {
    const said = own ?? strength?.is ?? null
    if (said === null) {
      throw new ChatError('missing_option', 'spirit_strength', {}, { option: 'strength' })
    }
    return portionOf(amount, said, sweetness, 'label')
  })
}

/** The same as their maker called them. */
export const spiritsCalled = (
  spirits: readonly DrinkPart[],
  strength: Given<Strength> | undefined,
): readonly NamedPortion[] =>
  spiritPortions(spirits, strength).map((portion, at) => {
    const { drink } = spirits[at]!
    return drink === null ? portion : { ...portion, drink }
  })

/** Parts of a blend; a strength or sweetness left out is none. */
export const blendPortions = (parts: readonly DrinkPart[]): readonly Portion[] =>
  parts.map(({ amount, strength, sweetness }) => portionOf(amount, strength, sweetness, 'label'))

/** What goes in of what sweetens, and of what stands for the water; empty where nothing was given. */
export const sweeteningsOf = (
  given: Given<readonly SweeteningRead[]> | Given<SugarRead> | undefined,
  water?: Given<WaterRead> | undefined,
): readonly Sweetening[] => {
  const amounts = given === undefined ? [] : 'amounts' in given.is ? given.is.amounts : given.is
  return [...amounts, ...(water?.is.juices ?? [])].map((each) => ({
    material: each.material,
    massG: sweeteningG(each),
  }))
}
