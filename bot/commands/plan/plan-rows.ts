import { shelfLife } from '../../../core/botanical/limits/shelf-life.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { addMonths } from '../../../core/quantity/time/calendar-day.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Schedule } from '../../../core/recipe/plan/schedule.ts'
import { isSyrup } from '../../../core/recipe/solve/syrup.ts'
import type { Row } from '../../chat/reply.ts'
import { outcomeRows, row } from '../reply/outcome-reply.ts'
import { addedLater } from './plan-days.ts'

/** What the first day and the next ones need, of a jar that is started. */
export function startRows(plan: Plan): readonly Row[] {
  const { steep, schedule, told } = plan
  return [
    row('plan_jar', { group: 'cells', key: 'plan_jar', values: { jarMl: steep.jarMl } }),
    ...(schedule === null ? strainRows(told.strainOn, told.strainOn) : steepRows(plan, schedule)),
  ]
}

/** What comes out of the jar, and what is made of it, with its ±. */
export function planRows(plan: Plan, freezerC: number): readonly Row[] {
  const { steep, schedule, outcome, sweetener, filler, sugarG, waterMl } = plan
  const { jarAbvPercent: abvPercent, plantWaterG, infusionMl, infusionAbvPercent, keptBackMl } = steep
  return [
    row('plan_steeping', { group: 'cells', key: 'plan_steeping', values: { abvPercent, plantWaterG } }),
    row('plan_strained', {
      group: 'cells',
      key: 'plan_strained',
      values: { infusionMl, infusionAbvPercent, keptBackMl },
    }),
    row(sugarG.value > 0 && !isSyrup(plan) ? 'plan_stir_in' : 'plan_syrup', {
      group: 'cells',
      key: 'plan_syrup',
      values: { sweetener, filler, sugarG, waterMl, syrupG: isSyrup(plan) ? plan.syrupG : null },
    }),
    ...(schedule === null ? [] : readyRows(plan, schedule)),
    ...outcomeRows(outcome, freezerC),
  ]
}

const strainRows = (from: CalendarDay | null, to: CalendarDay | null): readonly Row[] =>
  from === null || to === null ? [] : [row('plan_strain', { group: 'cells', key: 'plan_days', values: { from, to } })]

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

function readyRows({ plants, targets, keeping }: Plan, { restDays, sweetenBy }: Schedule): readonly Row[] {
  const life = shelfLife(
    plants.map(({ botanical }) => botanical),
    { abvPercent: targets.abvPercent, keeping },
  )
  const months = life?.months ?? null
  return [
    row('plan_rest', { group: 'cells', key: 'plan_rest', values: { restDays } }),
    row('plan_ready', {
      group: 'cells',
      key: 'plan_ready',
      values: { bestUntil: months === null ? null : addMonths(sweetenBy, months), isForWeeks: keeping !== 'keeps' },
    }),
  ]
}
