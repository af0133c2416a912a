import { type Dissolved, type Liquid, liquidFrom, liquidFromMass } from '../liquid/liquid.ts'
import { abvPercentAt20, strengthPercentFromReading } from '../liquid/measure/hydrometer.ts'
import { volumeMlAt20 } from '../liquid/measure/volume-at-20.ts'
import { abvPercentFromUsProof, US_PROOF_TEMP_C, usProofFromAbvPercent } from '../liquid/proof.ts'
import type { Measured } from '../quantity/measured/measured.ts'
import type { Values } from './propagate.ts'

/** An amount of some liquid as a maker measured it. */
export interface Portion {
  /** Millilitres as read, or grams, by `by`. */
  readonly amount: Measured
  readonly by: 'volume' | 'mass'
  /** Temperature at which the volume was read; 20 where nothing was said. */
  readonly atC: number
  /** % vol; what a hydrometer showed at `abvAtC`, where that is not null. */
  readonly abvPercent: Measured
  readonly abvAtC: number | null
  /** True for a hydrometer in US proof, made for 60 °F; else it is made for 20 °C. */
  readonly readsProof?: boolean
  readonly sugarGPerL: Measured
}

/** A spirit with what its maker called it, as long as it is talked of: what is kept of a jar is what was typed. */
export interface NamedPortion extends Portion {
  /** `gin`; null or left out: spirit, or what is sweet. */
  readonly drink?: string | null
}

/** As it is kept. */
export const withoutName = ({ drink: _, ...portion }: NamedPortion): Portion => portion

/** Where it is known what went into it, not only how sweet it is. */
export interface KnownPortion extends Portion {
  /** What else is dissolved, and of which kinds its sugars are; left out: sucrose alone. */
  readonly dissolved?: Dissolved
}

/** A strength as read, brought to 20 °C, % vol. */
export function strengthAt20({
  abvPercent,
  abvAtC,
  readsProof,
}: Values<Pick<Portion, 'abvPercent' | 'abvAtC' | 'readsProof'>>): number {
  if (abvAtC === null || (abvAtC === 20 && !readsProof)) return abvPercent
  if (!readsProof) return abvPercentAt20(abvPercent, abvAtC)
  const readingPercent = usProofFromAbvPercent(abvPercent) / 2
  const percentAt60F = strengthPercentFromReading({ readingPercent, tempC: abvAtC, scaleC: US_PROOF_TEMP_C })
  return abvPercentFromUsProof(2 * percentAt60F)
}

/** What a portion holds, its readings brought to 20 °C first. */
export function liquidOf(portion: Values<KnownPortion>): Liquid {
  const abvPercent = strengthAt20(portion)
  const { sugarGPerL, dissolved } = portion
  if (portion.by === 'mass') return liquidFromMass({ ...dissolved, massG: portion.amount, abvPercent, sugarGPerL })
  const volumeMl =
    portion.atC === 20 ? portion.amount : volumeMlAt20(portion.amount, { abvPercent, sugarGPerL }, portion.atC)
  return liquidFrom({ ...dissolved, volumeMl, abvPercent, sugarGPerL })
}
