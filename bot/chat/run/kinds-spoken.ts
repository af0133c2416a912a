import { unlessRefused } from '../../../core/domain-error.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { kindsTyped } from '../../commands/options/kinds-typed.ts'
import { whoAt } from '../../talk/memory/remembered.ts'
import { type Kitchen, unitsIn, withKinds } from '../../text/messages/kitchen.ts'
import type { Dispatch } from './call-outcome.ts'
import { placeOf } from './kitchen-said.ts'

/** What is bought and paid for by a code, which keeps no names. */
const BY_CODE = /^(?:shopping|cost)$/

/** The same kitchen, with plants called as in the recipe that was worked out last, where they are bought or paid for by its code. */
export function withKindsSpoken(kitchen: Kitchen, path: string, dispatch: Dispatch): Kitchen {
  const { talk, userId, nowMs } = dispatch
  if (!BY_CODE.test(path) || talk === undefined) return kitchen
  const of = talk.of(whoAt(userId, placeOf(dispatch)), nowMs).worked?.call.options.of
  const plants = of === undefined ? null : unlessRefused(() => readPlants(of))
  return plants === null ? kitchen : withKinds(kitchen, { ...kindsTyped([plants]), ...unitsIn(kitchen).kinds })
}
