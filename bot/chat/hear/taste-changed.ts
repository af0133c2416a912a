import type { CallRead } from '../../talk/frames/reading.ts'
import type { DrinkSaid, Remembered } from '../../talk/memory/remembered.ts'
import { changedOf } from '../../talk/memory/rule.ts'
import type { CallOutcome } from '../run/call-outcome.ts'
import { drinkIn } from './drink-in.ts'

const TARGETS: ReadonlySet<string> = new Set(['to-strength', 'to-sweetness'])

const besidesTargets = ({ command, options }: CallRead): string =>
  JSON.stringify([
    command,
    ...Object.entries(options)
      .filter(([option]) => !TARGETS.has(option))
      .toSorted(),
  ])

/** Less of a change nobody tastes: g/L and % vol. */
const LEAST_APART = { sugarGPerL: 5, abvPercent: 0.75 } as const

const isApart = (was: DrinkSaid, now: DrinkSaid): boolean =>
  Object.entries(LEAST_APART).some(([name, least]) => {
    const of = name as keyof typeof LEAST_APART
    return Math.abs(was[of] - now[of]) >= least
  })

/** Where a wish, `drier`, made another drink of what was worked out before: first of all how it was, and how it is now. */
export function changeSaid(outcome: CallOutcome, call: CallRead, said: Remembered): CallOutcome {
  if (!outcome.ok || !('reply' in outcome)) return outcome
  const now = drinkIn(outcome)
  const before = [{ call: said.call, drink: said.drink }, said.worked].find(
    (each) => each?.call != null && besidesTargets(changedOf(each.call)) === besidesTargets(call),
  )
  const was = before?.drink ?? null
  if (was === null || now === null || !isApart(was, now)) return outcome
  const { reply } = outcome
  const headline = { group: 'headlines', key: 'drink_changed', values: { was, now } } as const
  return { ...outcome, reply: { ...reply, headline, under: [reply.headline, ...(reply.under ?? [])] } }
}
