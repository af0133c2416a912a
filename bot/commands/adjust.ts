import { z } from 'zod'
import { abvPercent, sugarGPerL } from '../../core/liquid/liquid.ts'
import { abvPercent as strengthOf } from '../../core/quantity/precision.ts'
import { adjust } from '../../core/recipe/adjust.ts'
import { liquidOf } from '../../core/recipe/portion.ts'
import { valuesOf } from '../../core/recipe/propagate.ts'
import { ChatError } from '../chat/chat-error.ts'
import { defineCommand } from '../chat/command.ts'
import type { Message } from '../text/words.ts'
import { fields } from './fields.ts'
import {
  caution,
  made,
  measuredData,
  note,
  outcomeCautions,
  outcomeData,
  outcomeRows,
  row,
  sureOf,
  sweetnessNotes,
} from './outcome-reply.ts'
import { portionOf } from './portions.ts'
import { assumptionNotes, kitchenOf } from './typed-in.ts'

const keptAs = (what: 'strength' | 'sweetness'): Message<'notes'> => ({
  group: 'notes',
  key: 'as_before',
  values: { what },
})

export const adjustCommand = defineCommand({
  path: 'adjust',
  input: z.object({
    liqueur: fields.amount,
    strength: fields.strength,
    sweetness: fields.sweetness.optional(),
    'to-strength': fields.wishedStrength.optional(),
    'to-sweetness': fields.sweetness.optional(),
    'spirit-strength': fields.wishedStrength.optional(),
  }),
  run(input) {
    const { 'to-strength': toStrength, 'to-sweetness': toSweetness, 'spirit-strength': spiritStrength } = input
    if (!toStrength && !toSweetness) {
      const example = '/adjust liqueur:1.8 l strength:33% sweetness:300 g/L to-strength:30% to-sweetness:250 g/L'
      throw new ChatError('missing_option', 'nothing_given', { command: 'adjust', example })
    }
    const liqueur = portionOf(input.liqueur.is, input.strength.is, input.sweetness?.is ?? null, 'hydrometer')
    const now = liquidOf(valuesOf(liqueur))
    const targets = {
      abvPercent: toStrength?.is.abvPercent ?? abvPercent(now),
      sugarGPerL: toSweetness?.is.sugarGPerL ?? sugarGPerL(now),
    }
    const spiritAbv = spiritStrength ? strengthOf(spiritStrength.is, 'label') : null
    const { outcome, sugarStays, spiritMl, waterG, waterMl, sugarG } = adjust(liqueur, targets, spiritAbv)
    return {
      headline: { group: 'headlines', key: 'adjust', values: { ...made(outcome), spiritMl, waterMl, sugarG } },
      table: [
        ...(sugarG.value > 0 ? [row('sugar', { group: 'cells', key: 'mass', values: { massG: sugarG } })] : []),
        ...(waterMl.value > 0 ? [row('water', { group: 'cells', key: 'water', values: { waterMl, waterG } })] : []),
        ...(spiritAbv && spiritMl.value > 0
          ? [row('spirit', { group: 'cells', key: 'spirit', values: { spiritMl, abvPercent: spiritAbv.value } })]
          : []),
        ...outcomeRows(outcome),
      ],
      sure: sureOf(outcome, liqueur.by === 'volume'),
      notes: [
        ...assumptionNotes(input),
        ...(input.sweetness ? [note('sweet_reading')] : [note('unsweetened')]),
        ...(toStrength ? [] : [keptAs('strength')]),
        ...(toSweetness ? [] : [keptAs('sweetness')]),
        ...sweetnessNotes(outcome),
      ],
      cautions: [
        ...outcomeCautions(outcome, sugarStays, [now]),
        ...(sugarG.value > 0 && waterMl.value > 0 ? [caution('cool_first')] : []),
      ],
      actions: [],
      data: { ...outcomeData(outcome), ...measuredData({ spiritMl, waterMl, waterG, sugarG }) },
      kitchen: kitchenOf(input),
    }
  },
})
