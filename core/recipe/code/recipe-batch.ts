import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { DomainError } from '../../domain-error.ts'
import { abvPercent, sugarG, volumeMl } from '../../liquid/liquid.ts'
import { USUAL_MATERIAL } from '../../quantity/materials.ts'
import { exactly } from '../../quantity/measured/measured.ts'
import { tools } from '../../quantity/measured/precision.ts'
import type { Batch, BatchPlant } from '../batch.ts'
import { botanicalOf } from '../plan/batch-wish.ts'
import { massOfCounted } from '../plan/weigh-pieces.ts'
import { liquidOf, type NamedPortion } from '../portion.ts'
import { valuesOf } from '../propagate.ts'
import { joinSweetenings, sugarsInG, whiteSugar } from '../sweetening.ts'
import type { Targets } from '../targets.ts'
import { measuredOut, weighedOut } from '../tool-precision.ts'
import { drinkTold } from './drink-numbers.ts'
import { plantNumbers } from './plant-numbers.ts'
import { RANGES, type Recipe, type RecipePlant, type RecipeSpirit } from './recipe.ts'

/** Last bits of a sum or a solve, in the unit that is rounded to. */
const ROUNDING = 1e-6

export const ceil = (value: number): number => Math.ceil(value - ROUNDING)
export const floor = (value: number): number => Math.floor(value + ROUNDING)

export const within = (value: number, [least, most]: readonly [number, number]): number =>
  Math.min(most, Math.max(least, value))

const portionOf = ({ volumeTenthMl, abvHundredthPercent, drink }: RecipeSpirit): NamedPortion => ({
  amount: measuredOut(volumeTenthMl / 10),
  by: 'volume',
  atC: 20,
  abvPercent: { value: abvHundredthPercent / 100, plusMinus: tools.labelPercent },
  abvAtC: null,
  sugarGPerL: exactly(0),
  ...(drink !== undefined && { drink }),
})

/** Fruit that was counted only is as little known as on its maker's plan. */
function batchPlant(plant: RecipePlant): BatchPlant<number> {
  const { id, isDried, massMg, countTenths, addOnDays } = plant
  const count = countTenths === null ? null : countTenths / 10
  const counted = count === null ? null : massOfCounted(botanicalOf(plant), count, massMg / 1000)
  return {
    id,
    name: botanicalById(id).names.title,
    isDried,
    massG: counted ?? weighedOut(massMg / 1000),
    count,
    isUsual: false,
    words: null,
    addOn: addOnDays === 0 ? null : addOnDays,
  }
}

/** The batch that a recipe tells, as its maker weighs it out; its days are counted from the first. */
export function batchOf(recipe: Recipe): Batch {
  const {
    plants,
    spirits,
    waterTenthG,
    sugarTenthG,
    sweetenings = [],
    sweetener,
    filler,
    targets,
    steep,
    restDays,
  } = recipe
  const isNamed = targets !== null
  return {
    plants: plants.map(batchPlant),
    spirits: spirits.map(portionOf),
    waterG: weighedOut(waterTenthG / 10),
    sweetenings: [
      ...whiteSugar(weighedOut(sugarTenthG / 10)),
      ...sweetenings.map(({ material, massTenthG }) => ({ material, massG: weighedOut(massTenthG / 10) })),
    ],
    ...(sweetener !== undefined && { sweetener }),
    ...(filler !== undefined && { filler }),
    targets:
      targets === null
        ? null
        : { abvPercent: targets.abvHundredthPercent / 100, sugarGPerL: targets.sugarTenthGPerL / 10 },
    days: {
      tasteFrom: null,
      strainFrom: steep?.fromDays ?? null,
      strainBy: steep?.byDays ?? null,
      restDays,
      isHours: false,
      steepHours: null,
    },
    bottles: [],
    named: {
      isStrengthNamed: isNamed,
      isSweetnessNamed: isNamed,
      areBottlesNamed: false,
      isSpiritNamed: true,
      steepAtPercent: null,
      readyBy: null,
      steepFor: null,
    },
    origin: null,
  }
}

/** Of a plant that a code can name; throws `plant_unshared`. */
function recipePlant({ id, name, isDried, massG, count, addOn }: BatchPlant<number>): RecipePlant {
  if (id === null || !plantNumbers.includes(id)) throw new DomainError('unreachable', 'plant_unshared', { name })
  return {
    id,
    isDried,
    massMg: within(floor(massG.value * 1000), RANGES.massMg),
    countTenths: count === null ? null : within(Math.round(count * 10), RANGES.countTenths),
    addOnDays: within(addOn ?? 0, RANGES.addOnDays),
  }
}

const isSame = (one: RecipePlant, other: RecipePlant): boolean => one.id === other.id && one.isDried === other.isDried

/** Each plant once, from the first day on which some of it goes in. */
const joined = (plants: readonly RecipePlant[]): readonly RecipePlant[] =>
  plants
    .filter((plant, index) => plants.findIndex((each) => isSame(each, plant)) === index)
    .map((plant) => {
      const same = plants.filter((each) => isSame(each, plant))
      const massMg = same.reduce((sum, each) => sum + each.massMg, 0)
      return {
        ...plant,
        massMg: within(massMg, RANGES.massMg),
        countTenths: same.length === 1 ? plant.countTenths : null,
        addOnDays: Math.min(...same.map(({ addOnDays }) => addOnDays)),
      }
    })

export const roundedTargets = ({ abvPercent: strength, sugarGPerL }: Targets): NonNullable<Recipe['targets']> => ({
  abvHundredthPercent: within(Math.round(strength * 100), RANGES.abvHundredthPercent),
  sugarTenthGPerL: within(Math.round(sugarGPerL * 10), RANGES.sugarTenthGPerL),
})

/**
 * A batch in the whole numbers of a code, plants rounded down and spirit up so that no limit is passed; sugar of liqueurs counts as
 * white sugar. Throws `plant_unshared` and, without plants or spirit, `nothing_to_share`.
 */
export function rounded(batch: Batch & { readonly spirits: readonly NamedPortion[] }): Recipe {
  const { plants, spirits, waterG, sweetenings, sweetener, filler, targets, days } = batch
  const named = plants.map(recipePlant)
  const liquids = valuesOf(spirits).map(liquidOf)
  if (named.length === 0 || spirits.length === 0) throw new DomainError('unreachable', 'nothing_to_share', {})
  const inSpiritsG = liquids.reduce((sum, liquid) => sum + sugarG(liquid), 0)
  const white = sweetenings.filter(({ material }) => material === USUAL_MATERIAL)
  const others = joinSweetenings(sweetenings)
    .map(({ material, massG }) => ({ material, massTenthG: Math.round(massG.value * 10) }))
    .filter(({ material, massTenthG }) => material !== USUAL_MATERIAL && massTenthG > 0)
    .map((each) => ({ ...each, massTenthG: within(each.massTenthG, RANGES.sweeteningTenthG) }))
  const { strainFrom, strainBy, restDays } = days
  const [fromDays, byDays] = [strainFrom, strainBy].map((day) => (day === null ? null : within(day, RANGES.days)))
  return {
    plants: joined(named),
    spirits: liquids.map((liquid, at) => {
      const drink = drinkTold(spirits[at]!.drink)
      return {
        volumeTenthMl: within(ceil(volumeMl(liquid) * 10), RANGES.volumeTenthMl),
        abvHundredthPercent: within(Math.round(abvPercent(liquid) * 100), RANGES.spiritHundredthPercent),
        ...(drink !== undefined && { drink }),
      }
    }),
    waterTenthG: within(Math.round(waterG.value * 10), RANGES.waterTenthG),
    sugarTenthG: within(Math.round((sugarsInG(white) + inSpiritsG) * 10), RANGES.sugarTenthG),
    ...(others.length > 0 && { sweetenings: others }),
    ...(sweetener !== undefined && sweetener !== USUAL_MATERIAL && { sweetener }),
    ...(filler !== undefined && { filler }),
    targets: targets === null ? null : roundedTargets(targets),
    // Nothing, where hours are enough.
    steep: fromDays == null || byDays == null || byDays === 0 ? null : { fromDays, byDays: Math.max(fromDays, byDays) },
    restDays: restDays === null ? null : within(restDays, RANGES.days),
  }
}
