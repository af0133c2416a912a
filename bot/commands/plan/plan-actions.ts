import { nameAfter } from '../../../core/jar/entry/name-after.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { daysBetween, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { call } from '../../calls/call.ts'
import { pastIn } from '../../calls/jar-options.ts'
import type { InputOf } from '../../calls/signatures.ts'
import type { Action } from '../../chat/reply.ts'

/** The plan as a jar, with all that was typed, which finds its name when it is begun; one that begins another day begins when it is started. */
export function startAction(
  { start: _, ...input }: InputOf<'plan'>,
  plan: Plan,
  { start, today }: { readonly start: CalendarDay; readonly today: CalendarDay },
): readonly Action[] {
  if (nameAfter(plan) === null) return []
  const when = daysBetween(start, today) < 0 ? { when: pastIn(isoDay(start)) } : {}
  const label = { group: 'actions', key: 'start_jar', values: undefined } as const
  return [{ label, call: call('jar start', { ...input, ...when }) }]
}
