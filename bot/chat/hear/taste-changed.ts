import { NOTICED } from '../../../core/recipe/targets.ts'
import type { CallRead } from '../../talk/frames/reading.ts'
import { changedBy } from '../../talk/memory/change-call.ts'
import type { DrinkSaid, Remembered } from '../../talk/memory/remembered.ts'
import { changedOf } from '../../talk/memory/rule.ts'
import type { CallOutcome } from '../run/call-outcome.ts'
import { drinkIn } from './drink-in.ts'

const TARGETS: ReadonlySet<string> = new Set(['to-strength', 'to-sweetness'])

/** The same recipe, as strong or as sweet as it may be. */
const isOfSame = (one: CallRead, other: CallRead): boolean =>
  one.command === other.command && changedBy(one, other).every((option) => TARGETS.has(option))

const isApart = (was: DrinkSaid, now: DrinkSaid): boolean =>
  Math.abs(was.sugarGPerL - now.sugarGPerL) >= NOTICED.sugarGPerL ||
  Math.abs(was.abvPercent - now.abvPercent) >= NOTICED.abvPercent

/** Where a wish, `drier`, made another drink of what was worked out before: first of all how it was, and how it is now. */
export function changeSaid(outcome: CallOutcome, call: CallRead, said: Remembered): CallOutcome {
  if (!outcome.ok || !('reply' in outcome)) return outcome
  const now = drinkIn(outcome)
  const before = [{ call: said.call, drink: said.drink }, said.worked].find(
    (each) => each?.call != null && isOfSame(changedOf(each.call), call),
  )
  const was = before?.drink ?? null
  if (was === null || now === null || !isApart(was, now)) return outcome
  const { reply } = outcome
  const headline = { group: 'headlines', key: 'drink_changed', values: { was, now } } as const
  return { ...outcome, reply: { ...reply, headline, under: [reply.headline, ...(reply.under ?? [])] } }
}
