import type { Botanical } from '../../botanical/botanical.ts'
import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { inForm } from '../../botanical/find/in-form.ts'
import { abvPercent, ethanolG, type Liquid, liquidFrom, mix, water } from '../../liquid/liquid.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { tools } from '../../quantity/measured/precision.ts'
import type { PlannedPlant, PlanWish } from '../plan/plan.ts'
import type { KeptDays } from '../plan/schedule.ts'
import { massOfCounted } from '../plan/weigh-pieces.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { valuesOf } from '../propagate.ts'
import { whiteSugar } from '../sweetening.ts'
import { measuredOut, weighedOut } from '../tool-precision.ts'
import type { Recipe, RecipePlant } from './recipe.ts'

/** The plant in the form in which the recipe weighs it. */
export const botanicalOf = ({ id, isDried }: Pick<RecipePlant, 'id' | 'isDried'>): Botanical => {
  const usual = botanicalById(id)
  return isDried ? (inForm(usual, 'dried') ?? usual) : usual
}

/** Spirits poured together. */
export const poured = (spirits: readonly Portion[]): Liquid => mix(...valuesOf(spirits).map(liquidOf))

const portion = (volumeMl: number, abvPercent: Measured): Portion => ({
  amount: measuredOut(volumeMl),
  by: 'volume',
  atC: 20,
  abvPercent,
  abvAtC: null,
  sugarGPerL: exactly(0),
})

/** The recipe's own spirits, `factor` times as much of each. */
export const ownSpirits = ({ spirits }: Recipe, factor: number): readonly Portion[] =>
  spirits.map(({ volumeTenthMl, abvHundredthPercent }) =>
    portion((factor * volumeTenthMl) / 10, { value: abvHundredthPercent / 100, plusMinus: tools.labelPercent }),
  )

/** As much spirit of this strength as holds that alcohol. */
export const spiritHolding = (wantedG: number, abvPercent: Measured): readonly Portion[] => {
  const ml = liquidFrom({ volumeMl: 1, abvPercent: abvPercent.value, sugarGPerL: 0 })
  return [portion(wantedG / ethanolG(ml), abvPercent)]
}

const times = ({ value, plusMinus }: Measured, factor: number): Measured => ({
  value: value * factor,
  plusMinus: plusMinus * factor,
})

/** `factor` times as much of these. */
export const timesSpirits = (spirits: readonly Portion[], factor: number): readonly Portion[] =>
  spirits.map((each) => ({ ...each, amount: times(each.amount, factor) }))

/** Fewer of a plant are not counted any more. */
const LEAST_COUNT = 0.2
/** So near to halves, a count is one of them. */
const NEAR_SHARE = 0.02

function countTimes(countTenths: number | null, factor: number): number | null {
  const count = ((countTenths ?? 0) / 10) * factor
  if (count < LEAST_COUNT) return null
  const halves = Math.round(count * 2) / 2
  return Math.abs(halves - count) <= NEAR_SHARE * count ? halves : Number(count.toPrecision(2))
}

/** Fruit that was counted only is as little known as on its maker's plan. */
function plantTimes(plant: RecipePlant, factor: number): PlannedPlant {
  const { massMg, countTenths } = plant
  const botanical = botanicalOf(plant)
  const counted = countTenths === null ? null : massOfCounted(botanical, countTenths / 10, massMg / 1000)
  return {
    botanical,
    massG: counted === null ? weighedOut((factor * massMg) / 1000) : times(counted, factor),
    count: countTimes(countTenths, factor),
  }
}

/** Other spirit is brought to the strength in which the recipe steeps from so much above it, % vol. */
const STRONGER_PERCENT = 1

/** The strength in which it steeps, % vol, before the plants. */
export const steepsAtPercent = (recipe: Recipe): number =>
  abvPercent(mix(poured(ownSpirits(recipe, 1)), water(recipe.waterTenthG / 10)))

/** Null where no water goes in first. */
function dilutedTo(recipe: Recipe, spirits: readonly Portion[], isOther: boolean): number | null {
  if (!isOther) return recipe.waterTenthG === 0 ? null : steepsAtPercent(recipe)
  const ownPercent = steepsAtPercent(recipe)
  return abvPercent(poured(spirits)) > ownPercent + STRONGER_PERCENT ? ownPercent : null
}

/** The days of a recipe; undefined where the catalogue tells them. */
export function keptDays({ plants, steep, restDays }: Recipe): KeptDays | undefined {
  if (steep === null) return undefined
  return { steep, restDays, addOnDays: plants.map(({ addOnDays }) => Math.min(addOnDays, steep.byDays)) }
}

/** What a person may still say of a batch that a recipe tells. */
export type Asked = Pick<PlanWish, 'named' | 'bottles' | 'start' | 'readyBy' | 'steepAtPercent'>

/** `factor` times the recipe, with its own spirits where none are given. */
export function recipeWish(recipe: Recipe, factor: number, spirits: readonly Portion[] | null, asked: Asked): PlanWish {
  const { plants, sugarTenthG, targets } = recipe
  const { named } = asked
  const taken = spirits ?? ownSpirits(recipe, factor)
  return {
    plants: plants.map((plant) => plantTimes(plant, factor)),
    unknown: [],
    steepFor: null,
    spirits: taken,
    spiritAbvPercent: exactly(0),
    steepAtPercent: asked.steepAtPercent ?? dilutedTo(recipe, taken, spirits !== null),
    sweetenings: whiteSugar(weighedOut((factor * sugarTenthG) / 10)),
    named: {
      abvPercent: named.abvPercent ?? (targets === null ? undefined : targets.abvHundredthPercent / 100),
      sugarGPerL: named.sugarGPerL ?? (targets === null ? undefined : targets.sugarTenthGPerL / 10),
    },
    bottles: asked.bottles,
    start: asked.start,
    readyBy: asked.readyBy,
    kept: keptDays(recipe),
  }
}
