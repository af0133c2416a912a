import type { Diagnosis } from '../../../core/trouble/diagnose.ts'
import type { StopId } from '../../../core/trouble/row.ts'
import type { Context } from '../../chat/command.ts'
import { whomToCall } from '../../chat/emergency-reply.ts'
import type { HarmId } from '../../talk/emergency/harm.ts'
import type { Message } from '../../text/words.ts'

/** What is thrown away for these has poisoned whoever drank of it, however they feel; and how. */
export const POISONS: ReadonlyMap<StopId, HarmId> = new Map<StopId, HarmId>([
  ['not_for_drinking', 'methanol'],
  ['plant_unsure', 'swallowed_plant'],
  ['contents_unknown', 'swallowed_undrinkable'],
  ['fuel', 'methanol'],
  ['varnish', 'methanol'],
  ['kernels', 'swallowed_plant'],
  ['weak_low_acid', 'swallowed_undrinkable'],
  ['cleaner', 'swallowed_undrinkable'],
  ['over_ceiling', 'swallowed_plant'],
])

/** What to do where somebody drank of what is thrown away, or of spirit that nobody may drink. */
export const ifDrunkCautions = (
  { verdict, causes }: Diagnosis,
  { settings: { country, units }, zone }: Pick<Context, 'settings' | 'zone'>,
): readonly Message<'cautions'>[] =>
  (verdict.kind === 'throw_away' && POISONS.has(verdict.because)) ||
  (verdict.kind === 'hold' && verdict.because === 'danger' && causes[0]?.cause.leadsTo === 'wrong_spirit')
    ? [{ group: 'cautions', key: 'trouble_if_drunk', values: whomToCall({ country, zone, units }) }]
    : []
