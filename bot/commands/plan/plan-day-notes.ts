import { isOnlyInSeason } from '../../../core/botanical/evidence/only-in-season.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { northernMonth } from '../../../core/quantity/time/hemisphere.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Schedule } from '../../../core/recipe/plan/schedule.ts'
import type { Call } from '../../calls/call.ts'
import type { PlantLimit } from '../../text/messages/plan.ts'
import type { Message } from '../../text/words.ts'
import type { PlanInput } from './plan-data.ts'
import { when } from './plan-notes.ts'
import { planWith } from './plan-with.ts'

type Note = Message<'notes'>

/**
 * Fresh plants of which it is not the season on the day they are wanted: those that are to be had in their months alone, and those that
 * are only best then. Months are known of the north.
 */
function seasonNotes(plants: Plan['plants'], { month }: CalendarDay, isSouth: boolean): readonly Note[] {
  const now = northernMonth(month, isSouth)
  const out = plants.flatMap(({ botanical: { id, form, monthsNorth } }) =>
    form.state !== 'fresh' || monthsNorth === null || monthsNorth.includes(now) ? [] : [{ id, months: monthsNorth }],
  )
  const only = out.filter(({ id }) => isOnlyInSeason(id))
  const best = out.filter((each) => !only.includes(each))
  return [
    ...when(only.length > 0, { group: 'notes', key: 'plan_only_in_season', values: { plants: only, isSouth } }),
    ...when(best.length > 0, { group: 'notes', key: 'plan_out_of_season', values: { plants: best, isSouth } }),
  ]
}

/** What asks how much fills the bottles; null where that takes what only its maker knows. */
function fillingCall(input: PlanInput, { isPlantSaid }: PlantLimit): Call | null {
  const { spirit, strength } = input
  const less = isPlantSaid ? { of: undefined } : {}
  if (spirit === undefined) return isPlantSaid ? planWith(input, less) : null
  const [only, another] = spirit.is
  const own =
    only?.strength == null || another !== undefined ? undefined : { typed: only.strengthTyped ?? '', is: only.strength }
  const read = strength ?? own
  return read === undefined ? null : planWith(input, { ...less, spirit: undefined, strength: read })
}

/** Where the bottles that were wished for are not filled: what is said before all else, and what fills them. */
export function shortOfBottles({ filled: { empty, bottles } }: Plan, input: PlanInput, limit: PlantLimit) {
  const filled = bottles.reduce((sum, { count }) => sum + count, 0)
  const headline: Message<'headlines'> = {
    group: 'headlines',
    key: 'plan_short',
    values: { empty, filled, limitId: limit.limitId },
  }
  const line = fillingCall(input, limit)
  const label = { group: 'actions', key: 'plan_fill', values: { bottles: empty + filled } } as const
  return empty === 0 ? null : { headline, actions: line === null ? [] : [{ label, call: line }] }
}

/** What the days leave to be said. */
export const dayNotes = ({ schedule, plants, told }: Plan, isSouth: boolean): readonly Note[] => [
  ...(schedule === null ? [] : hurryNotes(schedule)),
  ...seasonNotes(plants, told.start, isSouth),
]

const hurryNotes = ({ hurried, restDays, latestStart }: Schedule): readonly Note[] => [
  ...when(hurried === 'rest', { group: 'notes', key: 'plan_hurried_rest', values: { restDays } }),
  ...when(hurried === 'steep', { group: 'notes', key: 'plan_hurried_steep', values: { restDays } }),
  ...(latestStart === null
    ? []
    : [{ group: 'notes', key: 'plan_latest_start', values: { day: latestStart } } as const]),
]
