import { exactly } from '../../quantity/measured/measured.ts'
import { isoDay } from '../../quantity/time/calendar-day.ts'
import type { Plan, PlanWish } from '../../recipe/plan/plan.ts'
import type { PlannedBatch, PlantIn, Started } from './entry.ts'

type Asked = Pick<PlanWish, 'bottles' | 'steepFor'>
type Hours = NonNullable<PlannedBatch['steepHours']>

/** What a plan means to become, as the jar keeps it; the days of an unknown plant are those its maker told. */
export function plannedBatch(plan: Plan, wish: Asked): PlannedBatch {
  const { schedule, told, targets } = plan
  const bottles = wish.bottles.map(({ count, volumeMl }) => ({ count, volumeMl }))
  if (schedule === null) {
    const strainOn = told.strainOn === null ? null : isoDay(told.strainOn)
    const steepHours = toldHours(wish)
    const isHours = steepHours !== null
    return {
      targets,
      tasteFrom: null,
      strainFrom: strainOn,
      strainBy: strainOn,
      restDays: null,
      isHours,
      steepHours,
      bottles,
    }
  }
  return {
    targets,
    tasteFrom: isoDay(schedule.tasteFrom),
    strainFrom: isoDay(schedule.strainFrom),
    strainBy: isoDay(schedule.strainBy),
    restDays: schedule.restDays,
    isHours: schedule.isHours,
    steepHours: schedule.isHours ? hoursOf(plan) : null,
    bottles,
  }
}

function toldHours({ steepFor }: Asked): Hours | null {
  if (steepFor === null || steepFor.nominalDays >= 1) return null
  const hours = steepFor.nominalDays * 24
  return { min: hours, max: hours }
}

/** As `schedule` does in days: the plant that takes longest, and the first that is over. */
function hoursOf({ plants }: Plan): Hours {
  const min = 24 * Math.max(...plants.map(({ botanical }) => botanical.timesDays.usualMin))
  const max = 24 * Math.min(...plants.map(({ botanical }) => botanical.timesDays.usualMax))
  return { min, max: Math.max(min, max) }
}

/** The jar that a plan begins, all that it needs poured in; plants that go in later are named with their day. */
export function startedFrom(plan: Plan, wish: Asked, name: string): Started {
  const { steeping, schedule } = plan
  const known = plan.plants.map(({ botanical, massG, count }, index): PlantIn => {
    const addOn = schedule === null ? null : isoDay(schedule.addOn[index]!)
    const isLater = schedule !== null && addOn !== isoDay(schedule.start)
    return { id: botanical.id, name: botanical.names.title, massG, count, addOn: isLater ? addOn : null }
  })
  const unknown = plan.unknown.map(({ name, massG }): PlantIn => ({ id: null, name, massG, count: null, addOn: null }))
  return {
    kind: 'started',
    name,
    plan: plannedBatch(plan, wish),
    plants: [...known, ...unknown],
    spirits: steeping.spirits,
    waterG: steeping.waterG.value > 0 ? steeping.waterG : exactly(0),
    sugarG: steeping.sugarG,
  }
}
