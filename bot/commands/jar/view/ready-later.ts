import { isFinished, type JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { readyOf } from '../../../../core/jar/tasks/ready-day.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Reply } from '../../../chat/reply.ts'

/** The day of the first glass of a jar that runs and is sound, as far as it is known; null where it has come. */
export function readyLater(view: JarView, today: IsoDay): IsoDay | null {
  const { story, dangers, agenda } = view
  if (isFinished(view) || dangers.length > 0) return null
  const day = readyOf(story, today)
  // What comes next is said already.
  const [next] = agenda.coming.filter(({ kind }) => kind !== 'shake')
  return day === null || day <= today || next?.kind === 'ready' ? null : day
}

/** As many jars and jobs leave room to say when each will be ready. */
const FEW = 4

/** When the others will be ready, the first first. */
export function laterNotes(running: readonly JarView[], today: IsoDay, jobs: number): Reply['notes'] {
  const ready = running
    .flatMap((view) => {
      const day = readyLater(view, today)
      return day === null ? [] : [{ name: view.story.name, day }]
    })
    .toSorted((one, other) => (one.day < other.day ? -1 : Number(one.day > other.day)))
  if (ready.length === 0) return []
  const notes = [{ group: 'notes', key: 'jars_ready_about', values: { ready, today } } as const]
  return running.length <= FEW && jobs <= FEW ? notes : inMore(notes)
}
