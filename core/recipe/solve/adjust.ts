import { DomainError } from '../../domain-error.ts'
import { massFractionFromAbv } from '../../liquid/ethanol-water.ts'
import {
  ethanolG,
  extractG,
  gramsOf,
  type Liquid,
  liquidFrom,
  massG,
  mix,
  part,
  sugarG,
  volumeMl,
  water,
  waterG,
} from '../../liquid/liquid.ts'
import { type MaterialId, USUAL_MATERIAL } from '../../quantity/materials.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { propagate, valuesOf } from '../propagate.ts'
import { type SugarStays, sugarStays } from '../sugar-stays.ts'
import { gramOf, sugarsFactorOf } from '../sweetening.ts'
import type { Targets } from '../targets.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { expectSweetEnough } from './syrup-for.ts'
import { noWay } from './unreachable-adjust.ts'

export interface Adjustment {
  readonly spiritMl: Measured
  readonly waterG: Measured
  readonly waterMl: Measured
  readonly sweetener: MaterialId
  /** Of what sweetens, its own water included. */
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
 * The least addition of spirit, water and what sweetens that brings a liqueur to both targets. At the targets each gram is a
 * known share of ethanol, water and sugar, so every addition is linear in the final mass; the least mass at which none
 * of them is negative is the answer. Without a spirit at hand (`spiritAbvPercent` null) only one mass can be right.
 */
export function adjust(
  liqueur: Portion,
  targets: Targets,
  spiritAbvPercent: Measured | null,
  sweetener: MaterialId = USUAL_MATERIAL,
): Adjustment {
  const spiritAbv = spiritAbvPercent ?? exactly(0)
  const sugarsFactor = sugarsFactorOf(sweetener)
  const add = (from: Liquid, spiritPercent: number, factor: number) =>
    additions(from, targets, spiritAbvPercent === null ? null : spiritPercent, gramOf(sweetener, factor))
  // The first solve speaks with the maker's own numbers, should there be no way.
  const central = add(liquidOf(valuesOf(liqueur)), spiritAbv.value, 1)
  const spiritMlPerG = (percent: number) => (spiritAbvPercent === null ? 0 : volumeMl(spiritOf(1, percent)))
  const amounts = propagate({ liqueur, spiritAbv, sugarsFactor }, (values) => {
    const wanted = add(liquidOf(values.liqueur), values.spiritAbv, values.sugarsFactor)
    return {
      spiritMl: wanted.spiritG * spiritMlPerG(values.spiritAbv),
      waterG: wanted.waterG,
      waterMl: volumeMl(water(wanted.waterG)),
      sugarG: wanted.sugarG,
    }
  })
  const pour = (from: Liquid, spirit: Liquid, waterMl: number, sweet: Liquid) =>
    mix(from, spirit, water(waterMl / volumeMl(water(1))), sweet)
  const spirit = spiritOf(central.spiritG, spiritAbv.value)
  const stays = sugarStays(
    pour(liquidOf(valuesOf(liqueur)), spirit, amounts.waterMl.value, gramsOf(gramOf(sweetener), amounts.sugarG.value)),
  )
  const outcome = outcomeOf(
    {
      liqueur,
      spiritAbv,
      spiritMl: measuredOut(amounts.spiritMl.value),
      waterMl: measuredOut(amounts.waterMl.value),
      sugarG: weighedOut(amounts.sugarG.value),
      sugarsFactor,
    },
    (values) =>
      pour(
        liquidOf(values.liqueur),
        liquidFrom({ volumeMl: values.spiritMl, abvPercent: values.spiritAbv, sugarGPerL: 0 }),
        values.waterMl,
        gramsOf(gramOf(sweetener, values.sugarsFactor), values.sugarG),
      ),
  )
  return {
    spiritMl: byTool(amounts.spiritMl, measuredOut),
    waterG: byTool(amounts.waterG, weighedOut),
    waterMl: byTool(amounts.waterMl, measuredOut),
    sweetener,
    sugarG: byTool(amounts.sugarG, weighedOut),
    outcome,
    sugarStays: stays,
  }
}

function spiritOf(spiritG: number, percent: number): Liquid {
  const litre = liquidFrom({ volumeMl: 1000, abvPercent: percent, sugarGPerL: 0 })
  return part(litre, spiritG / massG(litre))
}

const MOST_ROUNDS = 60
/** So little change between two rounds, as a share of the mass, is none: rounding alone moves it by 1e-12. */
const SETTLED_SHARE = 1e-11

/**
 * What comes with sugars that is none changes the shares of a litre a little, by the mass that is found with them: so they are found
 * again until that mass settles.
 */
function additions(from: Liquid, targets: Targets, spiritPercent: number | null, gram: Liquid): Additions {
  expectSweetEnough(gram, targets.sugarGPerL)
  const hasExtract = extractG(from) + extractG(gram) > 0
  let litre = liquidFrom({ volumeMl: 1000, ...targets })
  let found = additionsAt(litre, from, spiritPercent, gram)
  for (let round = 0; hasExtract && Number.isFinite(found.finalG); round++) {
    if (round === MOST_ROUNDS) throw new DomainError('internal', 'no_convergence', { low: 0, high: MOST_ROUNDS })
    const { finalG: beforeG, wanted } = found
    const all = Math.max(0, extractG(from) + wanted.sugarG * extractG(gram))
    litre = liquidFrom({ volumeMl: 1000, ...targets, extractGPerL: (all / beforeG) * massG(litre) })
    found = additionsAt(litre, from, spiritPercent, gram)
    if (Math.abs(found.finalG - beforeG) <= SETTLED_SHARE * beforeG) break
  }
  const { wanted, finalG } = found
  const slackG = 1e-9 * massG(from)
  const isPossible = Number.isFinite(finalG) && Object.values(wanted).every((massG) => massG >= -slackG)
  if (!isPossible) throw noWay(from, targets, spiritPercent, gram)
  return {
    spiritG: wanted.spiritG > slackG ? wanted.spiritG : 0,
    waterG: wanted.waterG > slackG ? wanted.waterG : 0,
    sugarG: wanted.sugarG > slackG ? wanted.sugarG : 0,
  }
}

/** What is wanted where a litre of what comes of it is known; below nothing where it cannot be. */
function additionsAt(litre: Liquid, from: Liquid, spiritPercent: number | null, gram: Liquid) {
  const ethanolShare = ethanolG(litre) / massG(litre)
  const sweetShare = sugarG(litre) / massG(litre) / sugarG(gram)
  const waterShare = waterG(litre) / massG(litre) - sweetShare * waterG(gram)
  const ownSweetG = sugarG(from) / sugarG(gram)
  const ownWaterG = waterG(from) - ownSweetG * waterG(gram)
  const strength = spiritPercent === null ? 1 : massFractionFromAbv(spiritPercent)
  const waterPerEthanol = (1 - strength) / strength
  // Bounds on the final mass: no sweetening, no spirit, no water taken away.
  const byEthanolG = ethanolG(from) / ethanolShare
  const bySugarG = sugarG(from) === 0 ? 0 : ownSweetG / sweetShare
  const waterSlope = waterShare - ethanolShare * waterPerEthanol
  // A spirit with more water to its ethanol than the target bounds the mass from above; the check of the result sees to it.
  const byWaterG = waterSlope > 0 ? (ownWaterG - ethanolG(from) * waterPerEthanol) / waterSlope : 0
  const finalG = spiritPercent === null ? byEthanolG : Math.max(byEthanolG, bySugarG, byWaterG)
  const spiritG = (finalG * ethanolShare - ethanolG(from)) / strength
  const wanted: Additions = {
    spiritG,
    waterG: finalG * waterShare - ownWaterG - spiritG * (1 - strength),
    sugarG: finalG * sweetShare - ownSweetG,
  }
  return { finalG, wanted }
}
