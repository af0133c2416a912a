import type { Problems } from '../../../../core/domain-error.ts'
import { DomainError, unlessRefused } from '../../../../core/domain-error.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import type { Message } from '../../../text/words.ts'
import { percentGiven } from '../../plan/batch-options.ts'
import type { Wish } from '../../plan/plan-actions.ts'
import { planAsked } from '../../plan/plan-asked.ts'
import type { Setting } from '../../plan/plan-wish.ts'
import type { Choice } from './again-said.ts'

/** Rounded down to half a percent, so that it can still be made. */
const down = (abvPercent: number): number => Math.floor(2 * abvPercent + 1e-9) / 2

/** How strong it can become at most; null where something else is in the way. */
function strongestIn(error: unknown): number | null {
  if (!(error instanceof DomainError) || error.problem !== 'infusion_too_weak') return null
  return (error.values as Problems['infusion_too_weak']).strongestAbvPercent
}

/**
 * The plan of a batch that is made once more. What one came out at is measured, and not every such strength can be planned: where nobody
 * asked for it now, the nearest that can be made is.
 */
export function askedOrReached(input: InputOf<'plan'>, isStrengthSaid: boolean, setting: Setting) {
  try {
    return { input, asked: planAsked(input, setting), nearestAbvPercent: null }
  } catch (error) {
    const strongest = isStrengthSaid ? null : strongestIn(error)
    if (strongest === null) throw error
    const nearestAbvPercent = down(strongest)
    const nearer = { ...input, 'to-strength': percentGiven(nearestAbvPercent) }
    const asked = unlessRefused(() => planAsked(nearer, setting))
    if (asked === null) throw error
    return { input: nearer, asked, nearestAbvPercent }
  }
}

/** How strong it becomes with other wishes, or the nearest to that, % vol; null where nothing can be planned. */
export function reachedAbvPercent(input: InputOf<'plan'>, wish: Wish, setting: Setting): number | null {
  const found = unlessRefused(() => askedOrReached({ ...input, ...wish }, false, setting))
  return found === null ? null : (found.nearestAbvPercent ?? found.input['to-strength']?.is.abvPercent ?? null)
}

/** What it came out at last time, and that as much cannot be planned. */
export function nearestNotes(
  told: readonly Message<'notes'>[],
  nearestAbvPercent: number | null,
  { last }: Choice,
  { started }: JarState,
): readonly Message<'notes'>[] {
  const before = last.made ?? started.targets
  if (nearestAbvPercent === null || before === null) return told
  return [
    ...told.filter(({ key }) => key !== 'again_came_out'),
    {
      group: 'notes',
      key: 'again_nearest',
      values: { beforeAbvPercent: before.abvPercent, abvPercent: nearestAbvPercent, isMade: last.made !== null },
    },
  ]
}
