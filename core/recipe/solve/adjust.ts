import { massFractionFromAbv } from '../../liquid/ethanol-water.ts'
import {
  ethanolG,
  type Liquid,
  liquidFrom,
  massG,
  mix,
  part,
  sugar,
  sugarG,
  volumeMl,
  water,
  waterG,
} from '../../liquid/liquid.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { propagate, valuesOf } from '../propagate.ts'
import { type SugarStays, sugarStays } from '../sugar-stays.ts'
import type { Targets } from '../targets.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { noWay } from './unreachable-adjust.ts'

export interface Adjustment {
  readonly spiritMl: Measured
  readonly waterG: Measured
  readonly waterMl: Measured
  readonly sugarG: Measured
  readonly outcome: Outcome
  readonly sugarStays: SugarStays
}

interface Additions {
  readonly spiritG: number
  readonly waterG: number
  readonly sugarG: number
}

/**
 * The least addition of spirit, water and sugar that brings a liqueur to both targets. At the targets each gram is a
 * known share of ethanol, water and sugar, so every addition is linear in the final mass; the least mass at which none
 * of them is negative is the answer. Without a spirit at hand (`spiritAbvPercent` null) only one mass can be right.
 */
export function adjust(liqueur: Portion, targets: Targets, spiritAbvPercent: Measured | null): Adjustment {
  const spiritAbv = spiritAbvPercent ?? exactly(0)
  const add = (from: Liquid, spiritPercent: number) =>
    additions(from, targets, spiritAbvPercent === null ? null : spiritPercent)
  // The first solve speaks with the maker's own numbers, should there be no way.
  const central = add(liquidOf(valuesOf(liqueur)), spiritAbv.value)
  const spiritMlPerG = (percent: number) => (spiritAbvPercent === null ? 0 : volumeMl(spiritOf(1, percent)))
  const amounts = propagate({ liqueur, spiritAbv }, (values) => {
    const wanted = add(liquidOf(values.liqueur), values.spiritAbv)
    return {
      spiritMl: wanted.spiritG * spiritMlPerG(values.spiritAbv),
      waterG: wanted.waterG,
      waterMl: volumeMl(water(wanted.waterG)),
      sugarG: wanted.sugarG,
    }
  })
  const pour = (from: Liquid, spirit: Liquid, waterMl: number, addedSugarG: number) =>
    mix(from, spirit, water(waterMl / volumeMl(water(1))), sugar(addedSugarG))
  const spirit = spiritOf(central.spiritG, spiritAbv.value)
  const stays = sugarStays(pour(liquidOf(valuesOf(liqueur)), spirit, amounts.waterMl.value, amounts.sugarG.value))
  const outcome = outcomeOf(
    {
      liqueur,
      spiritAbv,
      spiritMl: measuredOut(amounts.spiritMl.value),
      waterMl: measuredOut(amounts.waterMl.value),
      sugarG: weighedOut(amounts.sugarG.value),
    },
    (values) =>
      pour(
        liquidOf(values.liqueur),
        liquidFrom({ volumeMl: values.spiritMl, abvPercent: values.spiritAbv, sugarGPerL: 0 }),
        values.waterMl,
        values.sugarG,
      ),
  )
  return {
    spiritMl: byTool(amounts.spiritMl, measuredOut),
    waterG: byTool(amounts.waterG, weighedOut),
    waterMl: byTool(amounts.waterMl, measuredOut),
    sugarG: byTool(amounts.sugarG, weighedOut),
    outcome,
    sugarStays: stays,
  }
}

function spiritOf(spiritG: number, percent: number): Liquid {
  const litre = liquidFrom({ volumeMl: 1000, abvPercent: percent, sugarGPerL: 0 })
  return part(litre, spiritG / massG(litre))
}

function additions(from: Liquid, targets: Targets, spiritPercent: number | null): Additions {
  const litre = liquidFrom({ volumeMl: 1000, ...targets })
  const ethanolShare = ethanolG(litre) / massG(litre)
  const waterShare = waterG(litre) / massG(litre)
  const sugarShare = sugarG(litre) / massG(litre)
  const strength = spiritPercent === null ? 1 : massFractionFromAbv(spiritPercent)
  const waterPerEthanol = (1 - strength) / strength
  // Bounds on the final mass: no sugar, no spirit, no water taken away.
  const byEthanolG = ethanolG(from) / ethanolShare
  const bySugarG = sugarG(from) === 0 ? 0 : sugarG(from) / sugarShare
  const waterSlope = waterShare - ethanolShare * waterPerEthanol
  // A spirit with more water to its ethanol than the target bounds the mass from above; the check below sees to it.
  const byWaterG = waterSlope > 0 ? (waterG(from) - ethanolG(from) * waterPerEthanol) / waterSlope : 0
  const leastG = spiritPercent === null ? byEthanolG : Math.max(byEthanolG, bySugarG, byWaterG)
  const slackG = 1e-9 * massG(from)
  const spiritG = (leastG * ethanolShare - ethanolG(from)) / strength
  const wanted = {
    spiritG,
    waterG: leastG * waterShare - waterG(from) - spiritG * (1 - strength),
    sugarG: leastG * sugarShare - sugarG(from),
  }
  const isPossible = Number.isFinite(leastG) && Object.values(wanted).every((massG) => massG >= -slackG)
  if (!isPossible) throw noWay(from, targets, spiritPercent)
  return {
    spiritG: wanted.spiritG > slackG ? wanted.spiritG : 0,
    waterG: wanted.waterG > slackG ? wanted.waterG : 0,
    sugarG: wanted.sugarG > slackG ? wanted.sugarG : 0,
  }
}
