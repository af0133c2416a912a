import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { strengthAt20 } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { contentsOf } from './contents.ts'
import type { JarState } from './jar-state.ts'

/** A strength this near to what was read needs no word, % vol. Common practice, no source. */
export const SAME_READING_PERCENT = 0.2

export interface CorrectedReading {
  readonly abvPercent: Measured
  /** What was read, brought to 20 °C; null where it was read at 20 °C. */
  readonly at20: Measured | null
}

/** The strength of what was read over sugar, put right for it; null where that changes nothing worth a word. */
export function correctedReading(story: JarState): CorrectedReading | null {
  const read = story.strained?.strength ?? null
  if (read === null) return null
  const { abvPercent, sugarGPerL } = contentsOf(story).outcome
  const at20Percent = strengthAt20(valuesOf(read))
  if (Math.abs(abvPercent.value - at20Percent) < SAME_READING_PERCENT || sugarGPerL.value === 0) return null
  const at20 = { ...exactly(at20Percent), plusMinus: read.abvPercent.plusMinus }
  return { abvPercent, at20: read.abvAtC === null ? null : at20 }
}
