import { type Agenda, agenda, type Task } from '../../../core/jar/agenda.ts'
import { type Contents, contentsOf } from '../../../core/jar/contents.ts'
import { type Stage, type Story, stageOf, storyOf } from '../../../core/jar/story.ts'
import { isoDay } from '../../../core/quantity/calendar.ts'
import { dayAt } from '../../../core/quantity/zone.ts'
import { dutySettings } from '../../../store/due.ts'
import type { Jar } from '../../../store/person.ts'
import type { Context } from '../../chat/command.ts'

/** A jar as it stands now, for whatever is said of it. */
export interface JarView {
  readonly jar: Jar
  readonly story: Story
  readonly stage: Stage
  readonly agenda: Agenda
  readonly contents: Contents
}

type Now = Pick<Context, 'nowMs' | 'settings' | 'zone' | 'assumedZone'>

/** The day it is where the person lives. */
export const todayOf = ({ nowMs, zone }: Now) => isoDay(dayAt(zone, nowMs))

/** Null where the start was undone: then there is no jar. */
export function viewOf(jar: Jar, now: Now): JarView | null {
  const story = storyOf(jar.entries)
  if (story === null) return null
  // Reckoned where it is asked for: a list of many jars says nothing of it.
  let contents: Contents | null = null
  return {
    jar,
    story,
    stage: stageOf(story, todayOf(now)),
    agenda: agenda(jar.entries, dutySettings(now.settings, now.assumedZone), now.nowMs),
    get contents() {
      contents ??= contentsOf(story)
      return contents
    },
  }
}

export const isFinished = ({ stage }: JarView): boolean => stage === 'emptied' || stage === 'discarded'

/** What comes next, with whatever comes at the same moment. */
export const nextTasks = ({ agenda: { coming, next } }: Pick<JarView, 'agenda'>): readonly Task[] =>
  coming.filter(({ dueMs }) => dueMs === next?.dueMs)

/** What is to do today, else what comes next. */
export const tasksNow = (view: Pick<JarView, 'agenda'>): readonly Task[] =>
  view.agenda.today.length > 0 ? view.agenda.today : nextTasks(view)

/** What is to be done first: of today, else what comes next. */
export const firstTask = ({ agenda: { today, next } }: JarView): Task | null => today[0] ?? next
