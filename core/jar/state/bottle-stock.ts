import { DomainError } from '../../domain-error.ts'
import type { BottlesOf, BottlesOut } from '../entry/entry.ts'
import type { JarState } from './jar-state.ts'

/** What became of the bottles of one size. */
export interface StockOf {
  readonly volumeMl: number
  readonly filled: number
  readonly given: number
  readonly opened: number
  /** Neither given away nor opened. */
  readonly left: number
}

/** Sizes nearer than this are one, as they are typed in cl or ml. */
const SAME_ML = 0.5

const isSize =
  (sizeMl: number) =>
  ({ volumeMl }: { readonly volumeMl: number }): boolean =>
    Math.abs(volumeMl - sizeMl) < SAME_ML

const counted = (bottles: readonly BottlesOf[], sizeMl: number): number =>
  bottles.filter(isSize(sizeMl)).reduce((sum, { count }) => sum + count, 0)

/** The bottles of a jar, size by size in the order in which they were filled; none where nothing was bottled. */
export function bottleStock({ happened }: JarState): readonly StockOf[] {
  const filled = happened.flatMap((entry) => (entry.kind === 'bottled' ? entry.bottles : []))
  const out = (use: BottlesOut['use']) =>
    happened.flatMap((entry) => (entry.kind === 'bottles_out' && entry.use === use ? entry.bottles : []))
  const [given, opened] = [out('given'), out('opened')]
  const sizes = filled.filter(({ volumeMl }, at) => filled.findIndex(isSize(volumeMl)) === at)
  return sizes.map(({ volumeMl }) => {
    const [all, gone, open] = [filled, given, opened].map((bottles) => counted(bottles, volumeMl)) as [
      number,
      number,
      number,
    ]
    return { volumeMl, filled: all, given: gone, opened: open, left: all - gone - open }
  })
}

/** Bottles of all sizes that are neither given away nor opened. */
export const bottlesLeft = (story: JarState): number => bottleStock(story).reduce((sum, { left }) => sum + left, 0)

/** As typed: a number alone, or of a size. */
interface AskedBottles {
  readonly count: number | null
  readonly volumeMl: number
  /** Null where only a number was said. */
  readonly size: unknown
}

/** All that are left of several sizes, where a number alone is as many; throws `bottles_of_sizes` where it is another that no size has. */
function ofSeveralSizes(
  asked: readonly AskedBottles[],
  stock: readonly StockOf[],
  { jar, use }: { readonly jar: string; readonly use: BottlesOut['use'] },
): readonly BottlesOf[] | null {
  const [only, another] = asked
  if (only === undefined || another !== undefined || only.size !== null || only.count === null) return null
  const there = stock.filter(({ left }) => left > 0)
  const { count: wanted } = only
  if (there.length < 2 || there.some(({ left }) => left >= wanted)) return null
  const all = there.map(({ volumeMl, left }) => ({ volumeMl, count: left }))
  if (all.reduce((sum, { count }) => sum + count, 0) === wanted) return all
  throw new DomainError('bad_value', 'bottles_of_sizes', { jar, use, wanted, left: all })
}

/**
 * Bottles that leave the shelf: a number alone is of the size there is most of, or all there are; a size alone is one. Throws
 * `no_such_bottles` where there are none of a size, `bottles_not_left` where there are fewer, and `bottles_of_sizes` where a number
 * alone is more than of any size.
 */
export function bottlesTaken(
  asked: readonly AskedBottles[],
  story: JarState,
  use: BottlesOut['use'],
): readonly BottlesOf[] {
  const { name: jar } = story
  const stock = bottleStock(story)
  const all = ofSeveralSizes(asked, stock, { jar, use })
  if (all !== null) return all
  const most = stock.toSorted((one, other) => other.left - one.left)[0]
  const taken = asked.map(({ count, volumeMl, size }): BottlesOf => {
    const sizeMl = size === null ? (most?.volumeMl ?? volumeMl) : volumeMl
    return { count: count ?? 1, volumeMl: stock.find(isSize(sizeMl))?.volumeMl ?? sizeMl }
  })
  for (const { volumeMl } of taken) {
    const there = stock.find(isSize(volumeMl))
    if (there === undefined) {
      throw new DomainError('not_found', 'no_such_bottles', {
        jar,
        volumeMl,
        sizesMl: stock.map((each) => each.volumeMl),
      })
    }
    const wanted = counted(taken, volumeMl)
    if (wanted > there.left) {
      throw new DomainError('bad_value', 'bottles_not_left', { jar, wanted, left: there.left, volumeMl })
    }
  }
  return taken
}
