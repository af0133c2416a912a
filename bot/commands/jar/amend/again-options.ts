import { unlessRefused } from '../../../../core/domain-error.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { recipeOf } from '../../../../core/jar/state/recipe-of.ts'
import { exactly } from '../../../../core/quantity/measured/measured.ts'
import { encodeBatch } from '../../../../core/recipe/code/batch-code.ts'
import type { Recipe } from '../../../../core/recipe/code/recipe.ts'
import { roundedTargets } from '../../../../core/recipe/code/recipe-batch.ts'
import { saidDays } from '../../../../core/recipe/plan/schedule.ts'
import type { Portion } from '../../../../core/recipe/portion.ts'
import { kitchenRounded } from '../../../../core/recipe/tool-precision.ts'
import { callOfTexts } from '../../../calls/call.ts'
import type { Given } from '../../../calls/option.ts'
import { type InputOf, signatures } from '../../../calls/signatures.ts'
import { batchOptions, bottlesGiven, wholeDaysGiven } from '../../plan/batch-options.ts'
import type { Setting } from '../../plan/plan-wish.ts'
import { sugarWritten } from '../../plan/written-amounts.ts'
import { batchAgain, bottlesAgain } from './again-batch.ts'
import { plantsAgain } from './again-plants.ts'
import { type Choice, targetsGiven } from './again-said.ts'
import { syrupAgain } from './again-sugar.ts'
import { typedAgain } from './again-typed.ts'

type Input = InputOf<'again'>

/** How it is told to others, and made of another spirit; null where that cannot be. */
export function recipeIn(story: JarState): Recipe | null {
  return unlessRefused(() => {
    const recipe = recipeOf(story)
    encodeBatch(recipe)
    return recipe
  })
}

/** The recipe with the days and the aims of the new batch. */
export function recipeFor(recipe: Recipe, { wentDays, last, targets }: Choice, days: Input['days']): Recipe {
  const said = saidDays(days?.is ?? null)?.steep
  const went = wentDays === null ? null : { fromDays: wentDays, byDays: wentDays }
  const steep = said ?? went ?? last.plannedDays
  return {
    ...recipe,
    steep: steep === null || steep.byDays === 0 ? null : steep,
    targets: targets === null ? recipe.targets : roundedTargets(targets),
  }
}

/** What it is to become, where that is not what was planned of it. */
function targetsAgain({ targets }: Choice, { started }: JarState) {
  return targets === null || targets === started.targets ? {} : targetsGiven(targets)
}

export const isOtherSugar = ({ sugar }: Pick<Input, 'sugar'>): boolean =>
  sugar !== undefined && sugar.is.amounts.length > 0

interface AtHand {
  readonly of?: Input['of']
  readonly other: readonly Portion[] | null
  readonly bottles?: Input['bottles']
  readonly days?: Input['days']
  readonly sugar?: Input['sugar']
  readonly setting: Setting
}

/** Less or more of what went in with the plants, as it is weighed out anew. */
function sugarShared({ sugar }: Pick<InputOf<'plan'>, 'sugar'>, share: number | undefined) {
  if (share === undefined || sugar === undefined || sugar.is.amounts.length === 0) return {}
  const amounts = sugar.is.amounts.map((each) => ({ ...each, massG: kitchenRounded(share * each.massG).value }))
  const weighed = amounts.map(({ material, massG }) => ({ material, massG: exactly(massG) }))
  return { sugar: { typed: sugarWritten(weighed, sugar.is.sweetener), is: { ...sugar.is, amounts } } }
}

/** What plans it once more; of another spirit, for other bottles, or where it came of a code, it is the recipe of its code. */
export function optionsAgain(story: JarState, recipe: Recipe | null, choice: Choice, atHand: AtHand) {
  const { of, other, bottles, days, sugar, setting } = atHand
  const isCode = other !== null || bottles !== undefined || story.started.origin !== null
  const isSugarSaid = isOtherSugar({ sugar })
  if (recipe === null || !isCode || of !== undefined || (other === null && isSugarSaid)) {
    const daysTyped = story.started.typed.find(([option]) => option === 'days')?.[1]
    const before =
      (other === null ? typedAgain(story, setting) : null) ?? batchOptions(batchAgain(story, other), daysTyped)
    return {
      ...before,
      ...(of !== undefined && { of: plantsAgain(before.of, of) }),
      ...syrupAgain(before, story),
      ...sugarShared(before, choice.sugarShare),
      ...targetsAgain(choice, story),
      ...(choice.wentDays !== null && { days: wholeDaysGiven(choice.wentDays) }),
      ...(days !== undefined && { days }),
    }
  }
  const made = recipeFor(recipe, choice, days)
  const size = bottles === undefined ? bottlesAgain(story.started, other !== null) : []
  return {
    from: { typed: encodeBatch(made), is: { recipe: made, shareId: null, owner: null } },
    ...(size.length > 0 && { bottles: bottlesGiven(size) }),
  }
}

/** What is planned is what the line that starts it says. */
export function asTyped(options: Readonly<Record<string, Given<unknown> | undefined>>): InputOf<'plan'> {
  const texts = Object.entries(options).flatMap(([option, given]) =>
    given === undefined ? [] : [[option, given.typed] as const],
  )
  return signatures.plan.parse(callOfTexts('plan', texts)?.values ?? options)
}
