import type { JarState } from '../../../core/jar/state/jar-state.ts'
import { isFinished, type JarView, tasksNow } from '../../../core/jar/tasks/jar-view.ts'
import { readyOf } from '../../../core/jar/tasks/ready-day.ts'
import { strainWindow } from '../../../core/jar/tasks/windows.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import type { Phase, ShelfData, ShelfJar, ShelfSpan } from '../../text/messages/pictures.ts'
/** The jars that run, in the order given. */
export const shelfData = (views: readonly JarView[], today: IsoDay): ShelfData => ({
  jars: views.filter((view) => !isFinished(view)).map((view) => shelfJar(view, today)),
  today,
})

function shelfJar(view: JarView, today: IsoDay): ShelfJar {
  const { story, stage, agenda } = view
  const ready = readyOf(story, today)
  const readyDay = ready === null ? null : dayNumber(ready)
  const { day, ofDays } = agenda
  return {
    id: view.jar.id,
    name: story.name,
    stage,
    day,
    ofDays,
    spans: spansOf(story, dayNumber(today), readyDay),
    readyDay,
    tasks: tasksNow(view),
    danger: view.dangers[0]?.kind ?? null,
  }
}

function spansOf({ started, strained }: JarState, today: number, readyDay: number | null): readonly ShelfSpan[] {
  const from = dayNumber(started.day)
  const spans: ShelfSpan[] = []
  const add = (phase: Phase, first: number, last: number): void => {
    if (last > first) spans.push({ phase, from: first, to: last })
  }
  if (strained !== null) {
    const out = Math.max(from, dayNumber(strained.day))
    add('steeping', from, Math.max(out, from + 1))
    add('resting', Math.max(out, from + 1), readyDay ?? today + 1)
    return spans
  }
  const window = strainWindow(started)
  if (window === null) {
    add('steeping', from, Math.max(today, from) + 1)
    return spans
  }
  const opens = Math.max(from + 1, window.opens)
  // The last day belongs to it, and every day that it is late.
  const closes = Math.max(opens, window.closes ?? window.opens, today) + 1
  add('steeping', from, opens)
  add('straining', opens, closes)
  if (readyDay !== null) add('resting', closes, readyDay)
  return spans
}
