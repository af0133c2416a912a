import { DomainError } from '../domain-error.ts'

const MAX_STEPS = 200

interface Search {
  readonly f: (x: number) => number
  /** The bracket: `f` must have one sign at `low` and the other, or zero, at `high`. */
  readonly low: number
  readonly high: number
  /** Widest bracket that counts as found, in the unit of x. */
  readonly tolerance: number
}

/**
 * The x between `low` and `high` where a continuous `f` is zero, to within `tolerance`.
 * Never returns an unconverged value: a bracket without a change of sign throws `no_sign_change`,
 * spent steps throw `no_convergence`, both `internal`, because reach is for the caller to check.
 * Method: false position with the Illinois halving, a bisection wherever three steps did not halve the bracket.
 * Source: Dowell and Jarratt, BIT 11 (1971) 168–174 (Illinois); Dekker's safeguard.
 */
export const findRoot = ({ f, low, high, tolerance }: Search): number => {
  let [a, fa, b, fb] = [low, f(low), high, f(high)]
  if (fa === 0) return a
  if (fb === 0) return b
  if (!(fa < 0 !== fb < 0) || Number.isNaN(fa) || Number.isNaN(fb)) {
    throw new DomainError('internal', 'no_sign_change', { low, high })
  }
  let widthBefore = Math.abs(b - a)
  for (let step = 1; step <= MAX_STEPS; step++) {
    const width = Math.abs(b - a)
    const middle = a + (b - a) / 2
    if (width <= tolerance || middle === a || middle === b) return Math.abs(fa) < Math.abs(fb) ? a : b
    let bisect = false
    if (step % 3 === 0) {
      bisect = width > widthBefore / 2
      widthBefore = width
    }
    const guess = b - (fb * (b - a)) / (fb - fa)
    const inside = guess > Math.min(a, b) && guess < Math.max(a, b)
    const x = bisect || !inside ? middle : guess
    const fx = f(x)
    if (fx === 0) return x
    if (fx < 0 !== fb < 0) [a, fa] = [b, fb]
    else fa /= 2
    ;[b, fb] = [x, fx]
  }
  throw new DomainError('internal', 'no_convergence', { low, high })
}
