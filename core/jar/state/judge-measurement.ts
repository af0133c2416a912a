import { DomainError } from '../../domain-error.ts'
import { ETHANOL_DENSITY_20C_G_PER_ML } from '../../liquid/ethanol-water.ts'
import { abvPercent, dissolvedIn, ethanolG, massG, solidsGPerL, sugarGPerL, volumeMl } from '../../liquid/liquid.ts'
import { modelVolumePlusMinus } from '../../liquid/model-error.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { type KnownPortion, type Portion, strengthAt20 } from '../../recipe/portion.ts'
import { propagate, valuesOf } from '../../recipe/propagate.ts'
import type { Happening } from '../entry/entry.ts'
import { allOf } from './in-fruit.ts'
import { liquidAfter, type StepValues } from './liquid-after.ts'
import type { LiquidStep } from './liquid-steps.ts'
import { surprises } from './surprises.ts'

/** So much dissolved, g/L, hides 2 to 7 % vol: a reading that would still stand for more than was poured is none of it. Estimated. */
const MUCH_DISSOLVED_G_PER_L = 20

/** What was expected where something else was read; null of what was read as expected, or not at all. */
export interface Expected {
  readonly amount: Pick<Portion, 'amount' | 'by'> | null
  readonly abvPercent: Measured | null
}

/** Null where nothing is surprising. */
type Judgement = DomainError | Expected | null

const exceeds = ({ value, plusMinus }: Measured): boolean => value > plusMinus

/**
 * What the last of `steps` makes of what was measured in it: impossible where more is said to have come out than can have
 * been in it, surprising where it is not what was expected; each by the ± of their difference.
 */
export function judgeMeasurement(jar: string, allSteps: readonly LiquidStep[]): Judgement {
  const steps = sinceMeasured(allSteps)
  const last = steps.at(-1)
  if (last === undefined || last.kind === 'in' || last.kind === 'taken_out' || last.kind === 'parted') return null
  if (last.kind === 'fruit_sugared') return null
  if (last.kind === 'fruit_drawn') return last.measured === null ? null : judgeDrawn(jar, allSteps)
  if (last.kind === 'measured') return judgeGauged(jar, allSteps, last.abvPercent)
  const strength = last.kind === 'strained' ? last.strength : null
  if (last.measured === null && strength === null) return null
  const found = propagate(steps, (values) => {
    const { liquid, expected, most, poured, readPercent } = liquidAfter(values)
    return {
      tooStrongPercent: strengthRead(values) - abvPercent(poured),
      readTooStrongPercent: (readPercent ?? 0) - abvPercent(poured),
      volumeMl: volumeMl(liquid),
      abvPercent: abvPercent(liquid),
      expectedMl: volumeMl(expected),
      expectedG: massG(expected),
      expectedPercent: abvPercent(expected),
      dissolvedGPerL: solidsGPerL(expected),
      tooMuchMl: volumeMl(liquid) - volumeMl(most),
      tooMuchEthanolG: ethanolG(liquid) - ethanolG(most),
      otherMl: volumeMl(liquid) - volumeMl(expected),
      otherPercent: abvPercent(liquid) - abvPercent(expected),
    }
  })
  const { most, poured } = liquidAfter(valuesOf(steps))
  const { dissolvedGPerL } = found
  const isMuch = dissolvedGPerL.value > MUCH_DISSOLVED_G_PER_L
  if (strength !== null && isMuch && found.readTooStrongPercent.value > 0 && surprises(found.readTooStrongPercent)) {
    const readPercent = { value: strengthAt20(valuesOf(strength)), plusMinus: strength.abvPercent.plusMinus }
    return new DomainError('bad_value', 'sweet_strength', { jar, dissolvedGPerL, abvPercent: readPercent })
  }
  if (strength !== null && exceeds(found.tooStrongPercent)) {
    return new DomainError('bad_value', 'stronger_than_spirit', {
      jar,
      abvPercent: { value: strengthAt20(valuesOf(strength)), plusMinus: strength.abvPercent.plusMinus },
      mostAbvPercent: abvPercent(poured),
    })
  }
  const mostMl = volumeMl(most)
  const modelMl = mostMl * modelVolumePlusMinus(most)
  if (last.measured !== null && exceeds(widened(found.tooMuchMl, modelMl))) {
    return new DomainError('bad_value', 'more_than_went_in', { jar, measuredMl: found.volumeMl, mostMl })
  }
  if (strength !== null && exceeds(found.tooMuchEthanolG)) {
    return new DomainError('bad_value', 'stronger_than_went_in', {
      jar,
      measuredMl: found.volumeMl,
      abvPercent: found.abvPercent,
      readPercent: { value: strengthAt20(valuesOf(strength)), plusMinus: strength.abvPercent.plusMinus },
      mostAbvPercent: Math.min(100, (100 * ethanolG(most)) / ETHANOL_DENSITY_20C_G_PER_ML / found.volumeMl.value),
    })
  }
  const isOtherAmount = last.measured !== null && surprises(widened(found.otherMl, modelMl))
  const isOtherStrength = strength !== null && surprises(found.otherPercent)
  if (!isOtherAmount && !isOtherStrength) return null
  const { by } = last.measured ?? { by: 'volume' as const }
  return {
    amount: isOtherAmount ? { amount: by === 'mass' ? found.expectedG : found.expectedMl, by } : null,
    abvPercent: isOtherStrength ? found.expectedPercent : null,
  }
}

/** No more can come of the plants than is in them and on them. */
function judgeDrawn(jar: string, steps: readonly LiquidStep[]): Judgement {
  const all = (values: StepValues) => allOf(liquidAfter(values.slice(0, -1)).inFruit)
  const { drawnMl, tooMuchMl } = propagate(steps, (values) => {
    const drawnMl = volumeMl(liquidAfter(values).drawn)
    return { drawnMl, tooMuchMl: drawnMl - volumeMl(all(values)) }
  })
  if (!exceeds(tooMuchMl)) return null
  const mostMl = volumeMl(all(valuesOf(steps)))
  return new DomainError('bad_value', 'more_than_in_fruit', { jar, measuredMl: drawnMl, mostMl })
}

/** The amount that was measured in a step, or null. */
const amountIn = (step: LiquidStep): Measured | null =>
  step.kind === 'strained' || step.kind === 'filtered' ? (step.measured?.amount ?? null) : null

/**
 * A finished liqueur cannot be stronger than what was last measured and all that was poured since; else a strength that was
 * not expected is worth a word, by all that is known of it.
 */
function judgeGauged(jar: string, allSteps: readonly LiquidStep[], read: Measured): Judgement {
  const steps = sinceMeasured(allSteps)
  const { tooStrongPercent } = propagate(steps, (values) => {
    const { liquid, poured } = liquidAfter(values)
    return { tooStrongPercent: abvPercent(liquid) - abvPercent(poured) }
  })
  if (exceeds(tooStrongPercent)) {
    const { poured } = liquidAfter(valuesOf(steps))
    const values = { jar, abvPercent: read, mostAbvPercent: abvPercent(poured) }
    return new DomainError('bad_value', 'stronger_than_spirit', values)
  }
  const { otherPercent, expectedPercent } = propagate(allSteps, (values) => {
    const { liquid, expected } = liquidAfter(values)
    return { otherPercent: abvPercent(liquid) - abvPercent(expected), expectedPercent: abvPercent(expected) }
  })
  return surprises(otherPercent) ? { amount: null, abvPercent: expectedPercent } : null
}

/** At 20 °C; nothing where none was read. */
function strengthRead(steps: StepValues): number {
  const last = steps.at(-1)
  return last?.kind === 'strained' && last.strength !== null ? strengthAt20(last.strength) : 0
}

/** The last measurement before stands for all that led to it: it is known better than what can be reckoned. */
function sinceMeasured(steps: readonly LiquidStep[]): readonly LiquidStep[] {
  const at = steps.slice(0, -1).findLastIndex((step) => amountIn(step) !== null)
  const measuredAmount = at === -1 ? null : amountIn(steps[at]!)
  // What the plants hold since straining is known by all that went in.
  if (measuredAmount === null || steps.slice(at + 1).some(({ kind }) => kind === 'fruit_drawn')) return steps
  const { liquid } = liquidAfter(valuesOf(steps.slice(0, at + 1)))
  const { value, plusMinus } = measuredAmount
  const amount = { value: massG(liquid), plusMinus: value === 0 ? 0 : (massG(liquid) * plusMinus) / value }
  const composition = { abvPercent: exactly(abvPercent(liquid)), sugarGPerL: exactly(sugarGPerL(liquid)) }
  const dissolved = dissolvedIn(liquid)
  const measured: KnownPortion = { amount, by: 'mass', atC: 20, abvAtC: null, ...composition, dissolved }
  const asIn: LiquidStep = { kind: 'in', spirits: [measured], waterG: exactly(0), sweetenings: [], plants: [] }
  return [asIn, ...steps.slice(at + 1)]
}

const widened = ({ value, plusMinus }: Measured, by: number): Measured => ({
  value,
  plusMinus: Math.hypot(plusMinus, by),
})

/** A reading that was put right and is still this far off, as a share of what was expected, is worth a word. Common practice, no source. */
const FAR_SHARE = 0.25

const isFar = (read: Measured, expected: Measured): boolean =>
  Math.abs(read.value - expected.value) > FAR_SHARE * expected.value

/** Whether what an entry read lies far from what was expected, in amount or strength; what is no reading always does. */
export function isFarFromExpected(entry: Happening, { amount, abvPercent }: Expected): boolean {
  if (entry.kind !== 'strained' && entry.kind !== 'filtered') return true
  const strength = entry.kind === 'strained' ? entry.strength : null
  return (
    (amount !== null && entry.measured !== null && isFar(entry.measured.amount, amount.amount)) ||
    (abvPercent !== null && strength !== null && isFar(strength.abvPercent, abvPercent))
  )
}
