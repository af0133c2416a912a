import { unlessRefused } from '../../../../core/domain-error.ts'
import type { Started } from '../../../../core/jar/entry/entry.ts'
import { isAllIn } from '../../../../core/jar/entry/is-all-in.ts'
import { startedFrom } from '../../../../core/jar/entry/start-from-plan.ts'
import { isHeld, judgeJar } from '../../../../core/jar/limits/judge-jar.ts'
import { jarStateOf, type Of } from '../../../../core/jar/state/jar-state.ts'
import { dayFromIso } from '../../../../core/quantity/time/calendar-day.ts'
import { decodeBatch } from '../../../../core/recipe/code/batch-code.ts'
import { batchOf } from '../../../../core/recipe/code/recipe-batch.ts'
import { keptDays } from '../../../../core/recipe/code/recipe-wish.ts'
import { wishOf } from '../../../../core/recipe/plan/batch-wish.ts'
import { plan } from '../../../../core/recipe/plan/plan.ts'
import { callOfTexts } from '../../../calls/call.ts'
import type { Action } from '../../../chat/reply.ts'
import { canonical } from '../../../chat/stable-json.ts'

/** What the batch comes to when it is planned today; null where it cannot be. */
function plannedToday(started: Of<'started'>): Started | null {
  const { day, named, origin } = started
  const readyBy = named.readyBy === null ? null : dayFromIso(named.readyBy)
  return unlessRefused(() => {
    const kept = origin === null ? undefined : keptDays(batchOf(decodeBatch(origin.code)))
    const wish = { ...wishOf(started, { start: dayFromIso(day), readyBy, kept }), areAllIn: isAllIn(started) }
    const { enzyme } = started
    return { ...startedFrom(plan(wish), wish, started.name), ...(enzyme !== undefined && { enzyme }) }
  })
}

/**
 * Begins a jar again whose start was taken back; nothing where it would be planned otherwise today, or where its
 * hour counts, which no line can say.
 */
export function beginAgainActions(started: Of<'started'>): readonly Action[] {
  const { seq: _, enteredMs: _e, attempt: _i, atMs: _a, zone: _z, typed, day, ...before } = started
  const { name } = before
  // What its plants had soaked up is worked out of their first jar when it is begun.
  if (before.secondOf !== undefined || before.days.isHours || isHeld(judgeJar(jarStateOf([started])!))) return []
  const options = [...typed.filter(([option]) => option !== 'name' && option !== 'when'), ['when', day] as const]
  if (canonical(plannedToday(started)) !== canonical(before)) return []
  const label = { group: 'actions', key: 'jar_begin_again', values: undefined } as const
  const again = callOfTexts('jar start', [['name', name], ...options])
  return again === null ? [] : [{ label, call: again }]
}
