import { GLASS_ML, substances } from './substances.ts'

/** Up to this much in a glass, mg, nobody notices. Common practice, no source. */
const LEAST_CAFFEINE_MG = 20
const STEP_MG = 10

/** The most that a glass may hold, mg. */
export const MOST_CAFFEINE_MG = (substances.caffeine.mgPerLFinished * GLASS_ML) / 1000

/** Caffeine in a glass of the finished drink, mg, rounded up to tens; null where nobody notices. `share`: of the most. */
export function caffeineMgInGlass(share: number): number | null {
  const mg = Math.ceil((share * MOST_CAFFEINE_MG) / STEP_MG) * STEP_MG
  return mg <= LEAST_CAFFEINE_MG ? null : mg
}
