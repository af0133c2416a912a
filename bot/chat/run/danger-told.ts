import type { StopId } from '../../../core/trouble/row.ts'
import { POISONS } from '../../commands/trouble/if-drunk.ts'
import type { DangerSaid } from '../../talk/emergency/danger-said.ts'
import type { HarmId } from '../../talk/emergency/harm.ts'
import type { HandbookId } from '../../text/messages/handbook.ts'
import type { CallOutcome } from './call-outcome.ts'
import type { HelpPage } from './help-page.ts'

/** So many answers later `it` is something else. */
const MOST_ANSWERS = 6

/** A danger that an answer more has been given since. */
export const dangerStill = (danger: DangerSaid | null): DangerSaid | null =>
  danger === null || danger.answersSince >= MOST_ANSWERS ? null : { ...danger, answersSince: danger.answersSince + 1 }

const ofDrink = (harm: HarmId, isBeyondDoubt = true): DangerSaid => ({
  of: 'drink',
  harm,
  isBeyondDoubt,
  answersSince: 0,
})

/** What was refused because it poisons, by the key of the problem. */
const REFUSED: Readonly<Record<string, HarmId>> = {
  refused_spirit: 'methanol',
  near_refused_spirit: 'methanol',
  refused_botanical: 'swallowed_plant',
}

/** What an entry of the handbook says not to drink, by what drinking it does. */
const ENTRIES: Readonly<Partial<Record<HandbookId, HarmId>>> = {
  unknown_steeped: 'swallowed_plant',
  chemical_cleaned: 'swallowed_undrinkable',
}

/** What the verdict on a jar says of drinking from it. */
function dangerOfVerdict(discard: unknown): DangerSaid | null {
  if (typeof discard !== 'object' || discard === null) return null
  const { verdict, because, question } = discard as Readonly<Record<string, unknown>>
  if (verdict === 'throw_away') return ofDrink(POISONS.get(because as StopId) ?? 'swallowed_undrinkable')
  return verdict === 'ask' && question !== null ? ofDrink('swallowed_undrinkable', false) : null
}

/** The danger that an answer tells of, so that what is told next is understood; null where it tells of none. */
export function dangerIn(outcome: CallOutcome | HelpPage): DangerSaid | null {
  if ('reply' in outcome) {
    const harm = ENTRIES[outcome.reply.data.entry as HandbookId]
    return harm === undefined ? dangerOfVerdict(outcome.reply.data.discard) : ofDrink(harm)
  }
  if (outcome.ok) return null
  const harm = outcome.error.code === 'refused' ? REFUSED[outcome.error.problem] : undefined
  return harm === undefined ? null : ofDrink(harm)
}

/** Somebody is harmed: what is told next may be of them. */
export const dangerOf = (harm: HarmId, country: string | null, behind: HarmId | null = null): DangerSaid => ({
  of: 'person',
  harm,
  behind,
  country,
  isBeyondDoubt: true,
  answersSince: 0,
})
