import { DomainError } from '../../domain-error.ts'
import { abvPercent, sugarG, volumeMl } from '../../liquid/liquid.ts'
import { RANGES, type Recipe, type RecipeSpirit } from '../../recipe/code/recipe.ts'
import { type Asked, recipeWish } from '../../recipe/code/recipe-wish.ts'
import { infusionIn, jarOf } from '../../recipe/plan/jar-of.ts'
import { plan } from '../../recipe/plan/plan.ts'
import { nearestTargets } from '../../recipe/plan/reach-targets.ts'
import { liquidOf } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { sugarsInG, waterInG } from '../../recipe/sweetening.ts'
import type { Targets } from '../../recipe/targets.ts'
import { contentsOf } from './contents.ts'
import type { Story } from './jar-state.ts'
import { daysInto, putIn, recipePlants, within } from './recipe-plants.ts'

/** A rounding is no tenth. */
const ROUNDING = 1e-6
const floor = (value: number): number => Math.floor(value + ROUNDING)
const ceil = (value: number): number => Math.ceil(value - ROUNDING)

/**
 * A jar as it really went, with nothing of its maker: everything that went in, plants added later too, the days it steeped,
 * what came out where it was sweetened or bottled, else what is planned. Days of rest are those planned: the first glass
 * tells of a feast more than of the drink. Throws `plant_unshared`, `nothing_to_share`, and what `plan` refuses now.
 */
export function recipeOf(story: Story): Recipe {
  const plants = recipePlants(story)
  const liquids = putIn(story).flatMap(({ spirits }) => valuesOf(spirits).map(liquidOf))
  const spirits = liquids.map(
    (liquid): RecipeSpirit => ({
      volumeTenthMl: within(ceil(volumeMl(liquid) * 10), RANGES.volumeTenthMl),
      abvHundredthPercent: within(Math.round(abvPercent(liquid) * 100), RANGES.spiritHundredthPercent),
    }),
  )
  if (plants.length === 0 || spirits.length === 0) throw new DomainError('unreachable', 'nothing_to_share', {})
  const steeped = untilStrained(story)
  const addedWaterG = steeped.reduce((sum, { waterG, sweetenings }) => sum + waterG.value + waterInG(sweetenings), 0)
  const addedSugarG = steeped.reduce((sum, { sweetenings }) => sum + sugarsInG(sweetenings), 0)
  const inSpiritsG = liquids.reduce((total, liquid) => total + sugarG(liquid), 0)
  const { steep, restDays } = daysOf(story)
  const bare: Recipe = {
    plants,
    spirits,
    waterTenthG: within(Math.round(addedWaterG * 10), RANGES.waterTenthG),
    sugarTenthG: within(Math.round((addedSugarG + inSpiritsG) * 10), RANGES.sugarTenthG),
    targets: null,
    steep,
    restDays,
  }
  return withTargets(bare, targetsOf(story))
}

function untilStrained(story: Story) {
  const { happened, strained } = story
  const until = strained === null ? happened.length : happened.indexOf(strained)
  return putIn(story).filter(({ seq }) => happened.findIndex((entry) => entry.seq === seq) < until)
}

/** What it became, or is to become; null where that is not known. */
function targetsOf(story: Story): Targets | null {
  const { sweetened, bottled, started } = story
  if (sweetened === null && bottled === null) return started.targets
  const { outcome, isEmpty } = contentsOf(story)
  if (isEmpty) return started.targets
  return { abvPercent: outcome.abvPercent.value, sugarGPerL: outcome.sugarGPerL.value }
}

const NOTHING_ASKED: Asked = {
  named: { abvPercent: undefined, sugarGPerL: undefined },
  bottles: [],
  start: { year: 2000, month: 1, day: 1 },
  readyBy: null,
  steepAtPercent: null,
}

/** With targets that the amounts reach as expected, where what was measured lies a little beyond. */
function withTargets(recipe: Recipe, targets: Targets | null): Recipe {
  plan(recipeWish(recipe, 1, null, NOTHING_ASKED))
  if (targets === null) return recipe
  const made = { ...recipe, targets: reachable(recipe, targets) }
  plan(recipeWish(made, 1, null, NOTHING_ASKED))
  return made
}

function reachable(recipe: Recipe, targets: Targets): Recipe['targets'] {
  const wish = recipeWish(recipe, 1, null, NOTHING_ASKED)
  const infusion = infusionIn(jarOf(wish, wish.spirits!))
  const abvHundredthPercent = within(Math.round(targets.abvPercent * 100), RANGES.abvHundredthPercent)
  const wished = {
    abvPercent: abvHundredthPercent / 100,
    sugarGPerL: within(Math.round(targets.sugarGPerL * 10), RANGES.sugarTenthGPerL) / 10,
  }
  const sugarTenthGPerL = within(ceil(nearestTargets(infusion, wished).sugarGPerL * 10), RANGES.sugarTenthGPerL)
  const nearest = nearestTargets(infusion, { ...wished, sugarGPerL: sugarTenthGPerL / 10 }).abvPercent
  return {
    abvHundredthPercent: nearest < wished.abvPercent ? floor(nearest * 100) : abvHundredthPercent,
    sugarTenthGPerL,
  }
}

/** As it was steeped, or is planned to be; null where hours are enough. */
function daysOf(story: Story): Pick<Recipe, 'steep' | 'restDays'> {
  const { started, strained } = story
  const { strainFrom, strainBy, restDays: rest, isHours } = started.days
  const days = (from: string, by: string) => {
    const [fromDays, byDays] = [daysInto(story, from), daysInto(story, by)].map((each) => within(each, RANGES.days))
    return byDays! === 0 ? null : { fromDays: fromDays!, byDays: Math.max(fromDays!, byDays!) }
  }
  const isPlanned = strainFrom !== null && strainBy !== null
  const steep =
    strained !== null ? days(strained.day, strained.day) : isPlanned && !isHours ? days(strainFrom, strainBy) : null
  return { steep, restDays: rest === null ? null : within(rest, RANGES.days) }
}
