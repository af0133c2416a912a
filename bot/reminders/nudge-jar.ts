import { contentsOf } from '../../core/jar/state/contents.ts'
import type { Story } from '../../core/jar/state/jar-state.ts'
import { movedByLatePlants } from '../../core/jar/state/late-plants.ts'
import { isTooStrongNeat } from '../../core/jar/state/too-strong-neat.ts'
import type { Duty } from '../../core/jar/tasks/duty.ts'
import type { Syrup } from '../../core/recipe/solve/syrup.ts'
import { plannedSyrup } from '../commands/jar/known/planned-syrup.ts'
import { plantsDue } from '../commands/jar/known/plants-due.ts'

interface Asked {
  readonly story: Story
  readonly duty: Pick<Duty, 'kind' | 'day' | 'by'>
}

/** Its strength, where it is ready and nobody should drink it as it is. */
function strongOf({ story, duty }: Asked) {
  if (duty.kind !== 'ready') return null
  const { abvPercent } = contentsOf(story).outcome
  return isTooStrongNeat(abvPercent) ? { abvPercent, isDiluted: story.sweetened !== null } : null
}

const sweetenedWith = ({ waterMl, sugarG, dissolvesG }: Syrup) => ({ waterMl, sugarG, dissolvesG })

/** What a reminder says of a jar. */
export function jarSaid({ story, duty }: Asked) {
  const sweetening = duty.kind === 'sweeten' ? plannedSyrup(story) : null
  return {
    name: story.name,
    fromDay: movedByLatePlants(story).started.plan.strainFrom,
    byDay: duty.by,
    plants: duty.kind === 'add' ? plantsDue(story, duty.day).map(({ id, name }) => ({ id, name })) : [],
    syrup: sweetening === null ? null : sweetenedWith(sweetening.syrup),
    strong: strongOf({ story, duty }),
  }
}
