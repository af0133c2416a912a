import { ingredientsTold } from '../../../../core/jar/state/batch-facts.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { Context } from '../../../chat/command.ts'
import type { IngredientsSaid } from '../../../text/messages/ingredients.ts'
import { isSaidAsTyped } from '../../options/input-units.ts'
import { spiritsSaid } from '../../plan/plan-data.ts'
import { kitchenOfJar, startTyped } from './jar-kitchen.ts'

/** What went into a jar, in the units of its start; in those that somebody has chosen for everything where they have. */
export function ingredientsSaid(story: JarState, settings: Pick<Context['settings'], 'units'>): IngredientsSaid {
  const told = ingredientsTold(story)
  if (!isSaidAsTyped(kitchenOfJar({}, story), settings)) return told
  return { ...told, spirits: spiritsSaid(startTyped(story), told.spirits) }
}
