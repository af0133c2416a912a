import { isFinished, type JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { readyOf } from '../../../../core/jar/tasks/ready-day.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'

/** The day of the first glass of a jar that runs and is sound, as far as it is known; null where it has come. */
export function readyLater(view: JarView, today: IsoDay): IsoDay | null {
  const { story, dangers, agenda } = view
  if (isFinished(view) || dangers.length > 0) return null
  const day = readyOf(story, today)
  // What comes next is said already.
  const [next] = agenda.coming.filter(({ kind }) => kind !== 'shake')
  return day === null || day <= today || next?.kind === 'ready' ? null : day
}
