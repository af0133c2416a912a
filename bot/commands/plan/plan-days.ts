import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { daysBetween, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Schedule } from '../../../core/recipe/plan/schedule.ts'
import { isSyrup } from '../../../core/recipe/solve/syrup.ts'
import type { Row } from '../../chat/reply.ts'
import type { SweeteningSaid } from '../../text/messages/ingredients.ts'
import type { Message } from '../../text/words.ts'
import { freezerSaid, row } from '../reply/outcome-reply.ts'
import type { plantsSaid } from './plan-data.ts'

type Cell = Message<'cells'>

const on = (day: CalendarDay, cell: Cell): Row => ({
  label: { group: 'rows', key: 'plan_on', values: { day } },
  cell,
})

const isSame = (one: CalendarDay, other: CalendarDay): boolean => isoDay(one) === isoDay(other)

/** Plants that go in after the first day. */
export const addedLater = ({ plants }: Plan, { addOn, start }: Schedule) =>
  addOn.flatMap((day, index) => (isSame(day, start) ? [] : [{ id: plants[index]!.botanical.id, day }]))

/** Those that go in on the first day: what goes in later must not be put in then. */
function atFirst(plan: Plan, plants: ReturnType<typeof plantsSaid>): ReturnType<typeof plantsSaid> {
  const laterIds = plan.schedule === null ? [] : addedLater(plan, plan.schedule).map(({ id }) => id)
  return plants.filter(({ id }) => id === null || !laterIds.includes(id))
}

interface Kitchenware {
  /** Of the person's freezer, °C. */
  readonly freezerC: number
  /** With the plants. */
  readonly sweetenings: readonly SweeteningSaid[]
}

/** What to do on which day. */
export function planDays(
  plan: Plan,
  plants: ReturnType<typeof plantsSaid>,
  { freezerC, sweetenings }: Kitchenware,
): readonly Row[] {
  const { steep, schedule, steeping, told, dilutionMl } = plan
  const putIn: Cell = {
    group: 'cells',
    key: 'plan_put_in',
    values: {
      spirits: steeping.spirits,
      plants: atFirst(plan, plants),
      sweetenings,
      waterMl: dilutionMl.value > 0 ? dilutionMl : null,
      jarMl: steep.jarMl,
      isHours: schedule?.isHours === true,
    },
  }
  return [
    on(told.start, putIn),
    ...(schedule === null ? toldRows(plan) : [...laterRows(plan, schedule), strainRow(plan, schedule)]),
    row('plan_same_day', stirIn(plan)),
    ...(schedule === null ? [] : [on(schedule.ready, readySo(plan, freezerC))]),
  ]
}

/** One for each day on which something more goes in, the first first. */
function laterRows(plan: Plan, schedule: Schedule): readonly Row[] {
  const later = addedLater(plan, schedule).toSorted((one, other) => daysBetween(one.day, other.day))
  const days = later.filter(({ day }, index) => later.findIndex((other) => isSame(other.day, day)) === index)
  return days.map(({ day }) => {
    const ids = later.filter((each) => isSame(each.day, day)).map(({ id }) => id)
    return on(day, { group: 'cells', key: 'plan_add', values: { ids } })
  })
}

/** Not before everything is in. */
function tasteDay(plan: Plan, schedule: Schedule): CalendarDay {
  const { tasteFrom, strainFrom } = schedule
  const isAllIn = addedLater(plan, schedule).every(({ day }) => daysBetween(tasteFrom, day) >= 0)
  return isAllIn ? tasteFrom : strainFrom
}

function strainRow(plan: Plan, schedule: Schedule): Row {
  const { start, strainFrom, strainBy, isHours } = schedule
  const tasteOn = tasteDay(plan, schedule)
  const values = {
    infusionMl: plan.steep.infusionMl,
    from: isSame(tasteOn, strainFrom) ? null : strainFrom,
    to: isSame(tasteOn, strainBy) ? null : strainBy,
    isTasted: true,
    isHours,
  }
  const cell: Cell = { group: 'cells', key: 'plan_taste_strain', values }
  return isSame(tasteOn, start) ? row('plan_same_day', cell) : on(tasteOn, cell)
}

/** Only what its maker told of a plant that nothing is known of. */
function toldRows({ steep: { infusionMl }, told: { strainOn } }: Plan): readonly Row[] {
  const values = { infusionMl, from: null, to: null, isTasted: false, isHours: false }
  const cell: Cell = { group: 'cells', key: 'plan_taste_strain', values }
  return [strainOn === null ? row('plan_when_done', cell) : on(strainOn, cell)]
}

function stirIn(plan: Plan): Cell {
  const { sweetener, filler, sugarG, waterMl, syrupG, plants } = plan
  const clouds = plants.some(
    ({ botanical: { zestGPerFruit, hazards } }) => zestGPerFruit !== null || hazards.includes('louche_anethole'),
  )
  const isCloudy = clouds && waterMl.value > 0
  return {
    group: 'cells',
    key: 'plan_stir_in',
    values: { sweetener, filler, sugarG, waterMl, syrupG: isSyrup(plan) ? syrupG : null, isCloudy },
  }
}

const readySo = ({ outcome, keeping }: Plan, freezerC: number): Cell => ({
  group: 'cells',
  key: 'plan_ready_so',
  values: { freezer: freezerSaid(outcome, freezerC), isForWeeks: keeping !== 'keeps' },
})
