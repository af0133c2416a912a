import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { batchOf } from '../../../core/recipe/code/recipe-batch.ts'
import { plan, planAsIs as planOnce } from '../../../core/recipe/plan/plan.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { missing } from '../options/missing-option.ts'
import { planFromCode } from './plan-from-code.ts'
import { orMended } from './plan-mended.ts'
import { type AskedPlan, type Planned, planWish, type Setting } from './plan-wish.ts'
import { lineInsteadOfCode, lineWithLess, orWithinLimits } from './within-limits.ts'

/** What a recipe tells already. */
const TOLD = ['unknown-ok', 'days'] as const

/** A batch of the plants named, or that of a code. */
export const planAsked = <Input extends Planned>(input: Input, setting: Setting): AskedPlan<Input> =>
  // What replaces the input is of the plan's own options, which are all that is read here.
  orMended((each, by) => planAsIs(each as Input, by), input, setting)

function planAsIs<Input extends Planned>(input: Input, setting: Setting): AskedPlan<Input> {
  const { of, from } = input
  if (from === undefined) {
    if (of === undefined) throw missing(setting.command, 'of', null)
    const named = { ...input, of }
    const wish = planWish(named, setting)
    const planOf = setting.isTrial === true ? planOnce : plan
    const planned = orWithinLimits(() => planOf(wish), { of: of.is, line: () => lineWithLess(named, setting) })
    return { input: named, wish, planned, notes: [], limit: { limitId: null, isPlantSaid: false } }
  }
  const { sugar } = input
  const filler = input.water?.is
  const isWaterTold = filler !== undefined && typeof filler !== 'string'
  const isSugarTold = sugar !== undefined && sugar.is.amounts.length > 0
  const told = isSugarTold ? 'sugar' : isWaterTold ? 'water' : TOLD.find((option) => input[option] !== undefined)
  if (told !== undefined) throw new ChatError('too_many_options', 'code_or_recipe', { option: told }, { option: told })
  const { recipe, shareId } = from.is
  const own = batchOf(recipe)
  const batch = {
    ...own,
    ...(sugar?.is.sweetener != null && { sweetener: sugar.is.sweetener }),
    ...(typeof filler === 'string' && { filler }),
  }
  const { plants, ...made } = orWithinLimits(() => planFromCode(batch, input, setting), {
    of: of?.is,
    line: () => lineInsteadOfCode(batch, input, setting),
  })
  const wish = {
    ...made.wish,
    areBottlesNamed: input.bottles !== undefined,
    origin: { code: encodeBatch(recipe), shareId },
  }
  return { ...made, wish, input: { ...input, of: plants } }
}
