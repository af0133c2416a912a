import { abvPercent, mix, volumeMl } from '../../liquid/liquid.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { liquidOf } from '../../recipe/portion.ts'
import { propagate } from '../../recipe/propagate.ts'
import { sugars } from '../../recipe/sweetening.ts'
import type { Targets } from '../../recipe/targets.ts'
import { ingredientsOf } from './batch-facts.ts'
import type { JarState } from './jar-state.ts'

/** Amounts nearer than a jug can tell are the same, as a share of the larger. Source: the 2 % of a jug in tool-precision.ts. */
export const SAME_SHARE = 0.02
/** Strengths and sweetnesses that nobody tastes apart. Common practice, no source. */
export const SAME_PERCENT = 0.2
const SAME_G_PER_L = 3
/** Water or sugar that went in with the plants: this much in a litre of spirit is none, g. Common practice, no source. */
export const NOTHING_G_PER_L = 1

/** What went into a batch, in a litre of its spirit: batches of different sizes are compared by it. */
export interface BatchFacts {
  readonly spirit: { readonly volumeMl: Measured; readonly abvPercent: Measured }
  readonly plants: readonly { readonly id: string | null; readonly name: string; readonly gPerL: Measured }[]
  readonly jarSugarGPerL: Measured
  readonly jarWaterGPerL: Measured
}

const perLitre = ({ value, plusMinus }: Measured, spiritMl: number): Measured => ({
  value: (1000 * value) / spiritMl,
  plusMinus: (1000 * plusMinus) / spiritMl,
})

export function batchFacts(story: JarState): BatchFacts {
  const { spirits, plants, waterG, sweetenings } = ingredientsOf(story)
  const spirit = propagate({ spirits }, (values) => {
    const poured = mix(...values.spirits.map(liquidOf))
    return { volumeMl: volumeMl(poured), abvPercent: abvPercent(poured) }
  })
  const spiritMl = spirit.volumeMl.value
  return {
    spirit,
    plants: plants.map(({ id, name, massG }) => ({ id, name, gPerL: perLitre(massG, spiritMl) })),
    jarSugarGPerL: perLitre(sugars(sweetenings), spiritMl),
    jarWaterGPerL: perLitre(waterG, spiritMl),
  }
}

const isWithin = (one: Measured, other: Measured, apart: number): boolean => Math.abs(one.value - other.value) <= apart

/** Whether a jug or a scale could not tell two amounts apart. */
export const isSameAmount = (one: Measured, other: Measured): boolean =>
  isWithin(one, other, SAME_SHARE * Math.max(one.value, other.value))

/** Whether two amounts that went in with the plants differ by nothing worth a word, g in a litre of spirit. */
export const isSameJarAmount = (one: Measured, other: Measured): boolean =>
  isWithin(one, other, NOTHING_G_PER_L) || isSameAmount(one, other)

/** Whether nobody tastes two strengths apart, % vol. */
export const isSameStrength = (one: Measured, other: Measured): boolean => isWithin(one, other, SAME_PERCENT)

/** Whether nobody tastes two sweetnesses apart, g/L. */
export const isSameSweetness = (one: Measured, other: Measured): boolean => isWithin(one, other, SAME_G_PER_L)

/** Whether two batches were to become the same; what was not said of one is the same only where it was said of neither. */
export const isSameTarget = (one: Targets | null, other: Targets | null): boolean =>
  one === null || other === null
    ? one === other
    : Math.abs(one.abvPercent - other.abvPercent) <= SAME_PERCENT &&
      Math.abs(one.sugarGPerL - other.sugarGPerL) <= SAME_G_PER_L

/** Whether two values lie so near that their ± may be all of the difference. */
export const isClose = (one: Measured, other: Measured): boolean =>
  isWithin(one, other, Math.hypot(one.plusMinus, other.plusMinus))
