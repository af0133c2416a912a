import { abvPercent, solidsGPerL } from '../../liquid/liquid.ts'
import { once } from '../../once.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { propagate, valuesOf } from '../../recipe/propagate.ts'
import type { HappeningEntry } from '../entry/entry.ts'
import { liquidAfter } from './liquid-after.ts'
import { type LiquidStep, stepsOf, type TakenStep } from './liquid-steps.ts'
import { surprises } from './surprises.ts'

type StrainedStep = Extract<LiquidStep, { readonly kind: 'strained' }>

/** A strength that was read at straining beside what went in, and which of the two is better known. */
export interface JudgedReading {
  /** What was read, put right for sugar and extract, % vol. */
  readonly read: Measured
  /** What the recipe makes, % vol. */
  readonly expected: Measured
  /** Whether the strength is taken from the reading; else from what went in. */
  readonly isBelieved: boolean
  /** Whether it lies so far from what the recipe makes that what is dissolved does not explain it. */
  readonly isOther: boolean
}

/** So little dissolved, g/L, hides less strength than a hydrometer can tell. */
const NOTHING_G_PER_L = 1

/**
 * Whether a reading over what is dissolved tells the strength better than the recipe: its ± holds that of sugar and extract, each
 * gram a litre of which hides 0.1 to 0.35 % vol. What the recipe makes is taken where it is better known and the reading fits it;
 * a reading that does not fit is taken, because then something else went in than was said, unless no spirit could have it.
 */
export function judgeReading(steps: readonly LiquidStep[]): JudgedReading {
  const { read, expected, other, tooStrong } = propagate(steps, (values) => {
    const { readPercent, expected, poured } = liquidAfter(values)
    const [read, expectedPercent] = [readPercent ?? 0, abvPercent(expected)]
    return {
      read,
      expected: expectedPercent,
      other: read - expectedPercent,
      tooStrong: read - abvPercent(poured),
    }
  })
  const isOther = surprises(other) && tooStrong.value <= tooStrong.plusMinus
  return { read, expected, isOther, isBelieved: isOther || read.plusMinus <= expected.plusMinus }
}

/** Where next to nothing is dissolved there is nothing to judge. */
function isReadBetter(step: StrainedStep, taken: readonly TakenStep[]): boolean {
  const before = taken.map((each) => each.step)
  const { expected } = liquidAfter(valuesOf([...before, { ...step, strength: null }]))
  return solidsGPerL(expected) < NOTHING_G_PER_L || judgeReading([...before, step]).isBelieved
}

/** In order, without the strengths that what went in tells better. */
export const believedSteps = once((happened: readonly HappeningEntry[]): readonly TakenStep[] => {
  const believed: TakenStep[] = []
  for (const { seq, step } of stepsOf(happened)) {
    const isRead = step.kind === 'strained' && step.strength !== null
    const isUsed = !isRead || isReadBetter(step, believed)
    believed.push({ seq, step: isUsed ? step : { ...step, strength: null, denserShare: exactly(0) } })
  }
  return believed
})
