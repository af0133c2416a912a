import type { Problems } from '../../../../core/domain-error.ts'
import { DomainError, unlessRefused } from '../../../../core/domain-error.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { Targets } from '../../../../core/recipe/targets.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import { ChatError } from '../../../chat/chat-error.ts'
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
  const found = orNone(() => askedOrReached({ ...input, ...wish }, false, setting))
  return found === null ? null : (found.nearestAbvPercent ?? found.asked.planned.targets.abvPercent)
}

/** What is made; null where it is refused. */
function orNone<Made>(make: () => Made): Made | null {
  try {
    return unlessRefused(make)
  } catch (error) {
    if (error instanceof ChatError) return null
    throw error
  }
}

interface Reached {
  readonly choice: Choice
  readonly asked: { readonly planned: { readonly targets: Targets } }
}

/** Half of the way is a step still. */
const isHalfWay = (from: number, to: number, is: number): boolean => to === from || (is - from) / (to - from) >= 1 / 2

/** A step that leads nowhere: nothing so much stronger or less sweet can be planned. */
function isNoStep({ choice: { mended }, asked }: Reached): boolean {
  if (mended === null) return false
  const { from, to } = mended
  const { targets } = asked.planned
  return (
    !isHalfWay(from.abvPercent, to.abvPercent, targets.abvPercent) ||
    !isHalfWay(from.sugarGPerL, to.sugarGPerL, targets.sugarGPerL)
  )
}

/** With what it is to become, as it was planned. */
const reached = <Made extends Reached>(made: Made): Made => {
  const { choice, asked } = made
  return { ...made, choice: { ...choice, mended: choice.mended && { ...choice.mended, to: asked.planned.targets } } }
}

/** What is planned by the first choice that can be; the last one's refusal stands. */
export function firstThatCanBe<Made extends Reached>(
  choices: readonly Choice[],
  planned: (choice: Choice) => Made,
): Made {
  const last = choices.at(-1)!
  for (const choice of choices.slice(0, -1)) {
    const found = orNone(() => planned(choice))
    if (found !== null && !isNoStep(found)) return reached(found)
  }
  return planned(last)
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
