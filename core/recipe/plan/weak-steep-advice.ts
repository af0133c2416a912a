import { DomainError, unlessRefused } from '../../domain-error.ts'
import { type Keeping, LEAST_ABV_PERCENT } from '../../liquid/keeping.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { tools } from '../../quantity/measured/precision.ts'
import type { Portion } from '../portion.ts'
import type { Steep } from '../steep.ts'
import type { PlanProblems } from './problems.ts'

type Made = { readonly steep: Pick<Steep, 'keeping'> }

/** The same once more, with one thing changed; null where that is nobody's to change. */
export interface Instead {
  /** As much spirit of this strength, % vol, or the strength of the spirit to find. */
  readonly spirit: (abvPercent: Measured) => Made
  readonly steepAt: ((abvPercent: number) => Made) | null
  /** This share of the plants. */
  readonly plants: ((share: number) => Made) | null
  /** This share of the sugar that goes in with the plants. */
  readonly sugar: ((share: number) => Made) | null
  /** False where the spirit is to be found. */
  readonly isSpiritGiven: boolean
}

/** The strongest spirit that is sold to drink. */
const STRONGEST_SOLD_PERCENT = 96
const STEP_PERCENT = 5
const SHARES = [1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 64]
const LESS_SUGAR = [...SHARES, 0]

/** A strength that stands on a label. */
export const onLabel = (abvPercent: number): Measured => ({ value: abvPercent, plusMinus: tools.labelPercent })

/** As much of each, of another strength. */
export const ofStrength = (spirits: readonly Portion[], abvPercent: Measured): readonly Portion[] =>
  spirits.map((each) => ({ ...each, abvPercent, abvAtC: null, readsProof: false }))

/** What is made; where it would steep too weak, the problem says what would do, and all that it says was tried. */
export function orAdvised<Result>(make: () => Result, instead: Instead): Result {
  try {
    return make()
  } catch (error) {
    if (!isTooWeak(error)) throw error
    throw new DomainError('unreachable', 'steep_too_weak', { ...error.values, ...advice(instead) })
  }
}

const isTooWeak = (error: unknown): error is DomainError<'steep_too_weak'> =>
  error instanceof DomainError && error.problem === 'steep_too_weak'

function advice({
  spirit,
  steepAt,
  plants,
  sugar,
  isSpiritGiven,
}: Instead): Pick<PlanProblems['steep_too_weak'], 'instead'> {
  const stronger = leastThatDoes((percent) => spirit(onLabel(percent)))
  return {
    instead: {
      isSpiritGiven,
      spiritAbvPercent: stronger,
      steepAtPercent: steepAt === null ? null : leastThatDoes(steepAt),
      isDilutedFirst: steepAt !== null,
      lessSugar: sugar !== null && LESS_SUGAR.some((share) => tried(() => sugar(share)) !== 'no'),
      fewerPlants: plants !== null && SHARES.some((share) => tried(() => plants(share)) !== 'no'),
    },
  }
}

/** A whole per cent that does, one that surely keeps where one can; the least as far as steps of five can tell. */
function leastThatDoes(make: (percent: number) => Made): number | null {
  const fromPercent = LEAST_ABV_PERCENT
  const known = new Map<number, ReturnType<typeof tried>>()
  const trial = (percent: number) => {
    const found = known.get(percent) ?? tried(() => make(percent))
    known.set(percent, found)
    return found
  }
  const steps = Array.from({ length: Math.ceil((STRONGEST_SOLD_PERCENT - fromPercent) / STEP_PERCENT) + 1 }, (_, at) =>
    Math.min(STRONGEST_SOLD_PERCENT, fromPercent + at * STEP_PERCENT),
  )
  for (const does of [['keeps'], ['keeps', 'undecided']]) {
    const high = steps.find((percent) => does.includes(trial(percent)))
    if (high === undefined) continue
    for (let percent = Math.max(fromPercent, high - STEP_PERCENT + 1); percent < high; percent++) {
      if (does.includes(trial(percent))) return percent
    }
    return high
  }
  return null
}

const tried = (make: () => Made): Keeping | 'no' => unlessRefused(() => make().steep.keeping) ?? 'no'
