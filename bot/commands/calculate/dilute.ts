import { exactly } from '../../../core/quantity/measured/measured.ts'
import { liquidOf } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { dilute } from '../../../core/recipe/solve/dilute.ts'
import { isWaterWorth } from '../../../core/recipe/solve/without-trace.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import { spiritPortions } from '../options/input-to-portion.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { cautionsByDepth, notesByDepth } from '../reply/first-screen.ts'
import {
  flashNotes,
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

export const diluteCommand = defineCommand({
  ...signature('dilute'),
  topic: 'sums',
  isOfLineAlone: true,
  run(input, context) {
    const freezerC = freezerOf(context)
    const spirits = spiritPortions(input.spirit.is, input.strength)
    const { outcome, waterG, waterMl } = dilute(spirits, input['to-strength'].is.abvPercent)
    const isWorth = isWaterWorth(waterMl, outcome)
    const handled = spirits.map((spirit) => liquidOf(valuesOf(spirit)))
    return {
      headline: {
        group: 'headlines',
        key: 'dilute',
        values: { abvPercent: outcome.abvPercent, waterMl: isWorth ? waterMl : exactly(0) },
      },
      under: [{ group: 'headlines', key: 'makes', values: made(outcome, freezerC) }],
      table: inMore([
        row('water', { group: 'cells', key: 'water', values: { waterMl, waterG } }),
        ...outcomeRows(outcome, freezerC),
      ]),
      sure: sureOf(
        outcome,
        spirits.some(({ by }) => by === 'volume'),
      ),
      notes: notesByDepth([
        ...assumptionNotes(input),
        ...(waterMl.value > 0 ? [note('settle')] : []),
        ...flashNotes(handled),
      ]),
      cautions: cautionsByDepth(outcomeCautions(outcome, 'dissolved', handled, { freezerC })),
      actions: [],
      data: { ...outcomeData(outcome), ...measuredData({ waterMl, waterG }) },
      kitchen: kitchenOf(input),
    }
  },
})
