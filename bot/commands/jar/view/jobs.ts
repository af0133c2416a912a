import { plantsDue } from '../../../../core/jar/state/later-plants.ts'
import { plannedSyrup } from '../../../../core/jar/state/planned-syrup.ts'
import type { JarView, ShownTask } from '../../../../core/jar/tasks/jar-view.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { worthAdding } from '../../../../core/recipe/solve/worth-adding.ts'
import { type Call, call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action, Row } from '../../../chat/reply.ts'
import { kitchenAmong } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { taskCall } from '../known/task-call.ts'
import { todayOf } from '../known/view-of.ts'

/** A job of today: what it is, what settles it. */
export interface Job {
  readonly row: Row
  /** For surfaces with buttons; left out: only a word. */
  readonly action?: Action
  readonly isLong: boolean
}

/** What is stirred in; null where that is not known, or is nothing. */
function syrupOf({ story }: JarView) {
  const planned = plannedSyrup(story)
  if (planned === null) return null
  const added = worthAdding(planned.syrup)
  return added.sugarG === 0 && added.waterMl === 0 ? null : { ...added, sweetener: planned.syrup.sweetener }
}

/** What says that it was done; a taste takes a rating, which a form asks for. */
function settling(task: ShownTask, view: JarView, context: Context): Call | null {
  const jar = jarRef(view, context)
  if (task.kind !== 'taste') {
    const done = taskCall(task.kind, view, todayOf(context), context)
    return done === null && task.kind === 'sweeten' ? call('syrup', { jar }) : done
  }
  return call('jar taste', context.place.kind === 'console' ? { jar, rating: 4 } : { jar })
}

function jobOf(task: ShownTask, view: JarView, today: IsoDay, context: Context): Job {
  const { name } = view.story
  const syrup = task.kind === 'sweeten' ? syrupOf(view) : null
  const kitchen = kitchenAmong(view.story, context.settings)
  const plants =
    task.kind === 'add' ? plantsDue(view.story, today).map(({ id, name: said }) => ({ id, name: said })) : []
  const settled = settling(task, view, context)
  const row: Row = {
    label: { group: 'rows', key: 'jar', values: { name } },
    cell: {
      group: 'cells',
      key: 'job',
      values: { task, plants, syrup, isFruit: view.story.onFruit !== null, today, kitchen },
    },
  }
  const isLong = syrup !== null || plants.length > 0 || task.kind === 'bottle'
  if (settled === null) return { row, isLong }
  const isWorkedOut = settled.command === 'syrup'
  const label = isWorkedOut
    ? ({ group: 'actions', key: 'nudge_syrup', values: { name } } as const)
    : ({ group: 'actions', key: 'nudge_done', values: { duty: task.kind, name } } as const)
  return { row: { ...row, call: settled }, action: { label, call: settled, isButtonOnly: true }, isLong }
}

/** All that is shaken is one job. */
function shakeJobs(views: readonly JarView[], context: Context): readonly Job[] {
  const shaken = views.filter(({ agenda }) => agenda.today.some(({ kind }) => kind === 'shake'))
  const [first] = shaken
  if (first === undefined) return []
  const settled = call('jar shake', { jar: shaken.length === 1 ? jarRef(first, context) : 'all' })
  const names = shaken.map(({ story }) => story.name)
  const label = { group: 'actions', key: 'jars_shaken', values: { count: shaken.length } } as const
  return [
    {
      row: {
        label: { group: 'rows', key: 'jobs_shake', values: undefined },
        cell: { group: 'cells', key: 'job_shake', values: { names } },
        call: settled,
      },
      action: { label, call: settled, isButtonOnly: true },
      isLong: false,
    },
  ]
}

/** Each job of today once, the most pressing first, all shaking last; what is ready is none. */
export function jobsOf(views: readonly JarView[], context: Context): readonly Job[] {
  const today = todayOf(context)
  return [
    ...views.flatMap((view) =>
      view.agenda.today
        .filter(({ kind }) => kind !== 'shake' && kind !== 'ready')
        .map((task) => jobOf(task, view, today, context)),
    ),
    ...shakeJobs(views, context),
  ]
}

/** Lines that jobs may take in a narrow terminal, where each has one of its own to type and a long one wraps. */
const MOST_NARROW = 20
const MOST_WIDE = 11

/** How many of the first jobs have room on the first screen. */
export function firstScreen(jobs: readonly Job[]): number {
  let [narrow, wide, count] = [0, 0, 0]
  for (const { isLong } of jobs) {
    narrow += isLong ? 3 : 2
    wide += isLong ? 2 : 1
    if (narrow > MOST_NARROW || wide > MOST_WIDE) break
    count++
  }
  return count
}
