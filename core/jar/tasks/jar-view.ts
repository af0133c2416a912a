import { isTooStrongNeat } from '../../liquid/neat.ts'
import { isoDay } from '../../quantity/time/calendar-day.ts'
import { dayAt } from '../../quantity/time/zone.ts'
import { type Danger, isHeld, judgeJar } from '../limits/judge-jar.ts'
import { type Contents, contentsOf } from '../state/contents.ts'
import { type JarState, jarStateOf, type KeptJar, type Stage, stageOf } from '../state/jar-state.ts'
import { isInFreezer } from '../state/where-it-stands.ts'
import { type Agenda, agenda, type Task } from './agenda.ts'
import type { DutySettings } from './duty.ts'

/** What a jar asks for; what has rested, and is too strong to be drunk as it is, says so. */
export type ShownTask = Task & {
  readonly isTooStrong?: boolean
  /** It stands in a freezer: out with it a little before. */
  readonly isFrozen?: boolean
}

interface JarAgenda extends Agenda {
  readonly today: readonly ShownTask[]
  readonly coming: readonly ShownTask[]
  readonly next: ShownTask | null
}

/** A jar as it stands now, for whatever is said of it. */
export interface JarView<Held extends KeptJar = KeptJar> {
  readonly jar: Held
  readonly story: JarState
  readonly stage: Stage
  readonly agenda: JarAgenda
  readonly contents: Contents
  /** What is wrong with it today, the worst first; what must not be drunk as it is asks for nothing else. */
  readonly dangers: readonly Danger[]
}

/** A jar as it stands now; null where its start was undone. */
export function viewJar<Held extends KeptJar>(jar: Held, settings: DutySettings, nowMs: number): JarView<Held> | null {
  const story = jarStateOf(jar.entries)
  if (story === null) return null
  const view = {
    jar,
    story,
    stage: stageOf(story, isoDay(dayAt(settings.zone, nowMs))),
    // Contents cost time, and a list of many jars needs them only of those that rest.
    get contents() {
      return contentsOf(story)
    },
  }
  const asked = (task: Task): ShownTask =>
    task.kind === 'ready'
      ? {
          ...task,
          isTooStrong: isTooStrongNeat(view.contents.outcome.abvPercent.value),
          ...(isInFreezer(story) && { isFrozen: true }),
        }
      : task
  const { today, coming, ...days } = agenda(jar.entries, settings, nowMs)
  const dangers = judgeJar(story)
  const tasks = (all: readonly Task[]): readonly ShownTask[] => (isHeld(dangers) ? [] : all.map(asked))
  const comingAsked = tasks(coming)
  return Object.assign(view, {
    dangers,
    agenda: { ...days, today: tasks(today), coming: comingAsked, next: comingAsked[0] ?? null },
  })
}

export const isFinished = ({ stage }: JarView): boolean => stage === 'emptied' || stage === 'discarded'

/** What comes next, with whatever comes at the same moment. */
const nextTasks = ({ agenda: { coming, next } }: Pick<JarView, 'agenda'>): readonly ShownTask[] =>
  coming.filter(({ dueMs }) => dueMs === next?.dueMs)

/** What is to do today, else what comes next. */
export const tasksNow = (view: Pick<JarView, 'agenda'>): readonly ShownTask[] =>
  view.agenda.today.length > 0 ? view.agenda.today : nextTasks(view)

/** What is to be done first: of today, else what comes next. */
export const firstTask = ({ agenda: { today, next } }: JarView): ShownTask | null => today[0] ?? next
