import type { Duty } from '../../core/jar/duty.ts'
import type { Story } from '../../core/jar/story.ts'
import { plannedSyrup } from '../commands/jar/planned-syrup.ts'
import { plantsDue } from '../commands/jar/plants-due.ts'

/** What a reminder says of a jar. */
export function jarSaid({ story, duty }: { readonly story: Story; readonly duty: Duty }) {
  const sweetening = duty.kind === 'sweeten' ? plannedSyrup(story) : null
  return {
    name: story.name,
    fromDay: story.started.plan.strainFrom,
    byDay: duty.by,
    plants: duty.kind === 'add' ? plantsDue(story, duty.day).map(({ id, name }) => ({ id, name })) : [],
    syrup: sweetening === null ? null : { waterMl: sweetening.syrup.waterMl, sugarG: sweetening.syrup.sugarG },
  }
}
