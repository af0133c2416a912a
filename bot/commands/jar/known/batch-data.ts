import { ingredientsTold, notesOf, ratingsOf, restedDays, steepedDays } from '../../../../core/jar/state/batch-facts.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { sugars } from '../../../../core/recipe/sweetening.ts'
import type { Data } from '../../../chat/reply.ts'
import { measuredData } from '../../reply/outcome-reply.ts'
import { jarBrief } from './jar-data.ts'

/** A batch of the notebook, running or done. */
export function batchData(view: JarView): { readonly [name: string]: Data } {
  const { story, contents } = view
  const { volumeMl, abvPercent, sugarGPerL } = contents.outcome
  const { plants, spirits, waterG, sweetenings } = ingredientsTold(story)
  return {
    ...jarBrief(view),
    startedOn: story.started.day,
    endedOn: story.ended?.day ?? null,
    steepedDays: steepedDays(story),
    restedDays: restedDays(story),
    botanicals: plants.map(({ id, name, massG, count, addOn }) => ({
      id,
      name,
      ...measuredData({ massG }),
      count,
      addOn,
    })),
    spirits: spirits.map(({ amount, by, abvPercent: strength, sugarGPerL: sweetness }) => ({
      ...measuredData(by === 'mass' ? { massG: amount } : { volumeMl: amount }),
      ...measuredData({ abvPercent: strength, sugarGPerL: sweetness }),
    })),
    ...measuredData({ waterG, sugarG: sugars(sweetenings), volumeMl, abvPercent, sugarGPerL }),
    bottledMl: contents.bottledMl,
    rating: ratingsOf(story).at(-1) ?? null,
    notes: notesOf(story),
  }
}
