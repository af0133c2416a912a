import type { Task } from '../../../core/jar/tasks/agenda.ts'
import type { DutyKind } from '../../../core/jar/tasks/duty.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'

export type TaskSaid = Pick<Task, 'kind' | 'sinceDay' | 'atMinutes' | 'byDay' | 'state'> &
  Pick<AskedTask, 'isTooStrong'> & { readonly isFrozen?: boolean }

/** The jars that ask for the same. */
export interface AskedTask {
  readonly duty: DutyKind
  readonly names: readonly string[]
  /** What has rested is not to be drunk as it is. */
  readonly isTooStrong?: boolean
}

/** What jars ask for at one moment still to come. */
export interface ComingTasks extends TaskMoment {
  readonly asked: readonly AskedTask[]
}

export interface TaskMoment {
  readonly day: IsoDay
  /** After midnight, where it comes at an hour of its own. */
  readonly atMinutes: number | null
}
