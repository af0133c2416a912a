import type { CallRead, TalkReading } from '../../talk/frames/reading.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { execute } from '../run/execute.ts'
import { asInvocation } from './written-call.ts'

/** Of what nobody measured half is as likely as half as much again. Common practice, no source. */
const GIVE_OR_TAKE = 1 / 2

/** No finer than a guess is. */
const roughly = (amount: number): number => Number(amount.toPrecision(2))

/** What went in by taste is about what was planned, give or take half of it; of a jar without a plan the call as it is. */
export async function sweetenedAsPlanned(
  call: CallRead,
  { isSugarGuessed }: Extract<TalkReading, { kind: 'call' }>,
  dispatch: Dispatch,
): Promise<CallRead> {
  if (isSugarGuessed !== true || call.options.sugar !== undefined) return call
  const tried = await execute(asInvocation(call), dispatch)
  if (tried.ok || tried.error.problem !== 'syrup_reckoned') return call
  const { sugarG, waterMl } = tried.error.values as { readonly sugarG: number; readonly waterMl: number }
  const [sugar, water] = [roughly(sugarG), roughly(waterMl)]
  return {
    ...call,
    options: {
      ...call.options,
      ...(sugar > 0 && { sugar: `${sugar} g ±${roughly(GIVE_OR_TAKE * sugar)} g` }),
      ...(water > 0 && { water: `${water} ml` }),
    },
  }
}
