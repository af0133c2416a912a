import { DomainError } from '../../domain-error.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { fillBottles } from '../../recipe/plan/fill-bottles.ts'
import type { Bottles } from '../../recipe/plan/parse-bottles.ts'
import type { BottlesOf } from '../entry/entry.ts'
import { type Contents, contentsOf } from './contents.ts'
import type { JarState } from './jar-state.ts'

/** What is not in bottles yet. */
function leftIn(story: JarState): Measured {
  const { bottledMl, outcome } = contentsOf(story)
  const { value, plusMinus } = outcome.volumeMl
  return { value: Math.max(0, value - bottledMl), plusMinus }
}

/** What is not in bottles, below 0 where they hold more than there was; null where its ± is all of it. */
export function unbottledOf({ bottledMl, outcome: { volumeMl } }: Contents): Measured | null {
  const leftMl = volumeMl.value - bottledMl
  return Math.abs(leftMl) <= volumeMl.plusMinus ? null : { value: leftMl, plusMinus: volumeMl.plusMinus }
}

/**
 * Bottles filled of what a jar has left; of a size without a count as many as that fills. Throws `no_bottle_filled`, and
 * `bottles_too_many` where they hold at least a whole bottle more: the last one may be nearly empty.
 */
export function bottlesOfLeft(
  bottles: readonly Pick<Bottles, 'count' | 'volumeMl'>[],
  story: JarState,
): readonly BottlesOf[] {
  const { name: jar } = story
  const leftMl = leftIn(story)
  const could = fillBottles(leftMl.value, bottles).bottles
  const filled = bottles
    .map(({ count, volumeMl }, index) => ({ count: count ?? could[index]!.count, volumeMl }))
    .filter(({ count }) => count > 0)
  const sizesMl = bottles.map(({ volumeMl }) => volumeMl)
  if (filled.length === 0) {
    throw new DomainError('bad_value', 'no_bottle_filled', { jar, leftMl, bottleMl: Math.min(...sizesMl) })
  }
  const bottlesMl = filled.reduce((sum, { count, volumeMl }) => sum + count * volumeMl, 0)
  if (bottlesMl - Math.max(...sizesMl) < leftMl.value + leftMl.plusMinus) return filled
  throw new DomainError('bad_value', 'bottles_too_many', { jar, bottlesMl, leftMl })
}

/** Bottles filled; of a size without a count as many as the batch fills, at least one. */
export function bottlesFilled(
  bottles: readonly Pick<Bottles, 'count' | 'volumeMl'>[],
  batchMl: number,
): readonly BottlesOf[] {
  const filled = fillBottles(batchMl, bottles).bottles
  return bottles.map(({ count, volumeMl }, index) => ({
    count: count ?? Math.max(1, filled[index]!.count),
    volumeMl,
  }))
}

/** The bottles as planned, fewer where what is there and its ± cannot fill them; at least one. */
export function bottlesThatFit(
  bottles: readonly Pick<Bottles, 'count' | 'volumeMl'>[],
  { value, plusMinus }: Measured,
): readonly BottlesOf[] {
  const wanted = bottlesFilled(bottles, value)
  const filled = fillBottles(value + plusMinus, wanted).bottles.filter(({ count }) => count > 0)
  return filled.length > 0 ? filled : wanted.slice(0, 1).map((each) => ({ ...each, count: 1 }))
}
