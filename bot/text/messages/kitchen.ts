import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'

/** Measures of their own for what is poured and what is weighed: fruit in pounds, spirit in millilitres. */
export interface MixedKitchen {
  readonly volume: UnitSystem
  readonly mass: UnitSystem
}

/** Whose measures a person cooks with. */
export type Kitchen = UnitSystem | MixedKitchen

/** Those of each kind. */
export const unitsIn = (kitchen: Kitchen): MixedKitchen =>
  typeof kitchen === 'string' ? { volume: kitchen, mass: kitchen } : kitchen
