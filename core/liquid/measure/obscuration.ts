import { abvFromDensity, ethanolWaterDensityKgPerM3, massFractionFromAbv } from '../ethanol-water.ts'
import { apparentVolumeMlPerG } from '../sucrose-water.ts'

export interface Obscured {
  /** What an alcoholometer shows, brought to 20 °C, % vol. */
  readonly apparentPercent: number
  /** Sugar and extract of the liquid, g/L. */
  readonly solidsGPerL: number
  /** By how much the liquid may be denser than the model has it, as a share; left out: by nothing. */
  readonly denserShare?: number
}

/**
 * True strength, % vol at 20 °C, of a liquid whose sugar and extract are known, from what an alcoholometer shows in it: the strength at
 * which the liquid has the density that was seen, its sugar and its room taken away. 0 or the strongest that there is room
 * for where the reading lies beyond them. `solidsGPerL` 0 to 800.
 * Error: that of the sugar, 0.1 to 0.35 % vol for each g/L; up to 20 g/L the model's own density adds 0.2 % vol at most.
 * Source: 27 CFR 30.32(b), “obscuration”: compared with its 0.4 proof for 0.1 g in 100 mL in the tests.
 */
export function abvPercentUnderSolids({ apparentPercent, solidsGPerL, denserShare = 0 }: Obscured): number {
  if (solidsGPerL === 0) return apparentPercent
  const seenKgPerM3 = ethanolWaterDensityKgPerM3(massFractionFromAbv(apparentPercent), 20) / (1 + denserShare)
  const solventShare = 1 - (solidsGPerL * apparentVolumeMlPerG(solidsGPerL)) / 1000
  const solventKgPerM3 = (seenKgPerM3 - solidsGPerL) / solventShare
  const [lightest, heaviest] = [ethanolWaterDensityKgPerM3(1, 20), ethanolWaterDensityKgPerM3(0, 20)]
  return solventShare * abvFromDensity(Math.min(heaviest, Math.max(lightest, solventKgPerM3)), 20)
}
