import { gramsOf, type Liquid, massG, mix, part, volumeMl, waterG } from '../../liquid/liquid.ts'
import { dissolvedPartG } from '../../liquid/solubility.ts'
import { type MaterialId, materialOf, USUAL_MATERIAL } from '../../quantity/materials.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { propagate, valuesOf } from '../propagate.ts'
import { type SugarStays, sugarStays } from '../sugar-stays.ts'
import { fillerMlPerG, fillerOf, gramOf, sugarsFactorOf } from '../sweetening.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { type SyrupWish, syrupFor } from './syrup-for.ts'

export interface Syrup {
  /** What of the infusion is used: all of it, unless `atMostMl` binds. */
  readonly infusionMl: Measured
  /** What stands for the water; null for water. The amounts of water are of it. */
  readonly filler: MaterialId | null
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

/** What the syrup is made of; left out, white sugar and water. */
export interface SyrupOf {
  readonly sweetener?: MaterialId | undefined
  readonly filler?: MaterialId | null | undefined
}

/** What sweetens, and the water, that turn a drained infusion into the liqueur wished for. */
export function syrup(
  infusion: Portion,
  wish: SyrupWish,
  atMostMl: number | null = null,
  { sweetener = USUAL_MATERIAL, filler = null }: SyrupOf = {},
): Syrup {
  const central = liquidOf(valuesOf(infusion))
  const sugarsFactor = sugarsFactorOf(sweetener)
  const fillerFactor = filler === null ? exactly(1) : sugarsFactorOf(filler)
  const mlPerG = fillerMlPerG(filler)
  const { usedFraction, ...amounts } = propagate({ infusion, sugarsFactor, fillerFactor }, (values) =>
    amountsFor(liquidOf(values.infusion), wish, atMostMl, {
      gram: gramOf(sweetener, values.sugarsFactor),
      filler: fillerOf(filler, values.fillerFactor),
      mlPerG,
    }),
  )
  const taken = usedFraction.value
  const pour = (from: Liquid, filled: Liquid, sweet: Liquid): Liquid => mix(part(from, taken), filled, sweet)
  const filled = (waterMl: number, factor: number) => gramsOf(fillerOf(filler, factor), waterMl / mlPerG)
  const sweet = (sugarG: number, factor: number) => gramsOf(gramOf(sweetener, factor), sugarG)
  const stays = sugarStays(pour(central, filled(amounts.waterMl.value, 1), sweet(amounts.sugarG.value, 1)))
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
      fillerFactor,
    },
    (values) =>
      pour(
        part(liquidOf(values.infusion), values.poured),
        filled(values.waterMl, values.fillerFactor),
        sweet(values.sugarG, values.sugarsFactor),
      ),
  )
  return {
    ...withTools(amounts, taken < 1),
    sweetener,
    filler,
    outcome,
    sugarStays: stays,
    dissolvesG: undissolved(sweetener, amounts.sugarG.value, amounts.waterG.value * waterG(fillerOf(filler))),
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

interface Grams {
  readonly gram: Liquid
  readonly filler: Liquid
  readonly mlPerG: number
}

function amountsFor(infusion: Liquid, wish: SyrupWish, atMostMl: number | null, { gram, filler, mlPerG }: Grams) {
  const whole = syrupFor(infusion, wish, gram, filler)
  const wholeMl = volumeMl(mix(infusion, gramsOf(filler, whole.waterG), gramsOf(gram, whole.sugarG)))
  const usedFraction = atMostMl === null ? 1 : Math.min(1, atMostMl / wholeMl)
  const addedWaterG = whole.waterG * usedFraction
  const sugarG = whole.sugarG * usedFraction
  const made = mix(gramsOf(filler, addedWaterG), gramsOf(gram, sugarG))
  return {
    usedFraction,
    infusionMl: volumeMl(infusion) * usedFraction,
    waterG: addedWaterG,
    waterMl: addedWaterG * mlPerG,
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
