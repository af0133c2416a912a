import { materialOf } from '../materials.ts'
import type { Mass, StemScale, Strength, SweeteningRead, Sweetness, Volume } from '../quantities.ts'
import type { Measured } from './measured.ts'

/** Half of a tool's 95 % interval, as shares of the reading or in its unit (DEVELOPERS.md, “Uncertainty”). */
export const tools = {
  /** Kitchen jug or spoon. */
  volumeShare: 0.02,
  /** Kitchen scale: the larger of the two. */
  scaleG: 1,
  scaleShare: 0.005,
  /** What a bottle's label may be off. */
  labelPercent: 0.3,
  hydrometerPercent: 0.5,
  /** A sweetness that somebody wrote down. */
  sweetnessShare: 0.02,
} as const

/** Half of a hydrometer's 95 % interval, in its scale's own unit: a good one is read to 0.001 of gravity. Common practice, no source. */
export const stemPlusMinus: { readonly [Scale in StemScale]: number } = {
  sg: 0.001,
  sg_60f: 0.001,
  g_per_ml: 0.001,
  brix: 0.25,
  baume: 0.15,
  percent: tools.hydrometerPercent,
}

/** Half of a refractometer's 95 % interval, Brix: its line is seen to a fifth of a degree. Common practice, no source. */
export const REFRACTOMETER_PLUS_MINUS_BRIX = 0.2

const measured = (value: number, stated: number | null, halfDigit: number, tool: number): Measured => ({
  value,
  plusMinus: stated ?? Math.max(halfDigit, tool),
})

/** Volume as read, ml; not brought to 20 °C. The ± is the stated one, else half the last digit or 2 %. */
export const volumeMl = ({ volumeMl: value, statedMl, halfDigitMl }: Volume): Measured =>
  measured(value, statedMl, halfDigitMl, tools.volumeShare * value)

/** Mass, g. The ± is the stated one, else half the last digit or the scale's. */
export const massG = ({ massG: value, statedG, halfDigitG }: Mass): Measured =>
  measured(value, statedG, halfDigitG, Math.max(tools.scaleG, tools.scaleShare * value))

/** What sweetens, g. The ± is the stated one, else half the last digit or the scale's; where it was poured, the cup's. */
export const sweeteningG = (read: SweeteningRead): Measured => {
  if (!read.byVolume) return massG(read)
  const { pouredPlusMinusShare } = materialOf(read.material)
  return measured(read.massG, read.statedG, read.halfDigitG, pouredPlusMinusShare * read.massG)
}

/**
 * Strength as read, % vol; not brought to 20 °C. The ± is the stated one, else half the last digit or the tool's: a hydrometer's
 * of what was strained and wherever a temperature was said beside it, else that of a label, in every command.
 */
export const abvPercent = (strength: Strength, tool: 'label' | 'hydrometer'): Measured =>
  measured(
    strength.abvPercent,
    strength.statedPercent,
    strength.halfDigitPercent,
    tool === 'label' && strength.atC === null ? tools.labelPercent : tools.hydrometerPercent,
  )

/** Sweetness of a liqueur at hand, g/L. The ± is the stated one, else half the last digit or 2 %. */
export const sugarGPerL = (sweetness: Sweetness): Measured =>
  measured(
    sweetness.sugarGPerL,
    sweetness.statedGPerL,
    sweetness.halfDigitGPerL,
    tools.sweetnessShare * sweetness.sugarGPerL,
  )
