import { NOBODY } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { findHarm } from '../../talk/emergency/find-harm.ts'
import type { Asker } from '../command.ts'
import { emergencyReply } from '../emergency-reply.ts'
import type { CallOutcome } from './execute.ts'

export const EMERGENCY = 'emergency'

const textOf = (typed: string | Invocation): string =>
  typeof typed === 'string' ? typed : Object.values(typed.options).join('\n')

/** The country that a person has chosen and their zone; whatever keeps it from being read, they count as unknown. */
const whereaboutsOf = async ({ store, userId, assumedZone }: Asker) => {
  const { settings } = await store.read(userId).catch(() => NOBODY)
  return { country: settings.country, zone: settings.zone ?? assumedZone }
}

/**
 * What is answered before a line is read at all: whom to call and what to do first, where it tells that somebody was
 * harmed; else null. Nothing of the line is run or recorded. Never throws.
 */
export const emergencyIn = async (typed: string | Invocation, asker: Asker): Promise<CallOutcome | null> => {
  const harm = findHarm(textOf(typed))
  if (harm === null) return null
  return { ok: true, path: EMERGENCY, reply: emergencyReply(harm, await whereaboutsOf(asker)) }
}
