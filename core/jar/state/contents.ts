import { abvPercent, dissolvedIn, massG } from '../../liquid/liquid.ts'
import { type SugarState, sugarState } from '../../liquid/solubility.ts'
import { once } from '../../once.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import type { KnownPortion } from '../../recipe/portion.ts'
import { propagate, valuesOf } from '../../recipe/propagate.ts'
import { type Outcome, outcomeOf } from '../../recipe/solve/outcome.ts'
import { believedSteps } from './believed-steps.ts'
import type { JarState } from './jar-state.ts'
import { liquidAfter } from './liquid-after.ts'
import type { LiquidStep } from './liquid-steps.ts'

/** `measured`: read at straining or filtering; `computed`: reckoned from that with what went in since. */
export type Source = 'measured' | 'computed' | 'estimated'

/** What measures nothing, but changes what was measured. */
const changesUnmeasured = (step: LiquidStep): boolean => {
  switch (step.kind) {
    case 'in':
    case 'taken_out':
    case 'parted':
    case 'fruit_drawn':
      return true
    case 'measured':
    case 'fruit_sugared':
      return false
    case 'strained':
    case 'filtered':
      return step.measured === null
  }
}

/** What takes of the liquid takes nothing of its strength. */
const changesStrength = ({ kind }: LiquidStep): boolean =>
  kind !== 'filtered' && kind !== 'taken_out' && kind !== 'parted' && kind !== 'fruit_sugared'

/** From the step in which something was read; -1 where nothing was. */
const sourceAt = (steps: readonly LiquidStep[], at: number): Source => {
  if (at === -1) return 'estimated'
  return steps.slice(at + 1).some(changesUnmeasured) ? 'computed' : 'measured'
}

const measuresAmount = (step: LiquidStep): boolean =>
  (step.kind === 'strained' || step.kind === 'filtered') && step.measured !== null

/** What a batch is: the liquid of the whole of it, bottled or not, with what is known of it. */
export interface Contents {
  readonly outcome: Outcome
  readonly volume: Source
  readonly strength: Source
  /** `refused`: its sugar surely crystallises. */
  readonly sugarStays: SugarState
  /** What plants and filters kept at straining; null while steeping. */
  readonly keptBackMl: Measured | null
  /** What has gone into bottles, all bottlings together. */
  readonly bottledMl: number
  /** True for no liquid at all. */
  readonly isEmpty: boolean
}

const lastOfStrength = (steps: readonly LiquidStep[]): LiquidStep | undefined => steps.findLast(changesStrength)

/** What was measured last is known as well as it was measured: the ± of the method holds the model's own error already. */
const asGauged = (outcome: Outcome, last: LiquidStep | undefined): Outcome =>
  last?.kind === 'measured' ? { ...outcome, abvPercent: last.abvPercent, sugarGPerL: last.sugarGPerL } : outcome

const contentsAfter = once((happened: JarState['happened']): Contents => {
  const steps = believedSteps(happened).map(({ step }) => step)
  const strained = steps.find(({ kind }) => kind === 'strained')
  const measuredAt = steps.findLastIndex(measuresAmount)
  const ofStrength = steps.filter(changesStrength)
  const readAt = ofStrength.findLastIndex(
    (step) => step.kind === 'measured' || (step.kind === 'strained' && step.strength !== null),
  )
  const made = outcomeOf(steps, (values) => liquidAfter(values).liquid)
  const outcome = asGauged(made, lastOfStrength(steps))
  return {
    outcome,
    volume: sourceAt(steps, measuredAt),
    strength: sourceAt(ofStrength, readAt),
    sugarStays: sugarState(outcome.liquid),
    keptBackMl:
      strained === undefined
        ? null
        : propagate(steps, (values) => ({ keptBackMl: liquidAfter(values).keptBackMl ?? 0 })).keptBackMl,
    bottledMl: happened
      .flatMap((entry) => (entry.kind === 'bottled' ? entry.bottles : []))
      .reduce((sum, { count, volumeMl }) => sum + count * volumeMl, 0),
    isEmpty: massG(liquidAfter(valuesOf(steps)).liquid) === 0,
  }
})

/**
 * The liquid as the entries tell it, up to the end where the jar has ended: what was measured counts before what is
 * estimated. While steeping it is all that is in the jar, plants' water included; strained, what came out of it.
 */
export const contentsOf = ({ happened }: JarState): Contents => contentsAfter(happened)

const abvPercentAfter = once((happened: JarState['happened']): number | null => {
  const steps = believedSteps(happened).map(({ step }) => step)
  const last = lastOfStrength(steps)
  const { liquid } = liquidAfter(valuesOf(steps))
  if (massG(liquid) === 0) return null
  return last?.kind === 'measured' ? last.abvPercent.value : abvPercent(liquid)
})

/**
 * The strength of it, % vol, as `contentsOf` has it; null of no liquid at all. No ± is carried, so it is known some ten times
 * sooner.
 */
export const abvPercentIn = ({ happened }: JarState): number | null => abvPercentAfter(happened)

/** The liquid as a maker would say it who had measured it, as `syrup` and `styles` take it. */
export const asPortion = ({ outcome }: Pick<Contents, 'outcome'>): KnownPortion => {
  const dissolved = dissolvedIn(outcome.liquid)
  return {
    amount: outcome.volumeMl,
    by: 'volume',
    atC: 20,
    abvPercent: outcome.abvPercent,
    abvAtC: null,
    sugarGPerL: outcome.sugarGPerL,
    ...(Object.keys(dissolved).length > 0 && { dissolved }),
  }
}
