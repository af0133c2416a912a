import { isFinished, type JarView, type ShownTask, tasksNow } from '../../../../core/jar/tasks/jar-view.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action, Row } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { row } from '../../reply/outcome-reply.ts'
import { jarRef } from '../known/jar-ref.ts'
import { taskCall } from '../known/task-call.ts'
import { todayOf } from '../known/view-of.ts'

/** What is to do today, else what comes next; nothing where the jar is done. That a jar is shaken again is no news. */
function nextOf(view: JarView): readonly ShownTask[] {
  if (isFinished(view)) return []
  const tasks = tasksNow(view)
  if (tasks.some(({ kind }) => kind !== 'shake')) return tasks
  const [news] = view.agenda.coming.filter(({ kind }) => kind !== 'shake')
  return news === undefined ? tasks : [...tasks.filter(({ state }) => state !== 'coming'), news]
}

/** That in a sentence, under the headline. */
export function nextSaid(view: JarView, context: Context): readonly Message<'headlines'>[] {
  const tasks = nextOf(view)
  if (tasks.length === 0) return []
  return [{ group: 'headlines', key: 'jar_next_is', values: { tasks, today: todayOf(context) } }]
}

/** The same of a jar that is named, and when it will be ready; null where nothing comes next. */
export function nextNamed(view: JarView, ready: IsoDay | null, context: Context): Message<'headlines'> | null {
  const tasks = nextOf(view)
  if (tasks.length === 0) return null
  const values = { name: view.story.name, tasks, ready, today: todayOf(context) }
  return { group: 'headlines', key: 'jar_next_of', values }
}

/** The same in a table, where the first screen has no room for it. */
export function nextRows(view: JarView, context: Context): readonly Row[] {
  const tasks = nextOf(view)
  if (tasks.length === 0) return []
  return [row('jar_next', { group: 'cells', key: 'jar_next', values: { tasks, today: todayOf(context) } })]
}

/** What settles the first thing that it asks for today; tasting takes a rating. */
export function nextActions(view: JarView, context: Context): readonly Action[] {
  const { jar, story, agenda } = view
  const [task] = isFinished(view) ? [] : agenda.today.filter(({ kind }) => kind !== 'shake')
  if (task === undefined) return []
  const values = { duty: task.kind, name: null }
  const settling =
    task.kind === 'taste'
      ? call('jar taste', {
          jar: jarRef({ jar, story }, context),
          ...(context.place.kind === 'console' && { rating: 4 }),
        })
      : taskCall(task.kind, { jar, story }, todayOf(context), context)
  return settling === null ? [] : [{ label: { group: 'actions', key: 'nudge_done', values }, call: settling }]
}
