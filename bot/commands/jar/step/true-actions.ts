import { correctedReading } from '../../../../core/jar/state/corrected-reading.ts'
import { percentVol } from '../../../../core/quantity/write/made-amounts.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import { type Deep, inMore } from '../../../chat/depth.ts'
import type { Action } from '../../../chat/reply.ts'
import { jarRef } from '../known/jar-ref.ts'
import type { Recorded } from './record-step.ts'

/** So near to what was read, % vol, that nobody wonders. */
export const NEAR_PERCENT = 1

/** That what was typed is its true strength, where it was taken for what a hydrometer shows through sugar. */
export function trueActions(recorded: Recorded, context: Context): readonly (Action & Deep)[] {
  const { story } = recorded
  const corrected = correctedReading(story)
  if (
    corrected === null ||
    Math.abs(corrected.abvPercent.value - (corrected.at20 ?? corrected.read).value) < NEAR_PERCENT
  )
    return []
  const strength = percentVol(Number(corrected.read.value.toPrecision(4)))
  const label = { group: 'actions', key: 'jar_true_strength', values: { abvPercent: corrected.read } } as const
  const action: Action = { label, call: call('measure', { jar: jarRef(recorded, context), strength }) }
  // What may be a slip is undone first.
  return recorded.unusual.length === 0 ? [action] : inMore([action])
}
