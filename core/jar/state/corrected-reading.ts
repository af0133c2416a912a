import { solidsGPerL } from '../../liquid/liquid.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import type { Outcome } from '../../recipe/solve/outcome.ts'
import type { ReadStrength } from '../entry/entry.ts'
import { contentsOf } from './contents.ts'
import { hiddenStrength, isMeasuredSince, readAt20 } from './hidden-strength.ts'
import type { JarState } from './jar-state.ts'

/** A strength this near to what was read needs no word, % vol. Common practice, no source. */
export const SAME_READING_PERCENT = 0.2

export interface CorrectedReading {
  readonly abvPercent: Measured
  /** As it was read. */
  readonly read: Measured
  /** What was read, brought to 20 °C; null where it was read at 20 °C. */
  readonly at20: Measured | null
}

/** The strength of what was read over what is dissolved, put right for it; null where that changes nothing worth a word. */
export function correctedIn(
  { abvPercent, liquid }: Pick<Outcome, 'abvPercent' | 'liquid'>,
  read: ReadStrength,
): CorrectedReading | null {
  const at20 = readAt20(read)
  if (Math.abs(abvPercent.value - at20.value) < SAME_READING_PERCENT || solidsGPerL(liquid) === 0) return null
  return { abvPercent, read: read.abvPercent, at20: read.abvAtC === null ? null : at20 }
}

/** The same of a jar, as it was strained; null also where its strength is taken from what went in. */
export function correctedReading(story: JarState): CorrectedReading | null {
  const read = story.strained?.strength ?? null
  return read === null || isMeasuredSince(story) || hiddenStrength(story) !== null
    ? null
    : correctedIn(contentsOf(story).outcome, read)
}
