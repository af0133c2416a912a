import { type Liquid, liquidFrom, mix as pour, sugar, water } from '../../../core/liquid/liquid.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Values } from '../../../core/recipe/propagate.ts'
import { adjust } from '../../../core/recipe/solve/adjust.ts'
import { dilute } from '../../../core/recipe/solve/dilute.ts'
import { mix } from '../../../core/recipe/solve/mix.ts'
import type { Outcome } from '../../../core/recipe/solve/outcome.ts'
import { syrup } from '../../../core/recipe/solve/syrup.ts'
import type { SyrupWish } from '../../../core/recipe/solve/syrup-for.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { measuredOut, weighedOut } from '../../../core/recipe/tool-precision.ts'
import { portion, waterPortion } from './kitchens.ts'

/** What a recipe stated, what goes into it with the error of each, and what that makes by core/liquid alone. */
export interface Batch<In> {
  readonly outcome: Outcome
  readonly inputs: In
  readonly make: (values: Values<In>) => Liquid
}

/** A repeatable source of numbers from 0 to 1 (mulberry32). */
export const chance = (seed: number) => {
  let state = seed
  return (): number => {
    state = (state + 0x6d2b79f5) | 0
    let bits = Math.imul(state ^ (state >>> 15), 1 | state)
    bits = (bits + Math.imul(bits ^ (bits >>> 7), 61 | bits)) ^ bits
    return ((bits ^ (bits >>> 14)) >>> 0) / 4294967296
  }
}

const WATER_G_PER_ML = 0.9982

interface Read {
  readonly volumeMl: Measured
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

const within = (random: () => number, low: number, high: number) => low + random() * (high - low)

/** A liquid as read with a jug, a label or hydrometer, and a note of its sugar. */
const reading = (random: () => number, [low, high]: [number, number], tool: number, sweetest = 0): Read => {
  const volumeMl = within(random, 100, 3000)
  const sugarGPerL = within(random, 0, sweetest)
  return {
    volumeMl: { value: volumeMl, plusMinus: 0.02 * volumeMl },
    abvPercent: { value: within(random, low, high), plusMinus: tool },
    sugarGPerL: { value: sugarGPerL, plusMinus: 0.02 * sugarGPerL },
  }
}

const portionOf = ({ volumeMl, abvPercent, sugarGPerL }: Read) =>
  portion(volumeMl.value, abvPercent.value, sugarGPerL.value, {
    volume: volumeMl.plusMinus,
    strength: abvPercent.plusMinus,
    sweetness: sugarGPerL.plusMinus,
  })

const jug = (waterMl: number) => water(waterMl * WATER_G_PER_ML)
const full = (read: Values<Read>) => liquidFrom({ ...read, abvPercent: Math.min(100, read.abvPercent) })

const mixed = (random: () => number) => {
  const spirit = reading(random, [37, 97], 0.3)
  const waterMl = measuredOut(spirit.volumeMl.value * within(random, 0.5, 1.5))
  const sugarG = weighedOut(spirit.volumeMl.value * within(random, 0, 0.4))
  const { outcome } = mix({
    portions: [portionOf(spirit), waterPortion(waterMl, 'volume')],
    sweetenings: whiteSugar(sugarG),
  })
  const inputs = { spirit, waterMl, sugarG }
  const make = (is: Values<typeof inputs>) => pour(full(is.spirit), jug(is.waterMl), sugar(is.sugarG))
  return { outcome, inputs, make }
}

const syruped = (wish: (random: () => number) => SyrupWish) => (random: () => number) => {
  const infusion = reading(random, [45, 96], 0.5)
  const made = syrup(portionOf(infusion), wish(random))
  const waterMl = measuredOut(made.waterMl.value)
  const inputs = { infusion, waterMl, sugarG: weighedOut(made.sugarG.value) }
  const make = (is: Values<typeof inputs>) => pour(full(is.infusion), jug(is.waterMl), sugar(is.sugarG))
  return { outcome: made.outcome, inputs, make }
}

const diluted = (random: () => number) => {
  const spirits = [reading(random, [37, 97], 0.3), reading(random, [37, 97], 0.3)]
  const made = dilute(spirits.map(portionOf), within(random, 8, 36))
  const inputs = { spirits, waterMl: measuredOut(made.waterMl.value) }
  const make = (is: Values<typeof inputs>) => pour(...is.spirits.map(full), jug(is.waterMl))
  return { outcome: made.outcome, inputs, make }
}

const blended = (random: () => number) => {
  const inputs = [0, 1, 2].map(() => reading(random, [5, 50], 0.5, 200))
  const { outcome } = mix({ portions: inputs.map(portionOf), sweetenings: whiteSugar({ value: 0, plusMinus: 0 }) })
  return { outcome, inputs, make: (is: Values<typeof inputs>) => pour(...is.map(full)) }
}

const adjusted = (random: () => number) => {
  const liqueur = reading(random, [20, 35], 0.5, 300)
  const spiritPercent = { value: within(random, 70, 96), plusMinus: 0.3 }
  const targets = { abvPercent: within(random, 20, 35), sugarGPerL: within(random, 100, 300) }
  const made = adjust(portionOf(liqueur), targets, spiritPercent)
  const [spiritMl, waterMl] = [measuredOut(made.spiritMl.value), measuredOut(made.waterMl.value)]
  const inputs = { liqueur, spiritPercent, spiritMl, waterMl, sugarG: weighedOut(made.sugarG.value) }
  const make = (is: Values<typeof inputs>) => {
    const spirit = full({ volumeMl: is.spiritMl, abvPercent: is.spiritPercent, sugarGPerL: 0 })
    return pour(full(is.liqueur), spirit, jug(is.waterMl), sugar(is.sugarG))
  }
  return { outcome: made.outcome, inputs, make }
}

/** Random recipes by what they solve. */
export const batchKinds = {
  mix: mixed,
  'syrup by strength and sweetness': syruped((random) => ({
    by: 'strength_and_sweetness',
    abvPercent: within(random, 18, 35),
    sugarGPerL: within(random, 80, 300),
  })),
  'syrup by strength and ratio': syruped((random) => ({
    by: 'strength_and_ratio',
    abvPercent: within(random, 18, 38),
    sugarPerWater: within(random, 0.3, 0.8),
  })),
  'syrup by sweetness and ratio': syruped((random) => ({
    by: 'sweetness_and_ratio',
    sugarGPerL: within(random, 100, 150),
    sugarPerWater: within(random, 0.25, 0.4),
  })),
  dilute: diluted,
  blend: blended,
  adjust: adjusted,
}

export type Kind = keyof typeof batchKinds
