import { nameAfter } from '../../../core/jar/entry/name-after.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { daysBetween, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Given } from '../../calls/option.ts'
import { writeLine } from '../../calls/write-line.ts'
import type { Action } from '../../chat/reply.ts'

/** The plan as a jar, with all that was typed, which finds its name when it is begun; one that begins another day begins when it is started. */
export function startAction(
  input: { readonly [option: string]: Given<unknown> | undefined },
  plan: Plan,
  { start, today }: { readonly start: CalendarDay; readonly today: CalendarDay },
): readonly Action[] {
  if (nameAfter(plan) === null) return []
  const options = Object.entries(input).flatMap(([option, given]): readonly (readonly [string, string])[] => {
    if (given === undefined) return []
    if (option !== 'start') return [[option, given.typed]]
    return daysBetween(start, today) < 0 ? [['when', isoDay(start)]] : []
  })
  return [
    { label: { group: 'actions', key: 'start_jar', values: undefined }, line: writeLine('jar start', null, options) },
  ]
}
