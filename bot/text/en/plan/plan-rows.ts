import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../../core/quantity/quantities.ts'
import type { Format } from '../../format.ts'
import {
  type BottlesSaid,
  bottlesText,
  daysText,
  type PlantSaid,
  plantName,
  plantText,
  type SpiritSaid,
  spiritText,
  type UnknownSaid,
  vesselText,
} from './plan-words.ts'

/** A teaspoon stays in the jug. */
const LEAST_LEFT_ML = 5

/** The left of a plan's table. */
export const planRows = {
  plan_in_jar: () => 'In the jar',
  plan_water_first: () => 'Water first',
  plan_jar: () => 'Jar',
  plan_steeping: () => 'While steeping',
  plan_add_later: () => 'Add later',
  plan_taste: () => 'Taste from',
  plan_strain: () => 'Strain',
  plan_strained: () => 'Strained',
  plan_sweeten: () => 'Sweeten',
  plan_syrup: () => 'Syrup expected',
  plan_stir_in: () => 'Stir in',
  plan_rest: () => 'Filter, rest',
  plan_ready: () => 'Ready',
  plan_bottles: () => 'Bottles',
}

interface InJar {
  readonly spirits: readonly SpiritSaid[]
  readonly plants: readonly (PlantSaid | UnknownSaid)[]
  readonly sugarG: Measured
}

interface Strained {
  readonly infusionMl: Measured
  readonly infusionAbvPercent: Measured
  readonly keptBackMl: Measured
}

interface Expected {
  readonly sugarG: Measured
  readonly waterMl: Measured
  /** Null where no syrup can be made of them first. */
  readonly syrupG: Measured | null
}

/** And its right. */
export const planCells = {
  plan_in_jar: ({ spirits, plants, sugarG }: InJar, format: Format) =>
    [
      ...spirits.map((spirit) => spiritText(spirit, format)),
      ...plants.map((plant) => plantText(plant, format)),
      ...(sugarG.value > 0 ? [`${format.mass(sugarG)} sugar`] : []),
    ].join(' + '),
  plan_water_first: (
    { waterMl, abvPercent }: { readonly waterMl: Measured; readonly abvPercent: number },
    format: Format,
  ) => `${format.volume(waterMl)}, to steep at ${format.plain(abvPercent, 1)} % vol`,
  plan_jar: ({ jarMl }: { readonly jarMl: number }, format: Format) =>
    `${vesselText(jarMl, format)}, at most 85 to 90 % full`,
  plan_steeping: (
    { abvPercent, plantWaterG }: { readonly abvPercent: Measured; readonly plantWaterG: Measured },
    format: Format,
  ) =>
    `${format.strength(abvPercent)} ± ${format.give.strength(abvPercent)}` +
    `${plantWaterG.value < 0.5 ? '' : `; the plants bring about ${format.mass(plantWaterG)} water`}`,
  plan_add_later: (
    { later }: { readonly later: readonly { readonly id: string; readonly day: CalendarDay }[] },
    format: Format,
  ) => later.map(({ id, day }) => `${plantName(id)} on ${format.day(day)}`).join(', '),
  plan_day: ({ day }: { readonly day: CalendarDay }, format: Format) => format.day(day),
  plan_days: ({ from, to }: { readonly from: CalendarDay; readonly to: CalendarDay }, format: Format) =>
    daysText(from, to, format),
  plan_by: ({ day }: { readonly day: CalendarDay }, format: Format) => `the day after straining, by ${format.day(day)}`,
  plan_strained: ({ infusionMl, infusionAbvPercent, keptBackMl }: Strained, format: Format) =>
    `${format.volume(infusionMl)} ± ${format.give.volume(infusionMl)} at ${format.strength(infusionAbvPercent)};` +
    ` the plants keep about ${format.volume(keptBackMl)}`,
  plan_syrup: ({ sugarG, waterMl, syrupG }: Expected, format: Format) =>
    syrupG !== null
      ? `about ${format.mass(sugarG)} sugar in ${format.volume(waterMl)} water (${format.mass(syrupG)})`
      : sugarG.value === 0
        ? `about ${format.volume(waterMl)} water, no more sugar`
        : waterMl.value === 0
          ? `${format.mass(sugarG)} sugar, no water`
          : `about ${format.mass(sugarG)} sugar and ${format.volume(waterMl)} water, no syrup`,
  plan_rest: ({ restDays }: { readonly restDays: number }) =>
    `rest ${restDays} ${restDays === 1 ? 'day' : 'days'}; after the first 1 or 2, in the cold, filter or decant`,
  /** Without a best before: too weak for a year in a cupboard. */
  plan_ready: (
    values: {
      readonly ready: CalendarDay
      readonly bestBefore: CalendarDay | null
      /** It may not keep. */
      readonly isForWeeks: boolean
    },
    format: Format,
  ) => {
    const { ready, bestBefore, isForWeeks } = values
    if (isForWeeks) return `by ${format.day(ready)}; in the fridge all the time, for weeks`
    const how = bestBefore === null ? 'once open, in the fridge' : `best before about ${format.day(bestBefore)}`
    return `by ${format.day(ready)}; ${how}`
  },
  plan_bottles: (
    { bottles, leftoverMl }: { readonly bottles: readonly BottlesSaid[]; readonly leftoverMl: Measured },
    format: Format,
  ) =>
    `${bottlesText(bottles, format) || 'none full'}` +
    `${leftoverMl.value >= LEAST_LEFT_ML ? `, ${format.volume(leftoverMl)} left over` : ', nothing left over'}`,
}
