import type { UnitSystem } from '../../core/quantity/read/parse-units.ts'

/** Whose measures a person cooks with. */
export type Kitchen = UnitSystem
