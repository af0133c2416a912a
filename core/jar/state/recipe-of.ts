import { DomainError } from '../../domain-error.ts'
import { RANGES, type Recipe } from '../../recipe/code/recipe.ts'
import { batchOf, ceil, floor, rounded, roundedTargets, within } from '../../recipe/code/recipe-batch.ts'
import { recipeWish, type SaidOfBatch } from '../../recipe/code/recipe-wish.ts'
import { gramsWished, infusionIn, jarOf } from '../../recipe/plan/jar-of.ts'
import { plan } from '../../recipe/plan/plan.ts'
import type { PlanWish } from '../../recipe/plan/plan-wish.ts'
import { nearestTargets } from '../../recipe/plan/reach-targets.ts'
import type { Targets } from '../../recipe/targets.ts'
import type { JarState } from './jar-state.ts'
import { madeBatch } from './made-batch.ts'

/**
 * A jar as it really went, with nothing of its maker, in the numbers of a code. Throws `two_batches`, `second_steep_unshared`, `plant_unshared`, `nothing_to_share`, and what
 * `plan` refuses now.
 */
export function recipeOf(story: JarState): Recipe {
  const poured = story.happened.find((entry) => entry.kind === 'poured_in')
  if (poured !== undefined) {
    throw new DomainError('unreachable', 'two_batches', { jar: story.name, other: poured.other })
  }
  const { secondOf } = story.started
  if (secondOf !== undefined) {
    throw new DomainError('unreachable', 'second_steep_unshared', { jar: story.name, other: secondOf.other })
  }
  const { targets, ...made } = madeBatch(story)
  return withTargets(rounded({ ...made, targets: null }), targets)
}

const NOTHING_SAID: SaidOfBatch = {
  named: { abvPercent: undefined, sugarGPerL: undefined },
  bottles: [],
  start: { year: 2000, month: 1, day: 1 },
  readyBy: null,
  steepAtPercent: null,
}

const wishFor = (recipe: Recipe): PlanWish => recipeWish(batchOf(recipe), 1, null, NOTHING_SAID)

/** Planned without its targets first, so that what `plan` refuses now is refused. */
function withTargets(recipe: Recipe, targets: Targets | null): Recipe {
  plan(wishFor(recipe))
  return targets === null ? recipe : withReachable(recipe, targets)
}

/** With targets that the amounts reach as expected, where what was measured lies a little beyond. Throws what `plan` refuses now. */
export function withReachable(recipe: Recipe, targets: Targets): Recipe {
  const made = { ...recipe, targets: reachable(wishFor(recipe), targets) }
  plan(wishFor(made))
  return made
}

function reachable(wish: PlanWish, targets: Targets): Recipe['targets'] {
  const infusion = infusionIn(jarOf(wish, wish.spirits!))
  const grams = gramsWished(wish)
  const wanted = roundedTargets(targets)
  const wished = { abvPercent: wanted.abvHundredthPercent / 100, sugarGPerL: wanted.sugarTenthGPerL / 10 }
  const sugarTenthGPerL = within(ceil(nearestTargets(infusion, wished, grams).sugarGPerL * 10), RANGES.sugarTenthGPerL)
  const nearest = nearestTargets(infusion, { ...wished, sugarGPerL: sugarTenthGPerL / 10 }, grams).abvPercent
  const isBeyond = nearest < wished.abvPercent
  return { abvHundredthPercent: isBeyond ? floor(nearest * 100) : wanted.abvHundredthPercent, sugarTenthGPerL }
}
