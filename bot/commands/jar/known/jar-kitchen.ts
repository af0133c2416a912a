import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { callOfTexts } from '../../../calls/call.ts'
import type { Kitchen } from '../../../text/kitchen.ts'
import { kitchenTyped } from '../../options/input-units.ts'

/** Amounts of a start that tell its maker's kitchen; bottles are sold in millilitres. */
const AMOUNTS: ReadonlySet<string> = new Set(['of', 'spirit', 'sugar'])

/** The kitchen in which something is said of a jar: of the amounts that were typed now, else of those it was started with. */
export function kitchenOfJar(input: object, { started }: Pick<JarState, 'started'>): Kitchen {
  const now = kitchenTyped(input)
  if (now !== null) return now
  const typed = started.typed.filter(([option]) => AMOUNTS.has(option))
  const values = callOfTexts('plan', typed)?.values
  return (values === undefined ? null : kitchenTyped(values)) ?? 'metric'
}
