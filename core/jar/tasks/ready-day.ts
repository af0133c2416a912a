import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { dayNumber, isoOf } from '../../quantity/time/day-number.ts'
import { SWEETEN_DAYS } from '../../recipe/plan/schedule.ts'
import type { JarState } from '../state/jar-state.ts'
import { strainWindow } from './windows.ts'

/** The last day to strain by the plan, from which it counts on; today where that is past. */
export const plannedStrain = ({ started }: Pick<JarState, 'started'>, today: IsoDay): IsoDay | null => {
  const window = strainWindow(started)
  return window === null ? null : isoOf(Math.max(window.closes ?? window.opens, dayNumber(today)))
}

/** The first glass; as the plan has it where the jar is not that far, later where it is late. */
export function readyOf({ started, strained, readyOn }: JarState, today: IsoDay): IsoDay | null {
  if (readyOn !== null || strained !== null) return readyOn
  const strain = plannedStrain({ started }, today)
  const { restDays } = started.days
  return strain === null || restDays === null ? null : isoOf(dayNumber(strain) + SWEETEN_DAYS + restDays)
}
