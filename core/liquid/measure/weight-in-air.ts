const AIR_G_PER_ML = 0.0012
const WEIGHTS_G_PER_ML = 8

/**
 * How much more a mass is than what a scale shows in air: the liquid is carried by more air than the scale's weights.
 * Source: OIML R 22, table XII: air 1.2 kg/m³, weights 8000 kg/m³.
 */
const buoyancy = (densityGPerMl: number): number =>
  (1 - AIR_G_PER_ML / WEIGHTS_G_PER_ML) / (1 - AIR_G_PER_ML / densityGPerMl)

/** True mass, g, of a liquid of this density that weighs this much in air: 0.1 % more for a spirit. */
export const massFromWeightInAirG = (weightG: number, densityGPerMl: number): number =>
  weightG * buoyancy(densityGPerMl)

/** What a scale shows in air, g, for this mass. */
export const weightInAirFromMassG = (massG: number, densityGPerMl: number): number => massG / buoyancy(densityGPerMl)
