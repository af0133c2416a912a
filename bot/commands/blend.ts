import { z } from 'zod'
import { exactly } from '../../core/quantity/measured.ts'
import { mix } from '../../core/recipe/mix.ts'
import { liquidOf } from '../../core/recipe/portion.ts'
import { valuesOf } from '../../core/recipe/propagate.ts'
import { defineCommand } from '../chat/command.ts'
import { fields } from './fields.ts'
import { made, note, outcomeCautions, outcomeData, outcomeRows, row, sureOf, sweetnessNotes } from './outcome-reply.ts'
import { blendPortions } from './portions.ts'
import { assumptionNotes, kitchenOf } from './typed-in.ts'

export const blendCommand = defineCommand({
  path: 'blend',
  input: z.object({ parts: fields.parts }),
  run(input) {
    const portions = blendPortions(input.parts.is)
    const isPlain = input.parts.is.some(({ strength, sweetness }) => strength === null || sweetness === null)
    const { outcome, sugarStays } = mix({ portions, sugarG: exactly(0) })
    return {
      headline: { group: 'headlines', key: 'makes', values: made(outcome) },
      table: [
        ...outcomeRows(outcome),
        row('alcohol', { group: 'cells', key: 'mass', values: { massG: outcome.ethanolG } }),
      ],
      sure: sureOf(
        outcome,
        portions.some(({ by }) => by === 'volume'),
      ),
      notes: [
        ...assumptionNotes(input),
        ...(isPlain ? [note('plain_parts')] : []),
        ...(outcome.sugarGPerL.value > 0 ? [note('sweet_reading')] : []),
        ...sweetnessNotes(outcome),
      ],
      cautions: outcomeCautions(
        outcome,
        sugarStays,
        portions.map((portion) => liquidOf(valuesOf(portion))),
      ),
      actions: [],
      data: outcomeData(outcome),
      kitchen: kitchenOf(input),
    }
  },
})
