import type { TroubleVerdict } from '../../../core/trouble/diagnose.ts'
import type { StopId } from '../../../core/trouble/row.ts'
import type { Context } from '../../chat/command.ts'
import { whomToCall } from '../../chat/emergency-reply.ts'
import type { Message } from '../../text/words.ts'

/** What is thrown away for these has poisoned whoever drank of it, however they feel. */
const POISONS: ReadonlySet<StopId> = new Set<StopId>([
  'not_for_drinking',
  'plant_unsure',
  'contents_unknown',
  'fuel',
  'varnish',
  'kernels',
  'weak_low_acid',
  'cleaner',
  'over_ceiling',
])

/** What to do where somebody drank of what is thrown away. */
export const ifDrunkCautions = (
  verdict: TroubleVerdict,
  { settings: { country, units }, zone }: Pick<Context, 'settings' | 'zone'>,
): readonly Message<'cautions'>[] =>
  verdict.kind === 'throw_away' && POISONS.has(verdict.because)
    ? [{ group: 'cautions', key: 'trouble_if_drunk', values: whomToCall({ country, zone, units }) }]
    : []
