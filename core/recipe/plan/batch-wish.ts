import type { Botanical } from '../../botanical/botanical.ts'
import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { inForm } from '../../botanical/find/in-form.ts'
import { exactly } from '../../quantity/measured/measured.ts'
import type { CalendarDay } from '../../quantity/quantities.ts'
import { type Batch, type BatchPlant, cutCount, scale } from '../batch.ts'
import type { Portion } from '../portion.ts'
import { measuredOut, weighedOut } from '../tool-precision.ts'
import type { PlanWish } from './plan-wish.ts'
import type { KeptDays } from './schedule.ts'
import { massOfCounted } from './weigh-pieces.ts'

/** The plant in the form in which a batch weighs it. */
export const botanicalOf = ({ id, isDried }: { readonly id: string; readonly isDried: boolean }): Botanical => {
  const usual = botanicalById(id)
  return isDried ? (inForm(usual, 'dried') ?? usual) : usual
}

type KnownPlant<Day> = BatchPlant<Day> & { readonly id: string }

export const isKnownPlant = <Day>(plant: BatchPlant<Day>): plant is KnownPlant<Day> => plant.id !== null

/** Whether its mass is only what as many pieces weigh, so that nobody weighed it. */
const isByCount = (plant: BatchPlant<unknown>): boolean => {
  if (!isKnownPlant(plant) || plant.count === null) return false
  if (plant.words !== null) return plant.words.unit !== null
  return massOfCounted(botanicalOf(plant), plant.count, plant.massG.value) !== null
}

const remeasured = (spirit: Portion): Portion => {
  const { value } = spirit.amount
  return { ...spirit, amount: spirit.by === 'mass' ? weighedOut(value) : measuredOut(value) }
}

/**
 * `factor` times the batch as a maker measures it out anew: by scale and jug, whatever they were the first time; pieces that were
 * counted are as little known as before.
 */
export function remade<Day>(batch: Batch<Day>, factor: number): Batch<Day> {
  const scaled = scale(batch, factor)
  return {
    ...scaled,
    plants: scaled.plants.map((plant, index) => ({
      ...plant,
      massG: isByCount(batch.plants[index]!) ? plant.massG : weighedOut(plant.massG.value),
      count: plant.count === null ? null : cutCount(plant.count),
      isUsual: false,
    })),
    spirits: scaled.spirits.map(remeasured),
    waterG: weighedOut(scaled.waterG.value),
    sweetenings: scaled.sweetenings.map((each) => ({ ...each, massG: weighedOut(each.massG.value) })),
  }
}

interface When {
  readonly start: CalendarDay
  readonly readyBy: CalendarDay | null
  /** Left out: the plants' own days. */
  readonly kept?: KeptDays | undefined
}

/** What planning the batch asks for: what its maker named, and what is left to the plan. */
export function wishOf(batch: Batch<unknown>, { start, readyBy, kept }: When): PlanWish {
  const { plants, spirits, sweetenings, sweetener, filler, targets, bottles, named, origin } = batch
  return {
    plants: plants.filter(isKnownPlant).map((plant) => {
      const { massG, count, isUsual, words } = plant
      return { botanical: botanicalOf(plant), massG: isUsual ? null : massG, count, words }
    }),
    unknown: plants.flatMap(({ id, name, massG }, at) => (id === null ? [{ name, at, massG }] : [])),
    steepFor: named.steepFor,
    spirits: named.isSpiritNamed ? spirits : null,
    spiritAbvPercent: spirits[0]?.abvPercent ?? exactly(0),
    steepAtPercent: named.steepAtPercent,
    sweetenings,
    sweetener: sweetener ?? null,
    filler: filler ?? null,
    named: {
      abvPercent: named.isStrengthNamed ? targets?.abvPercent : undefined,
      sugarGPerL: named.isSweetnessNamed ? targets?.sugarGPerL : undefined,
    },
    bottles,
    areBottlesNamed: named.areBottlesNamed,
    start,
    readyBy,
    kept,
    origin,
  }
}
