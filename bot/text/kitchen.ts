import type { UnitSystem } from '../../core/quantity/parse-units.ts'

/** Whose measures a person cooks with. */
export type Kitchen = UnitSystem
