import type { MaterialId } from '../quantity/materials.ts'
import { type Measured, times } from '../quantity/measured/measured.ts'
import type { Span } from '../quantity/quantities.ts'
import type { Portion } from './portion.ts'
import { type Sweetening, timesSweetenings } from './sweetening.ts'
import type { Targets } from './targets.ts'

/** How its maker spoke of a plant. */
export interface PlantWords {
  readonly noun: string
  /** Whether it was said to be fresh or dried. */
  readonly isFormSaid: boolean
  /** What was counted: `each`, a piece such as `stick`, or `teaspoon`; null where it was weighed or only named. */
  readonly unit: string | null
}

/** A plant of a batch. `Day` is a day of the calendar, or days from the first. */
export interface BatchPlant<Day> {
  /** Of the catalogue; null where the maker answers for one that is not in it. */
  readonly id: string | null
  /** Shown where there is no id. */
  readonly name: string
  /** Dried, where the catalogue's is fresh. */
  readonly isDried: boolean
  readonly massG: Measured
  readonly count: number | null
  /** True where no amount was said: as much as is usual for the spirit. */
  readonly isUsual: boolean
  /** Null where nobody typed it, or it cannot be read any more. */
  readonly words: PlantWords | null
  /** When it goes in, where that is not the first day. */
  readonly addOn: Day | null
}

/** The days of a batch; null where they are not known. */
export interface BatchDays<Day> {
  readonly tasteFrom: Day | null
  readonly strainFrom: Day | null
  readonly strainBy: Day | null
  /** From sweetening to the first glass. */
  readonly restDays: number | null
  /** True where the plants are done within the day; then `steepHours` counts. */
  readonly isHours: boolean
  readonly steepHours: { readonly min: number; readonly max: number } | null
}

/** A length of time, without how it was typed. */
export type SteepSpan = Pick<Span, 'days' | 'months' | 'nominalDays'>

/** What its maker named of it, so that the rest can be chosen anew. */
export interface NamedByMaker<Day> {
  readonly isStrengthNamed: boolean
  readonly isSweetnessNamed: boolean
  readonly areBottlesNamed: boolean
  /** False where as much of it was found as fills the bottles. */
  readonly isSpiritNamed: boolean
  /** The strength that water brings the spirit to before the plants, % vol. */
  readonly steepAtPercent: number | null
  readonly readyBy: Day | null
  /** How long plants steep that are not in the catalogue. */
  readonly steepFor: SteepSpan | null
}

/** Where a batch comes from that somebody else made: its code, and which share of it where it was shared. */
export interface Origin {
  readonly code: string
  readonly shareId: string | null
}

/** What goes into a jar at once. */
export interface PutIn<Day> {
  readonly plants: readonly BatchPlant<Day>[]
  readonly spirits: readonly Portion[]
  readonly waterG: Measured
  readonly sweetenings: readonly Sweetening[]
}

/** All that a batch is: what goes in, what it is to become, when, and into which bottles; everything with its ±. */
export interface Batch<Day = number> extends PutIn<Day> {
  /** Null where nobody knows what it is to become. */
  readonly targets: Targets | null
  readonly days: BatchDays<Day>
  /** What it is sweetened with after straining; left out: white sugar. */
  readonly sweetener?: MaterialId
  /** What goes in for the water then; left out: water. */
  readonly filler?: MaterialId
  /** Null count: as many as it fills. */
  readonly bottles: readonly { readonly count: number | null; readonly volumeMl: number }[]
  readonly named: NamedByMaker<Day>
  /** Null where it was planned by its maker. */
  readonly origin: Origin | null
}

/** `factor` times as much of these. */
export const timesSpirits = (spirits: readonly Portion[], factor: number): readonly Portion[] =>
  spirits.map((each) => ({ ...each, amount: times(each.amount, factor) }))

/** `factor` times as much of all that goes in; strengths, days and bottles stay. */
export const scale = <Scaled extends PutIn<unknown>>(batch: Scaled, factor: number): Scaled => ({
  ...batch,
  plants: batch.plants.map((plant) => ({
    ...plant,
    massG: times(plant.massG, factor),
    count: plant.count === null ? null : plant.count * factor,
  })),
  spirits: timesSpirits(batch.spirits, factor),
  waterG: times(batch.waterG, factor),
  sweetenings: timesSweetenings(batch.sweetenings, factor),
})

/** The batch with every day of it as `as` makes it. */
export function withDays<From, To>(batch: Batch<From>, as: (day: From) => To): Batch<To> {
  const orNull = (day: From | null): To | null => (day === null ? null : as(day))
  const { days, named } = batch
  return {
    ...batch,
    plants: batch.plants.map((plant) => ({ ...plant, addOn: orNull(plant.addOn) })),
    days: {
      ...days,
      tasteFrom: orNull(days.tasteFrom),
      strainFrom: orNull(days.strainFrom),
      strainBy: orNull(days.strainBy),
    },
    named: { ...named, readyBy: orNull(named.readyBy) },
  }
}

/** Fewer of a plant than this are not counted any more. Judgement. */
const LEAST_COUNT = 0.2
/** A count this near to halves, as a share of it, is one of them. Judgement. */
const NEAR_SHARE = 0.02

/** A count that a cook can cut: halves where they are near enough, else two digits; null of next to nothing. */
export function cutCount(count: number): number | null {
  if (count < LEAST_COUNT) return null
  const halves = Math.round(count * 2) / 2
  return Math.abs(halves - count) <= NEAR_SHARE * count ? halves : Number(count.toPrecision(2))
}
