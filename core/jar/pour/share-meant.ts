import { DomainError } from '../../domain-error.ts'
import { volumeMlAt20 } from '../../liquid/measure/volume-at-20.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import type { PartOfIt } from '../../quantity/read/parse-share.ts'
import type { ReadAmount } from '../entry/entry.ts'
import { contentsOf } from '../state/contents.ts'
import type { JarState } from '../state/jar-state.ts'

/** Nearer to all of it than this, nothing is left that could be poured. Estimated. */
const ALL_SHARE = 0.995

/**
 * The share of a jar that an amount, or a part of it, is, 0 to 1, with the ± of the reading alone: that of the jar goes with both parts of it.
 * Null is all of it. Throws `pour_too_much` where more is said than can be in it.
 */
export function shareMeant(story: JarState, read: ReadAmount | PartOfIt | null): Measured {
  if (read === null) return exactly(1)
  if ('share' in read) return exactly(read.share)
  const { volumeMl, massG, abvPercent, sugarGPerL } = contentsOf(story).outcome
  const all = read.by === 'mass' ? massG : volumeMl
  const { value, plusMinus } = read.amount
  const composition = { abvPercent: abvPercent.value, sugarGPerL: sugarGPerL.value }
  const amount = read.by === 'mass' || read.atC === 20 ? value : volumeMlAt20(value, composition, read.atC)
  if (!(all.value > 0) || amount - all.value > Math.hypot(plusMinus, all.plusMinus)) {
    throw new DomainError('bad_value', 'pour_too_much', { jar: story.name, volumeMl })
  }
  const share = amount / all.value
  return share >= ALL_SHARE ? exactly(1) : { value: share, plusMinus: plusMinus / all.value }
}
