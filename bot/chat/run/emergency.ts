import { signs } from '../../../core/trouble/signs.ts'
import { NOBODY } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { aidAsked, isStillOfThem } from '../../talk/emergency/aid-asked.ts'
import { countrySaid } from '../../talk/emergency/country-said.ts'
import type { DangerSaid } from '../../talk/emergency/danger-said.ts'
import { POISONED } from '../../talk/emergency/drowsing.ts'
import { poisonBehind } from '../../talk/emergency/find-harm.ts'
import type { HarmId } from '../../talk/emergency/harm.ts'
import { findHarmAfter } from '../../talk/emergency/harm-after.ts'
import { whoAt } from '../../talk/memory/remembered.ts'
import type { Asker } from '../command.ts'
import { emergencyReply } from '../emergency-reply.ts'
import type { CallOutcome } from './call-outcome.ts'
import { dangerOf } from './danger-told.ts'
import { placeOf } from './kitchen-said.ts'

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

/** Of somebody out of their senses: what was swallowed stays a danger once they wake up. */
const behindOf = (text: string, harm: HarmId, before: DangerSaid | null): HarmId | null => {
  if (harm !== 'unconscious_after_drinking') return null
  if (before !== null && POISONED.includes(before.harm)) return before.harm
  return before?.behind ?? poisonBehind(text)
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
export const emergencyIn = async (
  typed: string | Invocation,
  asker: Asker & { readonly nowMs?: number },
): Promise<CallOutcome | null> => {
  const { talk, userId, nowMs } = asker
  const who = whoAt(userId, placeOf(asker))
  const said = talk === undefined || nowMs === undefined ? null : talk.of(who, nowMs)
  const danger = typeof typed === 'string' ? (said?.danger ?? null) : null
  const harmed = danger?.of === 'person' ? danger : null
  const told = harmed === null ? null : countrySaid(textOf(typed))
  const alone = findHarmAfter(textOf(typed), danger)
  const asked = aidAsked(textOf(typed), alone, danger)
  const isOfThem = told !== null || isStillOfThem(textOf(typed), harmed)
  const harm = asked?.harm ?? alone ?? (isOfThem ? (harmed?.harm ?? null) : null)
  if (harm === null) return null
  const country = told ?? harmed?.country ?? null
  if (talk !== undefined && said !== null && nowMs !== undefined) {
    talk.keep(who, { ...said, danger: dangerOf(harm, country, behindOf(textOf(typed), harm, harmed)) }, nowMs)
  }
  const whereabouts = await whereaboutsOf(asker)
  return {
    ok: true,
    path: EMERGENCY,
    reply: emergencyReply(harm, { ...whereabouts, ...(country !== null && { country }) }, asked?.aids),
  }
}
