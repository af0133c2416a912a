import { type Danger, isHeld, judgeJar } from '../../../../core/jar/limits/judge-jar.ts'
import { type Contents, contentsOf } from '../../../../core/jar/state/contents.ts'
import { type Stage, type Story, stageOf, storyOf } from '../../../../core/jar/state/jar-state.ts'
import { isTooStrongNeat } from '../../../../core/jar/state/too-strong-neat.ts'
import { type Agenda, agenda, type Task } from '../../../../core/jar/tasks/agenda.ts'
import { isoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { dutySettings } from '../../../../store/due.ts'
import type { Jar } from '../../../../store/person.ts'
import type { Context } from '../../../chat/command.ts'

/** What a jar asks for; what has rested, and is too strong to be drunk as it is, says so. */
export type JarTask = Task & { readonly isTooStrong?: boolean }

interface JarAgenda extends Agenda {
  readonly today: readonly JarTask[]
  readonly coming: readonly JarTask[]
  readonly next: JarTask | null
}

/** A jar as it stands now, for whatever is said of it. */
export interface JarView {
  readonly jar: Jar
  readonly story: Story
  readonly stage: Stage
  readonly agenda: JarAgenda
  readonly contents: Contents
  /** What is wrong with it today, the worst first; what must not be drunk as it is asks for nothing else. */
  readonly dangers: readonly Danger[]
}

type Now = Pick<Context, 'nowMs' | 'settings' | 'zone' | 'assumedZone'>

/** The day it is where the person lives. */
export const todayOf = ({ nowMs, zone }: Now) => isoDay(dayAt(zone, nowMs))

/** Null where the start was undone: then there is no jar. */
export function viewOf(jar: Jar, now: Now): JarView | null {
  const story = storyOf(jar.entries)
  if (story === null) return null
  // Reckoned where it is asked for: a list of many jars does so only of those that rest.
  let contents: Contents | null = null
  const view = {
    jar,
    story,
    stage: stageOf(story, todayOf(now)),
    get contents() {
      contents ??= contentsOf(story)
      return contents
    },
  }
  const asked = (task: Task): JarTask =>
    task.kind === 'ready' ? { ...task, isTooStrong: isTooStrongNeat(view.contents.outcome.abvPercent) } : task
  const { today, coming, ...days } = agenda(jar.entries, dutySettings(now.settings, now.assumedZone), now.nowMs)
  const dangers = judgeJar(story)
  const tasks = (all: readonly Task[]): readonly JarTask[] => (isHeld(dangers) ? [] : all.map(asked))
  const comingAsked = tasks(coming)
  return Object.assign(view, {
    dangers,
    agenda: { ...days, today: tasks(today), coming: comingAsked, next: comingAsked[0] ?? null },
  })
}

export const isFinished = ({ stage }: JarView): boolean => stage === 'emptied' || stage === 'discarded'

/** What comes next, with whatever comes at the same moment. */
export const nextTasks = ({ agenda: { coming, next } }: Pick<JarView, 'agenda'>): readonly JarTask[] =>
  coming.filter(({ dueMs }) => dueMs === next?.dueMs)

/** What is to do today, else what comes next. */
export const tasksNow = (view: Pick<JarView, 'agenda'>): readonly JarTask[] =>
  view.agenda.today.length > 0 ? view.agenda.today : nextTasks(view)

/** What is to be done first: of today, else what comes next. */
export const firstTask = ({ agenda: { today, next } }: JarView): JarTask | null => today[0] ?? next
