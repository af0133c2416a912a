import type { Started } from '../../../../core/jar/entry/entry.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Plan } from '../../../../core/recipe/plan/plan.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { planCautions } from '../../plan/plan-reply.ts'
import type { WithPlants } from '../../plan/plan-wish.ts'
import { graveCautions } from '../../reply/grave-cautions.ts'
import { jarRef } from '../known/jar-ref.ts'
import type { Recorded } from '../step/record-step.ts'

/** Whoever sits at a machine has its clock, where that knows of any place. */
export const hasOwnClock = ({ place, zone }: Pick<Context, 'place' | 'zone'>): boolean =>
  place.kind === 'console' && zone !== 'UTC'

/** Takes the zone that was assumed for good. */
const keepZone = (zone: string): Action => ({
  label: { group: 'actions', key: 'settings_zone', values: { zone } },
  call: call('settings', { zone }),
})

/** Which one that is. */
export const zoneNotes = (zone: string): readonly Message<'notes'>[] => [
  { group: 'notes', key: 'jar_zone_assumed', values: { zone } },
]

/** Plants of which no amount was said. */
export function usualNotes({ of }: WithPlants, { plants }: Plan): readonly Message<'notes'>[] {
  const usual = plants.filter((_, index) => of.is.plants[index]?.massG === null)
  const values = { plants: usual.map(({ botanical, massG }) => ({ id: botanical.id, massG })) }
  return usual.length === 0 ? [] : [{ group: 'notes', key: 'jar_usual_amount', values }]
}

/** What can hurt, the worst first; that the jar may not keep is said of it by its own name. */
export function startCautions(planned: Plan): readonly Message<'cautions'>[] {
  const cautions = planCautions(planned, null).filter(({ key }) => key !== 'plan_jar_undecided')
  const burns = cautions.some(({ key }) => key === 'flame')
  const botanicals = planned.plants.map(({ botanical }) => botanical)
  return [...graveCautions(botanicals, burns), ...cautions]
}

/** When it wants its maker: the days of the plan, and what goes in later. */
export function startDays({ days, plants }: Started, today: IsoDay) {
  const added = [...new Set(plants.flatMap(({ addOn }) => addOn ?? []))].sort()
  const later = added.map((day) => ({
    day,
    plants: plants.filter(({ addOn }) => addOn === day).map(({ id, name }) => ({ id, name })),
  }))
  return { days, later, today }
}

/** What keeps a jar in mind: a tag on it, its days in a calendar, which needs the right zone. */
export function keepingActions(begun: Recorded, isZoneTaken: boolean, context: Context): readonly Action[] {
  const jar = jarRef(begun, context)
  const tag: Action = { label: { group: 'actions', key: 'jar_tag', values: undefined }, call: call('jar tag', { jar }) }
  const calendar: Action = {
    label: { group: 'actions', key: 'jar_calendar', values: undefined },
    call: call('calendar', { jar }),
  }
  return isZoneTaken ? [tag, keepZone(context.zone), ...inMore([calendar])] : [tag, calendar]
}
