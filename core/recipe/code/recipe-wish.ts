import { abvPercent, ethanolG, type Liquid, liquidFrom, mix, water } from '../../liquid/liquid.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { type Batch, timesSpirits } from '../batch.ts'
import { remade, wishOf } from '../plan/batch-wish.ts'
import type { PlanWish } from '../plan/plan-wish.ts'
import type { KeptDays } from '../plan/schedule.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { valuesOf } from '../propagate.ts'
import { measuredOut } from '../tool-precision.ts'

/** Spirits poured together. */
export const poured = (spirits: readonly Portion[]): Liquid => mix(...valuesOf(spirits).map(liquidOf))

/** As much spirit of this strength as holds that alcohol. */
export const spiritHolding = (wantedG: number, strength: Measured): readonly Portion[] => {
  const ml = liquidFrom({ volumeMl: 1, abvPercent: strength.value, sugarGPerL: 0 })
  const amount = measuredOut(wantedG / ethanolG(ml))
  return [{ amount, by: 'volume', atC: 20, abvPercent: strength, abvAtC: null, sugarGPerL: exactly(0) }]
}

/** Other spirit is brought to the strength in which the batch steeps from so much above it, % vol. */
const STRONGER_PERCENT = 1

/** The strength in which it steeps, % vol, before the plants. */
export const steepsAtPercent = ({ spirits, waterG }: Pick<Batch, 'spirits' | 'waterG'>): number =>
  abvPercent(mix(poured(spirits), water(waterG.value)))

/** Null where no water goes in first. */
function dilutedTo(batch: Batch, spirits: readonly Portion[], isOther: boolean): number | null {
  if (!isOther) return batch.waterG.value === 0 ? null : steepsAtPercent(batch)
  const ownPercent = steepsAtPercent(batch)
  return abvPercent(poured(spirits)) > ownPercent + STRONGER_PERCENT ? ownPercent : null
}

/** The days of a batch; undefined where the catalogue tells them. */
export function keptDays({ plants, days: { strainFrom, strainBy, restDays } }: Batch): KeptDays | undefined {
  if (strainFrom === null || strainBy === null) return undefined
  const steep = { fromDays: strainFrom, byDays: strainBy }
  return { steep, restDays, addOnDays: plants.map(({ addOn }) => Math.min(addOn ?? 0, strainBy)) }
}

/** What a person may still say of a batch that somebody else made. */
export type SaidOfBatch = Pick<PlanWish, 'named' | 'bottles' | 'start' | 'readyBy' | 'steepAtPercent' | 'areAllIn'>

/** `factor` times the batch, with its own spirits where none are given. */
export function recipeWish(
  batch: Batch,
  factor: number,
  spirits: readonly Portion[] | null,
  { named, bottles, steepAtPercent, start, readyBy, areAllIn }: SaidOfBatch,
): PlanWish {
  const taken = spirits ?? timesSpirits(batch.spirits, factor)
  const wish = wishOf({ ...remade(batch, factor), spirits: taken, bottles }, { start, readyBy, kept: keptDays(batch) })
  return {
    ...wish,
    ...(areAllIn !== undefined && { areAllIn }),
    steepAtPercent: steepAtPercent ?? dilutedTo(batch, taken, spirits !== null),
    named: {
      abvPercent: named.abvPercent ?? wish.named.abvPercent,
      sugarGPerL: named.sugarGPerL ?? wish.named.sugarGPerL,
    },
  }
}
