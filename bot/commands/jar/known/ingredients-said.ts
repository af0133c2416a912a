import { ingredientsTold } from '../../../../core/jar/state/batch-facts.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { Context } from '../../../chat/command.ts'
import type { IngredientsSaid } from '../../../text/messages/ingredients.ts'
import { spiritsSaid } from '../../plan/plan-data.ts'
import { startTyped } from './jar-kitchen.ts'

/** What went into a jar, in the units of its start; in those that somebody has chosen for everything where they have. */
export function ingredientsSaid(story: JarState, { units }: Pick<Context['settings'], 'units'>): IngredientsSaid {
  const told = ingredientsTold(story)
  if (units !== null) return told
  return { ...told, spirits: spiritsSaid(startTyped(story), told.spirits) }
}
