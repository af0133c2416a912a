import { liquidFrom } from '../../../core/liquid/liquid.ts'
import { dissolvableSugarG } from '../../../core/liquid/solubility.ts'
import { materialOf } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import type { Adjustment } from '../../../core/recipe/solve/adjust.ts'
import type { InputOf } from '../../calls/signatures.ts'
import type { Context } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import {
  caution,
  freezerOf,
  made,
  measuredData,
  note,
  outcomeCautions,
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
const readNotes = ({ sweetness, ...input }: AdjustInput, drifts: boolean): readonly Message<'notes'>[] => [
  ...(sweetness ? [note('sweet_reading')] : [note('unsweetened')]),
  ...(input['to-strength'] ? [] : [drifts ? note('strength_drifts') : keptAs('strength')]),
  ...(input['to-sweetness'] ? [] : [keptAs('sweetness')]),
]

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
  const isDissolved = materialOf(sweetener).isSyrup
  const isSyrup = sugarG.value > 0 && (isDissolved ? waterG.value > 0 : dissolvableSugarG(waterG.value) >= sugarG.value)
  return {
    headline: {
      group: 'headlines',
      key: 'adjust',
      values: { ...made(outcome, freezerC), spiritMl, waterMl, sweetener, sugarG },
    },
    table: [
      ...(sugarG.value > 0
        ? [row('sugar', { group: 'cells', key: 'weigh', values: { massG: sugarG, sweetener } })]
        : []),
      ...(waterMl.value > 0 ? [row('water', { group: 'cells', key: 'water', values: { waterMl, waterG } })] : []),
      ...(spiritAbv && spiritMl.value > 0
        ? [row('spirit', { group: 'cells', key: 'spirit', values: { spiritMl, abvPercent: spiritAbv.value } })]
        : []),
      ...outcomeRows(outcome, freezerC),
    ],
    sure: sureOf(outcome, liqueur.by === 'volume'),
    notes: [
      ...assumptionNotes(input),
      ...(isSyrup
        ? [
            {
              group: 'notes',
              key: 'syrup_by_weight',
              values: { syrupG: { value: waterG.value + sugarG.value, plusMinus: 0 } },
            } as const,
          ]
        : []),
      ...(spiritMl.value > 0 || waterMl.value > 0 ? [note('settle')] : []),
      ...(input.jar === undefined ? readNotes(input, drifts) : []),
      ...(sugarG.value > 0 ? sweetenerNotes([sweetener], sweetener) : []),
    ],
    cautions: [
      ...outcomeCautions(outcome, sugarStays, handled, { freezerC, isSyrup }),
      ...(sugarG.value > 0 && !isSyrup && !isDissolved ? [caution('sugar_alone')] : []),
    ],
    actions: [],
    data: {
      ...outcomeData(outcome),
      ...measuredData({ spiritMl, waterMl, waterG, sugarG }),
      ...sweetenerData(sweetener, sugarG),
    },
    kitchen: kitchenOf(input),
  }
}
