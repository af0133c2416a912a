import type { SteepingDays } from '../../../core/jar/tasks/steeping-days.ts'
import type { FreezerState } from '../../../core/liquid/freezer.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { KindTaken, LeadAsked, PouredFor, TalkReading } from '../../talk/frames/reading.ts'
import type { Message } from '../../text/words.ts'
import type { Reply } from '../reply.ts'
import type { CallOutcome } from '../run/call-outcome.ts'

const withNote = (outcome: CallOutcome, note: Message<'notes'>): CallOutcome =>
  outcome.ok ? { ...outcome, reply: { ...outcome.reply, notes: [note, ...outcome.reply.notes] } } : outcome

/** What sweetens, of which nobody said how much. */
const SUGAR =
  /^(?:(?:white|caster|castor|granulated|cane|table|plain|some|the|a bit of|a little) )*(?:sugar|zucchero)(?: (?:to taste|as needed|q ?\.? ?b\.?|a piacere))?$/iu

/** A plan that says how much sugar goes in after straining, of which its maker said nothing. */
function isSugarOpen(outcome: CallOutcome): boolean {
  if (!outcome.ok || !('reply' in outcome) || outcome.path !== 'plan') return false
  const { sugarG } = outcome.reply.data as { readonly sugarG?: unknown }
  return outcome.call?.options.sugar === undefined && typeof sugarG === 'number' && sugarG > 0
}

/** A reply that says which words were left out; of sugar without an amount what that means for the plan. */
export function leavingOut(outcome: CallOutcome, words: readonly string[]): CallOutcome {
  const open = isSugarOpen(outcome) ? words.filter((word) => SUGAR.test(word)) : []
  const rest = words.filter((word) => !open.includes(word))
  const told =
    open.length === 0 ? outcome : withNote(outcome, { group: 'notes', key: 'sugar_to_taste', values: undefined })
  return rest.length === 0 ? told : withNote(told, { group: 'notes', key: 'left_out', values: { words: rest } })
}

/** A reply that says for how many glasses it is. */
export const pouredFor = (
  outcome: CallOutcome,
  poured: PouredFor | undefined,
  key: 'poured_for' | 'poured_bottles' = 'poured_for',
): CallOutcome => (poured === undefined ? outcome : withNote(outcome, { group: 'notes', key, values: poured }))

/** A reply that says that nothing is begun before its day. */
export const tellingAhead = (outcome: CallOutcome, isAhead = false): CallOutcome =>
  isAhead ? withNote(outcome, { group: 'notes', key: 'start_ahead', values: undefined }) : outcome

/** A reply that asks which day it is for. */
export const askingDay = (outcome: CallOutcome, isDayOpen = false): CallOutcome =>
  isDayOpen ? withNote(outcome, { group: 'notes', key: 'day_open', values: undefined }) : outcome

/** What is said first of a jar because it was asked; null where its answer does not tell it. */
function leadOf(asked: LeadAsked, { headline, data }: Reply): Message<'headlines'> | null {
  if (headline.key !== 'jar_shown' && !/^jar_next/.test(headline.key)) return null
  const { name, freezer, sugarGPerL, steeping } = data as {
    readonly steeping?: (SteepingDays & { readonly today: IsoDay }) | null
    readonly name?: string
    readonly sugarGPerL?: number | null
    readonly freezer?: { readonly state: FreezerState } | null
  }
  if (name === undefined) return null
  if (asked.kind === 'glasses') return { group: 'headlines', key: 'asked_glasses', values: { ...asked, name } }
  if (asked.kind === 'yield') return { group: 'headlines', key: 'asked_yield', values: { ...asked, name } }
  if (asked.kind === 'taken_out' || asked.kind === 'tasting') {
    if (steeping === undefined || steeping === null) return null
    const { today, tasteFrom, isDaily, strainFrom, strainBy } = steeping
    return asked.kind === 'tasting'
      ? {
          group: 'headlines',
          key: 'asked_tasting',
          values: { name, isHot: asked.isHot, from: tasteFrom, isDaily, today },
        }
      : { group: 'headlines', key: 'asked_taken_out', values: { name, from: strainFrom, by: strainBy, today } }
  }
  if (asked.kind === 'enough') {
    if (typeof sugarGPerL !== 'number') return null
    return { group: 'headlines', key: 'asked_enough', values: { name, sugarGPerL } }
  }
  if (freezer === undefined || freezer === null) return null
  return { group: 'headlines', key: 'asked_freezer', values: { name, state: freezer.state } }
}

/** A reply that begins with what was asked; what it would have begun with stands under it. */
export function leading(outcome: CallOutcome, asked: LeadAsked | undefined): CallOutcome {
  if (asked === undefined || !outcome.ok) return outcome
  const { reply, path } = outcome
  if (asked.kind === 'glasses' && (path === 'plan' || path === 'again')) {
    const { kind: _, ...values } = asked
    return withNote(outcome, { group: 'notes', key: 'glasses_there', values })
  }
  const lead = leadOf(asked, reply)
  return lead === null
    ? outcome
    : { ...outcome, reply: { ...reply, headline: lead, under: [reply.headline, ...(reply.under ?? [])] } }
}

/** What a batch costs, with what a glass of it comes to in place of 100 ml. */
export function costingGlass(outcome: CallOutcome, glassMl: number | undefined): CallOutcome {
  if (glassMl === undefined || !outcome.ok) return outcome
  const under = (outcome.reply.under ?? []).map((message) =>
    message.key === 'cost_each' ? { ...message, values: { ...message.values, glassMl } } : message,
  )
  return { ...outcome, reply: { ...outcome.reply, under } }
}

/** A reply that says which spirit was taken, where nobody said. */
export const takingSpirit = (outcome: CallOutcome, spirit: string | undefined): CallOutcome =>
  spirit === undefined ? outcome : withNote(outcome, { group: 'notes', key: 'spirit_taken', values: { spirit } })

/** A reply that says which kind of a plant was taken, where its maker could not tell. */
export const takingKind = (outcome: CallOutcome, kind: KindTaken | undefined): CallOutcome =>
  kind === undefined ? outcome : withNote(outcome, { group: 'notes', key: 'kind_taken', values: kind })

/** A reply that says what the vessels hold by which its amounts were told, or how to find out what came out. */
export function byVessels(outcome: CallOutcome, reading: Extract<TalkReading, { kind: 'call' }>): CallOutcome {
  const named = (reading.vessels ?? []).filter(({ name }) => name !== '')
  const vessels = named.filter(({ name }, at) => named.findIndex((other) => other.name === name) === at)
  if (reading.isUnmeasured === true) return withNote(outcome, { group: 'notes', key: 'unmeasured', values: undefined })
  if (reading.isJarOpen === true) return withNote(outcome, { group: 'notes', key: 'jar_open', values: undefined })
  if (reading.isSugarGuessed === true)
    return withNote(outcome, { group: 'notes', key: 'sugar_guessed', values: undefined })
  if (reading.isStrengthOpen === true)
    return withNote(outcome, { group: 'notes', key: 'strength_open', values: undefined })
  if (reading.isBottlesTaken === true)
    return withNote(outcome, { group: 'notes', key: 'bottles_taken', values: undefined })
  return vessels.length === 0
    ? outcome
    : withNote(outcome, { group: 'notes', key: 'vessels_taken', values: { vessels } })
}
