/** What can be wrong with a liquid or a measurement of it, by key, with the values its sentence needs. */
export interface LiquidProblems {
  /** A temperature outside the range of the formula used. */
  temperature_out_of_range: { readonly tempC: number; readonly lowC: number; readonly highC: number }
  /** A strength below 0 or above 100 % vol. */
  strength_out_of_range: { readonly abvPercent: number; readonly lowPercent: number; readonly highPercent: number }
  /** A US proof below 0 or above 200. */
  proof_out_of_range: { readonly usProof: number; readonly highUsProof: number }
  /** A sweetness below 0 or above that of sugar itself. */
  sweetness_out_of_range: { readonly sugarGPerL: number; readonly highGPerL: number }
  /** An amount below 0 or not a number. */
  negative_volume: { readonly volumeMl: number }
  negative_mass: { readonly massG: number }
  /** A share by mass outside 0 to 1. */
  mass_fraction_out_of_range: { readonly massFraction: number }
  /** No mixture of ethanol and water has this density at this temperature. */
  density_out_of_range: {
    readonly densityKgPerM3: number
    readonly lowKgPerM3: number
    readonly highKgPerM3: number
    readonly tempC: number
  }
  /** A hydrometer reading that no mixture of ethanol and water shows at this temperature. */
  reading_out_of_scale: { readonly readingPercent: number; readonly tempC: number }
  /** No mixture of alcohol, water and sugar shows what was read; which reading is out of reach. */
  readings_do_not_fit: { readonly reading: 'density' | 'brix' | 'boiled' }
  /** Alcohol and sugar together leave no room for water. */
  no_room_for_water: { readonly abvPercent: number; readonly sugarGPerL: number }
  /** A fault of ours: the solver was given a bracket without a root, or spent its steps. */
  no_sign_change: { readonly low: number; readonly high: number }
  no_convergence: { readonly low: number; readonly high: number }
}

declare module '../domain-error.ts' {
  interface Problems extends LiquidProblems {}
}
