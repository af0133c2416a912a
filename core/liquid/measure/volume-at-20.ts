import { liquidFrom, volumeMl } from '../liquid.ts'
import { GLASS_EXPANSION_PER_K } from './glass.ts'

interface Composition {
  /** As drunk, % vol at 20 °C. */
  readonly abvPercent: number
  /** Default 0. */
  readonly sugarGPerL?: number
}

/**
 * Volume at 20 °C, mL, of what was read in a glass vessel at another temperature.
 * @param tempC - °C, −20 to 40, with sugar 0 to 40; outside, throws `temperature_out_of_range`.
 * Error: below 0.01 % without sugar; the vessel is taken as soda-lime glass made for 20 °C, 25·10⁻⁶/K.
 * Source: mass is kept, so V20 = V (1 + 25·10⁻⁶ (t − 20)) ρ(t)/ρ(20); ρ as in `volumeMl`; glass by OIML R 22.
 */
export const volumeMlAt20 = (readMl: number, { abvPercent, sugarGPerL = 0 }: Composition, tempC: number): number => {
  const litre = liquidFrom({ volumeMl: 1000, abvPercent, sugarGPerL })
  const heldMl = readMl * (1 + GLASS_EXPANSION_PER_K * (tempC - 20))
  return (heldMl * volumeMl(litre)) / volumeMl(litre, tempC)
}
