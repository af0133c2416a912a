import { liquidFrom } from '../../../core/liquid/liquid.ts'
import { dissolvableSugarG } from '../../../core/liquid/solubility.ts'
import { materialOf } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { percentVol } from '../../../core/quantity/write/made-amounts.ts'
import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import type { Adjustment } from '../../../core/recipe/solve/adjust.ts'
import { withoutTrace } from '../../../core/recipe/solve/without-trace.ts'
import { call } from '../../calls/call.ts'
import type { InputOf } from '../../calls/signatures.ts'
import type { Context } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { cautionsByDepth, notesByDepth } from '../reply/first-screen.ts'
import {
  caution,
  flashNotes,
  freezerOf,
  made,
  measuredData,
  neatAnd,
  note,
  outcomeData,
  outcomeRows,
  row,
  sureOf,
} from '../reply/outcome-reply.ts'
import { sweetenerData, sweetenerNotes } from '../reply/sweetener-notes.ts'

export type AdjustInput = InputOf<'adjust'>

/** What is added to what, and by which spirit, % vol; null where none is. */
export interface Adjusted {
  readonly liqueur: Portion
  readonly adjustment: Adjustment
  readonly spiritAbv: Measured | null
}

const keptAs = (what: 'strength' | 'sweetness'): Message<'notes'> => ({
  group: 'notes',
  key: 'as_before',
  values: { what },
})

/** How what was left open was read. */
const readNotes = (
  { sweetness, ...input }: AdjustInput,
  drifts: boolean,
  abvPercent: Measured,
): readonly Message<'notes'>[] => [
  ...(sweetness ? [note('sweet_reading')] : [note('unsweetened')]),
  ...(input['to-strength']
    ? []
    : [
        drifts
          ? ({
              group: 'notes',
              key: 'strength_drifts',
              values: { abvPercent, line: call('adjust', { ...input, sweetness, 'spirit-strength': percentVol(40) }) },
            } as const)
          : keptAs('strength'),
      ]),
  ...(input['to-sweetness'] ? [] : [keptAs('sweetness')]),
]

/** The same of a liqueur that is as sweet as most. */
const sweetAction = (input: AdjustInput): Action => ({
  label: { group: 'actions', key: 'adjust_sweet', values: undefined },
  call: call('adjust', { ...input, sweetness: { typed: 'everyday', is: parseSweetness('everyday') } }),
})

/** What to add, and what comes of it. */
export function adjustReply(
  input: AdjustInput,
  { liqueur, adjustment, spiritAbv }: Adjusted,
  drifts: boolean,
  context: Context,
): Reply {
  const freezerC = freezerOf(context)
  const now = liquidOf(valuesOf(liqueur))
  const { outcome, sugarStays, spiritMl, waterG, waterMl, sweetener, sugarG } = adjustment
  const spirit =
    spiritAbv && spiritMl.value > 0
      ? [liquidFrom({ volumeMl: spiritMl.value, abvPercent: spiritAbv.value, sugarGPerL: 0 })]
      : []
  const handled = [now, ...spirit]
  const syrupG = { value: waterG.value + sugarG.value, plusMinus: 0 }
  const told = withoutTrace({ sugarG, waterG, waterMl, syrupG, syrupMl: waterMl, dissolvesG: null, outcome })
  const isDissolved = materialOf(sweetener).isSyrup
  const isSyrup = sugarG.value > 0 && (isDissolved ? waterG.value > 0 : dissolvableSugarG(waterG.value) >= sugarG.value)
  return {
    headline: {
      group: 'headlines',
      key: 'adjust',
      values: { ...made(outcome, freezerC), spiritMl, waterMl: told.waterMl, sweetener, sugarG: told.sugarG },
    },
    table: inMore([
      ...(sugarG.value > 0
        ? [row('sugar', { group: 'cells', key: 'weigh', values: { massG: sugarG, sweetener } })]
        : []),
      ...(waterMl.value > 0 ? [row('water', { group: 'cells', key: 'water', values: { waterMl, waterG } })] : []),
      ...(spiritAbv && spiritMl.value > 0
        ? [row('spirit', { group: 'cells', key: 'spirit', values: { spiritMl, abvPercent: spiritAbv.value } })]
        : []),
      ...outcomeRows(outcome, freezerC),
    ]),
    sure: sureOf(outcome, liqueur.by === 'volume'),
    notes: notesByDepth([
      ...assumptionNotes(input),
      ...(isSyrup
        ? [
            {
              group: 'notes',
              key: 'syrup_by_weight',
              values: { syrupG },
            } as const,
          ]
        : []),
      ...(spiritMl.value > 0 || waterMl.value > 0 ? [note('settle')] : []),
      ...(input.jar === undefined ? readNotes(input, drifts, outcome.abvPercent) : []),
      ...(sugarG.value > 0 ? sweetenerNotes([sweetener], sweetener) : []),
      ...flashNotes(handled),
    ]),
    cautions: cautionsByDepth([
      ...neatAnd(outcome, sugarStays, handled, { freezerC, isSyrup }),
      ...(sugarG.value > 0 && !isSyrup && !isDissolved ? [caution('sugar_alone')] : []),
    ]),
    actions: input.jar === undefined && input.sweetness === undefined ? [sweetAction(input)] : [],
    data: {
      ...outcomeData(outcome),
      ...measuredData({ spiritMl, waterMl, waterG, sugarG }),
      ...sweetenerData(sweetener, sugarG),
    },
    kitchen: kitchenOf(input),
  }
}
