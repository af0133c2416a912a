import { gramsOf, type Liquid, massG, mix, part, volumeMl, water } from '../../liquid/liquid.ts'
import { dissolvedPartG } from '../../liquid/solubility.ts'
import { type MaterialId, materialOf, USUAL_MATERIAL } from '../../quantity/materials.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { propagate, valuesOf } from '../propagate.ts'
import { type SugarStays, sugarStays } from '../sugar-stays.ts'
import { gramOf, sugarsFactorOf } from '../sweetening.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { type SyrupWish, syrupFor } from './syrup-for.ts'

export interface Syrup {
  /** What of the infusion is used: all of it, unless `atMostMl` binds. */
  readonly infusionMl: Measured
  readonly waterG: Measured
  readonly waterMl: Measured
  /** What sweetens, and how much of it to weigh, its own water included. */
  readonly sweetener: MaterialId
  readonly sugarG: Measured
  readonly syrupG: Measured
  readonly syrupMl: Measured
  readonly outcome: Outcome
  readonly sugarStays: SugarStays
  /** Grams of the sugar that its water dissolves at 20 °C; null where all of it does, or it is dissolved already. */
  readonly dissolvesG: number | null
  /** What of the infusion `atMostMl` leaves over; 0 where it does not bind. */
  readonly leftMl: number
}

/** What sweetens, and the water, that turn a drained infusion into the liqueur wished for. */
export function syrup(
  infusion: Portion,
  wish: SyrupWish,
  atMostMl: number | null = null,
  sweetener: MaterialId = USUAL_MATERIAL,
): Syrup {
  const central = liquidOf(valuesOf(infusion))
  const sugarsFactor = sugarsFactorOf(sweetener)
  const { usedFraction, ...amounts } = propagate({ infusion, sugarsFactor }, (values) =>
    amountsFor(liquidOf(values.infusion), wish, atMostMl, gramOf(sweetener, values.sugarsFactor)),
  )
  const taken = usedFraction.value
  const pour = (from: Liquid, waterMl: number, sweet: Liquid): Liquid =>
    mix(part(from, taken), water(waterMl / volumeMl(water(1))), sweet)
  const sweet = (sugarG: number, factor: number) => gramsOf(gramOf(sweetener, factor), sugarG)
  const stays = sugarStays(pour(central, amounts.waterMl.value, sweet(amounts.sugarG.value, 1)))
  // A part of the infusion is poured off with a jug, however well the whole was read.
  const poured = taken < 1 ? { value: 1, plusMinus: measuredOut(1).plusMinus } : { value: 1, plusMinus: 0 }
  const bySize = taken < 1 ? { ...infusion, amount: { ...infusion.amount, plusMinus: 0 } } : infusion
  const outcome = outcomeOf(
    {
      infusion: bySize,
      poured,
      waterMl: measuredOut(amounts.waterMl.value),
      sugarG: weighedOut(amounts.sugarG.value),
      sugarsFactor,
    },
    (values) =>
      pour(part(liquidOf(values.infusion), values.poured), values.waterMl, sweet(values.sugarG, values.sugarsFactor)),
  )
  return {
    ...withTools(amounts, taken < 1),
    sweetener,
    outcome,
    sugarStays: stays,
    dissolvesG: undissolved(sweetener, amounts.sugarG.value, amounts.waterG.value),
    leftMl: taken < 1 ? volumeMl(central) * (1 - taken) : 0,
  }
}

type AmountName = 'infusionMl' | 'waterG' | 'waterMl' | 'sugarG' | 'syrupG' | 'syrupMl'
type MeasuredAmounts = { readonly [Name in AmountName]: Measured }

/** The ± of an amount: how far the right one may lie, and what it is measured out with. */
function withTools(amounts: MeasuredAmounts, isPartOfInfusion: boolean): MeasuredAmounts {
  return {
    infusionMl: isPartOfInfusion ? byTool(amounts.infusionMl, measuredOut) : amounts.infusionMl,
    waterG: byTool(amounts.waterG, weighedOut),
    waterMl: byTool(amounts.waterMl, measuredOut),
    sugarG: byTool(amounts.sugarG, weighedOut),
    syrupG: byTool(amounts.syrupG, weighedOut),
    syrupMl: byTool(amounts.syrupMl, measuredOut),
  }
}

function amountsFor(infusion: Liquid, wish: SyrupWish, atMostMl: number | null, gram: Liquid) {
  const whole = syrupFor(infusion, wish, gram)
  const wholeMl = volumeMl(mix(infusion, water(whole.waterG), gramsOf(gram, whole.sugarG)))
  const usedFraction = atMostMl === null ? 1 : Math.min(1, atMostMl / wholeMl)
  const waterG = whole.waterG * usedFraction
  const sugarG = whole.sugarG * usedFraction
  const made = mix(water(waterG), gramsOf(gram, sugarG))
  return {
    usedFraction,
    infusionMl: volumeMl(infusion) * usedFraction,
    waterG,
    waterMl: volumeMl(water(waterG)),
    sugarG,
    syrupG: massG(made),
    syrupMl: volumeMl(made),
  }
}

/** Grams of what sweetens that so much water dissolves at 20 °C; null where all of it does, or it is dissolved already. */
export const undissolved = (sweetener: MaterialId, sugarG: number, waterG: number): number | null =>
  materialOf(sweetener).isSyrup ? null : dissolvedPartG(sugarG, waterG)

/** Whether the water dissolves the sugar, so that a syrup can be made of them first. */
export const isSyrup = ({ sugarG, waterG, dissolvesG }: Pick<Syrup, 'sugarG' | 'waterG' | 'dissolvesG'>): boolean =>
  sugarG.value > 0 && waterG.value > 0 && dissolvesG === null
