import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import type { JarEntry } from '../entry/entry.ts'
import type { JarState } from '../state/jar-state.ts'
import { agenda, type Task } from './agenda.ts'
import type { DutySettings } from './duty.ts'

/** From the first glass of its bottles on a jar asks for nothing more. */
export const asksStill = ({ bottled, happened }: JarState): boolean =>
  bottled === null || !happened.some(({ kind }) => kind === 'opened')

/** Whether a jar asks for something before a day, or an hour of it: of what comes later nothing has to be put off. */
export function asksUntil(
  entries: readonly JarEntry[],
  { untilDay, untilMs }: { readonly untilDay: IsoDay; readonly untilMs: number | null },
  settings: DutySettings,
  nowMs: number,
): boolean {
  const isBefore = ({ sinceDay, dueMs }: Task) => (untilMs === null ? sinceDay < untilDay : dueMs < untilMs)
  const { today, coming } = agenda(entries, settings, nowMs)
  return [...today, ...coming].some(isBefore)
}
