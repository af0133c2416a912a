import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import type { Mixture } from '../../../core/recipe/solve/mix.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { cautionsByDepth, notesByDepth } from '../reply/first-screen.ts'
import { flashNotes, made, outcomeCautions, outcomeData, outcomeRows, row, sureOf } from '../reply/outcome-reply.ts'

interface Poured {
  readonly input: object
  /** What was measured, and which of it is handled as liquid that can burn. */
  readonly portions: readonly Portion[]
  readonly handled: readonly Portion[]
  readonly notes: Reply['notes']
  /** Of the person's freezer, °C. */
  readonly freezerC: number
  /** How cold it is was asked of this drink. */
  readonly isFreezerAsked: boolean
  /** Whether sugar is dissolved in water first. */
  readonly isSyrup: boolean
}

/** The reply to what amounts make together. */
export function mixtureReply(
  { outcome, sugarStays }: Mixture,
  { input, portions, handled, notes, freezerC, isFreezerAsked, isSyrup }: Poured,
): Reply {
  const byVolume = portions.some(({ by }) => by === 'volume')
  const liquids = handled.map((portion) => liquidOf(valuesOf(portion)))
  return {
    headline: { group: 'headlines', key: 'makes', values: { ...made(outcome, freezerC), isFreezerAsked } },
    table: inMore([
      ...outcomeRows(outcome, freezerC),
      row('alcohol', { group: 'cells', key: 'mass', values: { massG: outcome.ethanolG } }),
    ]),
    sure: sureOf(outcome, byVolume),
    notes: notesByDepth([...assumptionNotes(input), ...notes, ...flashNotes(liquids)]),
    cautions: cautionsByDepth(outcomeCautions(outcome, sugarStays, liquids, { freezerC, isSyrup })),
    actions: [],
    data: outcomeData(outcome),
    kitchen: kitchenOf(input),
  }
}
