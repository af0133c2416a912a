import { plannedFill } from '../../../../core/recipe/plan/planned-fill.ts'
import type { Syrup } from '../../../../core/recipe/solve/syrup.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { unitsIn } from '../../../text/messages/kitchen.ts'
import { spiritIn } from '../known/jar-dangers.ts'
import { kitchenAmong } from '../known/jar-kitchen.ts'
import { afterNow, jarRef } from '../known/jar-ref.ts'
import type { Recorded } from './record-step.ts'

/** More plain spirit than this share of the infusion would thin its flavour. Common practice, no source. */
const MOST_SHARE = 0.15

/** Steps of a jug, ml. */
const JUG_STEP_ML = 10

/**
 * The spirit that makes up for what lacks of the bottles that were planned, of the kind that is in it. Its ethanol is that of the
 * drink that lacks, so that what is planned for the rest holds for all of it.
 */
export function makeUpActions(
  recorded: Recorded,
  { outcome, infusionMl, waterMl }: Syrup,
  context: Context,
): readonly Action[] {
  const { story, jar } = recorded
  const [spirit, ...others] = story.started.spirits
  const short = plannedFill(outcome.volumeMl.value, story.started.bottles)
  if (short === null || short.isNearly || spirit === undefined || others.length > 0) return []
  const abvPercent = spirit.abvPercent.value
  const spiritMl = Math.ceil((short.lackingMl * outcome.abvPercent.value) / abvPercent / JUG_STEP_ML) * JUG_STEP_ML
  const isWatered = waterMl.value > 0 && abvPercent > outcome.abvPercent.value
  if (!isWatered || spiritMl > MOST_SHARE * infusionMl.value || story.bottled !== null) return []
  const added = spiritIn({ spiritMl, abvPercent }, unitsIn(kitchenAmong(story, context.settings)))
  const label = { group: 'actions', key: 'jar_make_up', values: { planned: short.planned } } as const
  return [
    {
      label,
      call: call('jar add', { jar: jarRef(recorded, context), spirit: added, ...afterNow(jar.entries, context.place) }),
    },
  ]
}
