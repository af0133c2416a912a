import { keepsAYear } from '../../../core/liquid/keeping.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import type { Schedule } from '../../../core/recipe/plan/schedule.ts'
import { isSyrup } from '../../../core/recipe/solve/syrup.ts'
import type { Row } from '../../chat/reply.ts'
import { outcomeRows, row } from '../reply/outcome-reply.ts'
import type { plantsSaid } from './plan-data.ts'

/** What goes into the jar, the days as far as they are known, and what comes out. */
export function planRows(
  wish: PlanWish,
  plan: Plan,
  plants: ReturnType<typeof plantsSaid>,
  freezerC: number,
): readonly Row[] {
  const { steep, schedule, steeping, filled, outcome, told } = plan
  const { dilutionMl, sweetener, sugarG, waterMl } = plan
  const laterIds = schedule === null ? [] : addedLater(plan, schedule).map(({ id }) => id)
  // What goes in later must not be put in on the first day.
  const first = plants.filter(({ id }) => id === null || !laterIds.includes(id))
  const inJar = { spirits: steeping.spirits, plants: first, sweetenings: steeping.sweetenings }
  const { jarMl, jarAbvPercent: abvPercent, plantWaterG, infusionMl, infusionAbvPercent, keptBackMl } = steep
  const leftoverMl = { value: filled.leftoverMl, plusMinus: outcome.volumeMl.plusMinus }
  return [
    row('plan_in_jar', { group: 'cells', key: 'plan_in_jar', values: inJar }),
    ...(wish.steepAtPercent === null
      ? []
      : [
          row('plan_water_first', {
            group: 'cells',
            key: 'plan_water_first',
            values: { waterMl: dilutionMl, abvPercent: wish.steepAtPercent },
          }),
        ]),
    row('plan_jar', { group: 'cells', key: 'plan_jar', values: { jarMl } }),
    row('plan_steeping', { group: 'cells', key: 'plan_steeping', values: { abvPercent, plantWaterG } }),
    ...(schedule === null ? strainRows(told.strainOn, told.strainOn) : steepRows(plan, schedule)),
    row('plan_strained', {
      group: 'cells',
      key: 'plan_strained',
      values: { infusionMl, infusionAbvPercent, keptBackMl },
    }),
    ...sweetenRows(schedule?.sweetenBy ?? told.sweetenBy),
    row(sugarG.value > 0 && !isSyrup(plan) ? 'plan_stir_in' : 'plan_syrup', {
      group: 'cells',
      key: 'plan_syrup',
      values: { sweetener, sugarG, waterMl, syrupG: isSyrup(plan) ? plan.syrupG : null },
    }),
    ...(schedule === null ? [] : readyRows(plan, schedule)),
    ...outcomeRows(outcome, freezerC),
    row('plan_bottles', { group: 'cells', key: 'plan_bottles', values: { bottles: filled.bottles, leftoverMl } }),
  ]
}

const strainRows = (from: CalendarDay | null, to: CalendarDay | null): readonly Row[] =>
  from === null || to === null ? [] : [row('plan_strain', { group: 'cells', key: 'plan_days', values: { from, to } })]

const sweetenRows = (day: CalendarDay | null): readonly Row[] =>
  day === null ? [] : [row('plan_sweeten', { group: 'cells', key: 'plan_by', values: { day } })]

/** Plants that go in after the first day. */
export const addedLater = ({ plants }: Plan, { addOn, start }: Schedule) =>
  addOn.flatMap((day, index) => (isoDay(day) === isoDay(start) ? [] : [{ id: plants[index]!.botanical.id, day }]))

function steepRows(plan: Plan, schedule: Schedule): readonly Row[] {
  const { tasteFrom, strainFrom, strainBy } = schedule
  const later = addedLater(plan, schedule)
  return [
    ...(later.length === 0
      ? []
      : [row('plan_add_later', { group: 'cells', key: 'plan_add_later', values: { later } })]),
    row('plan_taste', { group: 'cells', key: 'plan_day', values: { day: tasteFrom } }),
    ...strainRows(strainFrom, strainBy),
  ]
}

function readyRows({ outcome, keeping }: Plan, { restDays, ready, bestBefore }: Schedule): readonly Row[] {
  const isWeak = !keepsAYear(outcome.abvPercent.value)
  return [
    row('plan_rest', { group: 'cells', key: 'plan_rest', values: { restDays } }),
    row('plan_ready', {
      group: 'cells',
      key: 'plan_ready',
      values: { ready, bestBefore: isWeak ? null : bestBefore, isForWeeks: keeping !== 'keeps' },
    }),
  ]
}
