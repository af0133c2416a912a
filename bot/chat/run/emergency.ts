import { signs } from '../../../core/trouble/signs.ts'
import { NOBODY } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { findHarm } from '../../talk/emergency/find-harm.ts'
import type { Asker } from '../command.ts'
import { emergencyReply } from '../emergency-reply.ts'
import type { CallOutcome } from './call-outcome.ts'

const EMERGENCY = 'emergency'

const SIGNS = `(?:${signs.join('|')})`

/** What its maker answers where `/trouble` asked, and nothing beside: `no:burst + fizz`. */
const ANSWER = new RegExp(`\\s(?:yes|no):\\s*${SIGNS}(?:\\s*\\+\\s*${SIGNS})*(?=\\s|$)`, 'gi')

const withoutAnswers = (line: string): string => (/^\s*\/trouble\s/i.test(line) ? line.replaceAll(ANSWER, '') : line)

const textOf = (typed: string | Invocation): string => {
  if (typeof typed === 'string') return withoutAnswers(typed)
  const { path, options } = typed
  const told = Object.entries(options).filter(
    ([option, text]) => path !== 'trouble' || withoutAnswers(`/trouble x ${option}:${text}`) !== '/trouble x',
  )
  return told.map(([, text]) => text).join('\n')
}

/** The country that a person has chosen and their zone; whatever keeps it from being read, they count as unknown. */
const whereaboutsOf = async ({ store, userId, assumedZone }: Asker) => {
  const { settings } = await store.read(userId).catch(() => NOBODY)
  return { country: settings.country, zone: settings.zone ?? assumedZone, units: settings.units }
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
