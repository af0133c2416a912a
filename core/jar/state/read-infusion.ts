import type { Measured } from '../../quantity/measured/measured.ts'
import type { PlannedPlant } from '../../recipe/plan/plan-wish.ts'
import { strainedSteeping } from '../../recipe/plan/strained-steeping.ts'
import type { KnownPortion, Portion } from '../../recipe/portion.ts'
import { type Outcome, outcomeOf } from '../../recipe/solve/outcome.ts'
import type { ReadAmount, ReadStrength } from '../entry/entry.ts'
import { judgeReading } from './believed-steps.ts'
import { asPortion } from './contents.ts'
import { type CorrectedReading, correctedIn } from './corrected-reading.ts'
import { dissolvedBy, type HiddenStrength, readAt20 } from './hidden-strength.ts'
import { liquidAfter } from './liquid-after.ts'
import { type LiquidStep, strainedStep } from './liquid-steps.ts'

/** A strained infusion of which it is known what went into it, as a jar would have it. */
export interface ReadInfusion {
  readonly infusion: KnownPortion
  /** What of a strength that was read is taken, and why; all null where none was read. */
  readonly corrected: CorrectedReading | null
  readonly hidden: HiddenStrength | null
  /** What was expected where something else was read. */
  readonly surprising: Measured | null
}

/**
 * What an infusion is by what went into it, by how much of it there is and, where that was read, by its strength: judged in the
 * same way as a jar that was strained. Refuses what `strainedSteeping` refuses.
 */
export function readInfusion(
  plants: readonly PlannedPlant[],
  spirits: readonly Portion[],
  measured: ReadAmount,
  strength: ReadStrength | null,
): ReadInfusion {
  const steeping = strainedSteeping(plants, spirits)
  const read: LiquidStep[] = [{ kind: 'in', ...steeping }, strainedStep({ measured, strength })]
  const judged = strength === null ? null : judgeReading(read)
  const isBelieved = judged?.isBelieved ?? false
  const steps = isBelieved ? read : [read[0]!, strainedStep({ measured, strength: null })]
  const outcome = outcomeOf(steps, (values) => liquidAfter(values).liquid)
  const infusion = asPortion({ outcome })
  if (strength === null || judged === null) return { infusion, corrected: null, hidden: null, surprising: null }
  const named = plants.map(({ botanical }, at) => ({
    id: botanical.id,
    name: botanical.names.title,
    massG: steeping.plants[at]!.massG,
  }))
  return {
    infusion,
    corrected: isBelieved ? correctedIn(outcome, strength) : null,
    hidden: isBelieved ? null : hiddenIn(outcome, strength, named),
    surprising: isBelieved && judged.isOther ? judged.expected : null,
  }
}

const hiddenIn = (
  { abvPercent }: Pick<Outcome, 'abvPercent'>,
  strength: ReadStrength,
  plants: Parameters<typeof dissolvedBy>[0]['plants'],
): HiddenStrength => ({
  read: readAt20(strength),
  expected: abvPercent,
  ...dissolvedBy({ plants, sweetenings: [] }),
})
