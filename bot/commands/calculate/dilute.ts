import { liquidOf } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { dilute } from '../../../core/recipe/solve/dilute.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { spiritPortions } from '../options/input-to-portion.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import {
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
  run(input, context) {
    const freezerC = freezerOf(context)
    const spirits = spiritPortions(input.spirit.is, input.strength)
    const { outcome, waterG, waterMl } = dilute(spirits, input['to-strength'].is.abvPercent)
    return {
      headline: { group: 'headlines', key: 'dilute', values: { ...made(outcome, freezerC), waterMl } },
      table: [
        row('water', { group: 'cells', key: 'water', values: { waterMl, waterG } }),
        ...outcomeRows(outcome, freezerC),
      ],
      sure: sureOf(
        outcome,
        spirits.some(({ by }) => by === 'volume'),
      ),
      notes: [...assumptionNotes(input), ...(waterMl.value > 0 ? [note('settle')] : [])],
      cautions: outcomeCautions(
        outcome,
        'dissolved',
        spirits.map((spirit) => liquidOf(valuesOf(spirit))),
        { freezerC },
      ),
      actions: [],
      data: { ...outcomeData(outcome), ...measuredData({ waterMl, waterG }) },
      kitchen: kitchenOf(input),
    }
  },
})
