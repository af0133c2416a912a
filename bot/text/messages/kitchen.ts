import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'

/** Measures of their own for what is poured and what is weighed: fruit in pounds, spirit in millilitres. */
export interface MixedKitchen {
  readonly volume: UnitSystem
  readonly mass: UnitSystem
  /** A strength was typed in US proof, so that a kitchen that pours in cups is told strengths in it. */
  readonly strength?: 'proof'
  /** A sweetness was typed in grams, so that no other unit takes its place. */
  readonly sweetness?: 'metric'
  /** What its maker calls a plant, by its id. */
  readonly kinds?: Readonly<Record<string, string>>
}

/** Whose measures a person cooks with. */
export type Kitchen = UnitSystem | MixedKitchen

/** Those of each kind. */
export const unitsIn = (kitchen: Kitchen): MixedKitchen =>
  typeof kitchen === 'string' ? { volume: kitchen, mass: kitchen } : kitchen

/** By its name where nothing in it is told otherwise. */
export const kitchenOfEach = (each: MixedKitchen): Kitchen =>
  each.volume === each.mass && each.strength === undefined && each.sweetness === undefined && each.kinds === undefined
    ? each.volume
    : each

/** The same in the units that somebody has chosen for everything; null: for nothing. What was typed in proof stays in it. */
export const kitchenIn = (units: UnitSystem | null, kitchen: Kitchen): Kitchen =>
  units === null ? kitchen : kitchenOfEach({ ...unitsIn(kitchen), volume: units, mass: units })

/** Whether it is that of these units, whatever its strengths are told in. */
export const isKitchenOf = (units: UnitSystem, kitchen: Kitchen): boolean => {
  const { volume, mass } = unitsIn(kitchen)
  return volume === units && mass === units
}

/** The same, where plants are called by names of their maker's own. */
export const withKinds = (kitchen: Kitchen, kinds: Readonly<Record<string, string>>): Kitchen =>
  Object.keys(kinds).length === 0 ? kitchen : { ...unitsIn(kitchen), kinds }
