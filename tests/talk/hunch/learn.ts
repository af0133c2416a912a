import type { Learnt } from '../../../bot/talk/hunch/hunch.ts'
import { softmax } from '../../../bot/talk/hunch/softmax.ts'

export interface Example<Of extends string = string> {
  readonly features: readonly string[]
  readonly aim: Of
}

/** Features that are rarer tell of one sentence. */
const LEAST_SEEN = 3
/** Smaller weights are not kept. */
const LEAST_WEIGHT = 0.1
const ROUNDS = 20
const FIRST_STEP = 0.3
const SLOWING = 0.3
const SHRINKING = 1e-4

/** In every round another order, the same each time: steps of a prime go round a list of any other length. */
const PRIMES = [7919, 6841, 7187, 7673, 6427, 6007]

function* inOrder<Item>(items: readonly Item[], round: number): Generator<Item> {
  const step = PRIMES[round % PRIMES.length]!
  for (let at = 0; at < items.length; at++) yield items[(at * step + round) % items.length]!
}

/** Multinomial logistic regression by stochastic gradient descent. */
export function learn(examples: readonly Example[]): Learnt {
  const aims = [...new Set(examples.map(({ aim }) => aim))].sort()
  const seen = new Map<string, number>()
  for (const { features } of examples) for (const each of features) seen.set(each, (seen.get(each) ?? 0) + 1)
  const weights = new Map<string, number[]>()
  for (const [feature, times] of seen) if (times >= LEAST_SEEN) weights.set(feature, new Array(aims.length).fill(0))
  const rows = examples.map(({ features, aim }) => ({
    of: features.map((feature) => weights.get(feature)).filter((each) => each !== undefined),
    aim: aims.indexOf(aim),
  }))
  for (let round = 0; round < ROUNDS; round++) {
    const step = FIRST_STEP / (1 + SLOWING * round)
    for (const { of, aim } of inOrder(rows, round)) {
      const scores = aims.map((_, at) => of.reduce((sum, each) => sum + each[at]!, 0))
      const shares = softmax(scores)
      for (const each of of)
        for (let at = 0; at < aims.length; at++)
          each[at]! -= step * (shares[at]! - (at === aim ? 1 : 0) + SHRINKING * each[at]!)
    }
  }
  const kept = [...weights]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([feature, of]) => {
      const pairs = of.flatMap((weight, at) => (Math.abs(weight) < LEAST_WEIGHT ? [] : [at, Math.round(100 * weight)]))
      return [feature, pairs] as const
    })
  return { aims, weights: Object.fromEntries(kept.filter(([, pairs]) => pairs.length > 0)) }
}
