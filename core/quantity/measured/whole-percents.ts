/**
 * Shares as whole per cents that sum to 100: each rounded down, and what is left goes to those that lost most (the largest
 * remainders; of equal ones the first). Each lies within 1 of its share.
 *
 * @param shares - 0 to 1 each, 1 together
 */
export function wholePercents(shares: readonly number[]): readonly number[] {
  const exact = shares.map((share) => 100 * share)
  const whole = exact.map((percent) => Math.floor(percent + 1e-9))
  const left = Math.round(100 - whole.reduce((sum, percent) => sum + percent, 0))
  const byRemainder = exact
    .map((percent, index) => ({ index, remainder: percent - whole[index]! }))
    .toSorted((one, other) => other.remainder - one.remainder)
  const more = new Set(byRemainder.slice(0, Math.max(0, left)).map(({ index }) => index))
  return whole.map((percent, index) => (more.has(index) ? percent + 1 : percent))
}
