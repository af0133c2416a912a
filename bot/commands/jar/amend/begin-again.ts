import { ZodError } from 'zod'
import { DomainError } from '../../../../core/domain-error.ts'
import type { Started } from '../../../../core/jar/entry/entry.ts'
import { startedFrom } from '../../../../core/jar/entry/start-from-plan.ts'
import type { Of } from '../../../../core/jar/state/jar-state.ts'
import { dayFromIso } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { writeLine } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { canonical } from '../../options/stable-json.ts'
import { planAsked } from '../../plan/plan-asked.ts'
import { jarStartCommand } from '../record/start.ts'

/** What options begin on a day; null where they begin nothing any more. */
function startOf(options: Readonly<Record<string, string>>, on: string, context: Context): Started | null {
  const { nowMs, zone, settings } = context
  const setting = { today: dayAt(zone, nowMs), country: settings.country, start: dayFromIso(on) }
  try {
    const input = jarStartCommand.input.parse(options)
    const { wish, planned } = planAsked(input, { command: 'jar start', ...setting })
    return startedFrom(planned, wish, input.name!.is)
  } catch (error) {
    if (error instanceof DomainError || error instanceof ChatError || error instanceof ZodError) return null
    throw error
  }
}

/**
 * Begins a jar again whose start was taken back; nothing where what was typed would plan another one today, or where its
 * hour counts, which no line can say.
 */
export function beginAgainActions(started: Of<'started'>, context: Context): readonly Action[] {
  const { seq: _, enteredMs: _e, attempt: _i, atMs: _a, zone: _z, typed, day, ...before } = started
  const { name } = before
  if (before.days.isHours) return []
  const options = [...typed.filter(([option]) => option !== 'name' && option !== 'when'), ['when', day] as const]
  const made = startOf({ name, ...Object.fromEntries(options) }, day, context)
  if (canonical(made) !== canonical(before)) return []
  const label = { group: 'actions', key: 'jar_begin_again', values: undefined } as const
  return [{ label, line: writeLine('jar start', name, options) }]
}
