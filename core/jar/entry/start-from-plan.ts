import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { USUAL_MATERIAL } from '../../quantity/materials.ts'
import { exactly } from '../../quantity/measured/measured.ts'
import { type IsoDay, isoDay } from '../../quantity/time/calendar-day.ts'
import type { BatchDays } from '../../recipe/batch.ts'
import type { DosedPlant } from '../../recipe/plan/jar-of.ts'
import type { Plan } from '../../recipe/plan/plan.ts'
import type { PlanWish } from '../../recipe/plan/plan-wish.ts'
import { withoutName } from '../../recipe/portion.ts'
import type { PlantIn, Started } from './entry.ts'

type Hours = NonNullable<BatchDays<IsoDay>['steepHours']>

/** The days of a plan as the jar keeps them; those of an unknown plant are what its maker told. */
function plannedDays(plan: Plan, wish: PlanWish): BatchDays<IsoDay> {
  const { schedule, told } = plan
  if (schedule === null) {
    const strainOn = told.strainOn === null ? null : isoDay(told.strainOn)
    const steepHours = toldHours(wish)
    const isHours = steepHours !== null
    return { tasteFrom: null, strainFrom: strainOn, strainBy: strainOn, restDays: null, isHours, steepHours }
  }
  return {
    tasteFrom: isoDay(schedule.tasteFrom),
    strainFrom: isoDay(schedule.strainFrom),
    strainBy: isoDay(schedule.strainBy),
    restDays: schedule.restDays,
    isHours: schedule.isHours,
    steepHours: schedule.isHours ? (toldHours(wish) ?? hoursOf(plan)) : null,
  }
}

function toldHours({ steepFor }: PlanWish): Hours | null {
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

/** Whether it is dried where the catalogue's is fresh. */
export const isDriedForm = ({ id, form }: DosedPlant['botanical']): boolean =>
  form.state === 'dried' && botanicalById(id).form.state !== 'dried'

/** The jar that a plan begins, all that it needs poured in; plants that go in later are named with their day. */
export function startedFrom(plan: Plan, wish: PlanWish, name: string): Started {
  const { steeping, schedule } = plan
  const known = plan.plants.map(({ botanical, massG, count, words = null }, index): PlantIn => {
    const addOn = schedule === null ? null : isoDay(schedule.addOn[index]!)
    const isLater = schedule !== null && addOn !== isoDay(schedule.start)
    return {
      id: botanical.id,
      name: botanical.names.title,
      isDried: isDriedForm(botanical),
      massG,
      count,
      isUsual: wish.plants[index]!.massG === null,
      words,
      addOn: isLater ? addOn : null,
    }
  })
  const unknown = plan.unknown.map(({ name, massG }) => unknownIn(name, massG))
  const { named, steepFor } = wish
  return {
    kind: 'started',
    name,
    plants: [...known, ...unknown],
    spirits: steeping.spirits.map(withoutName),
    waterG: steeping.waterG.value > 0 ? steeping.waterG : exactly(0),
    sweetenings: steeping.sweetenings,
    ...(plan.sweetener !== USUAL_MATERIAL && { sweetener: plan.sweetener }),
    ...(plan.filler !== null && { filler: plan.filler }),
    targets: plan.targets,
    days: plannedDays(plan, wish),
    bottles: wish.bottles.map(({ count, volumeMl }) => ({ count, volumeMl })),
    named: {
      // A recipe's own water and sugar name them.
      isStrengthNamed: named.abvPercent !== undefined || named.own !== undefined,
      isSweetnessNamed: named.sugarGPerL !== undefined || (named.own?.sugarG ?? null) !== null,
      areBottlesNamed: wish.areBottlesNamed ?? false,
      isSpiritNamed: wish.spirits !== null,
      steepAtPercent: wish.steepAtPercent,
      readyBy: wish.readyBy === null ? null : isoDay(wish.readyBy),
      steepFor:
        steepFor === null ? null : { days: steepFor.days, months: steepFor.months, nominalDays: steepFor.nominalDays },
    },
    origin: wish.origin ?? null,
  }
}

/** A plant that its maker answers for, as it goes in. */
export const unknownIn = (name: string, massG: PlantIn['massG']): PlantIn => ({
  id: null,
  name,
  isDried: false,
  massG,
  count: null,
  isUsual: false,
  words: null,
  addOn: null,
})
