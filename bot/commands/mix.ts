import { z } from 'zod'
import { mix } from '../../core/recipe/mix.ts'
import { liquidOf } from '../../core/recipe/portion.ts'
import { valuesOf } from '../../core/recipe/propagate.ts'
import { ChatError } from '../chat/chat-error.ts'
import { defineCommand } from '../chat/command.ts'
import { fields } from './fields.ts'
import { made, note, outcomeCautions, outcomeData, outcomeRows, row, sureOf, sweetnessNotes } from './outcome-reply.ts'
import { spiritPortions, sugarOf, waterOf } from './portions.ts'
import { assumptionNotes, kitchenOf } from './typed-in.ts'

export const mixCommand = defineCommand({
  path: 'mix',
  input: z.object({
    spirit: fields.spirits.optional(),
    strength: fields.strength.optional(),
    water: fields.amount.optional(),
    sugar: fields.sugar.optional(),
  }),
  run(input) {
    if (!input.spirit && !input.water && !input.sugar) {
      throw new ChatError('missing_option', 'nothing_given', {
        command: 'mix',
        example: '/mix spirit:1 l strength:95% water:750 ml',
      })
    }
    const spirits = input.spirit ? spiritPortions('mix', input.spirit.is, input.strength) : []
    const portions = [...spirits, ...(input.water ? [waterOf(input.water.is)] : [])]
    const { outcome, sugarStays } = mix({ portions, sugarG: sugarOf(input.sugar) })
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
        ...(spirits.length > 0 && portions.length > 1 ? [note('settle')] : []),
        ...sweetnessNotes(outcome),
      ],
      cautions: outcomeCautions(
        outcome,
        sugarStays,
        spirits.map((spirit) => liquidOf(valuesOf(spirit))),
        spirits.length > 0 && input.water !== undefined && input.sugar !== undefined,
      ),
      actions: [],
      data: outcomeData(outcome),
      kitchen: kitchenOf(input),
    }
  },
})
