import { z } from 'zod'
import { volumeMl } from '../../core/quantity/precision.ts'
import { strained } from '../../core/recipe/plan/strained.ts'
import { liquidOf, type Portion } from '../../core/recipe/portion.ts'
import { valuesOf } from '../../core/recipe/propagate.ts'
import { styles } from '../../core/recipe/styles.ts'
import { syrup } from '../../core/recipe/syrup.ts'
import { wishOf } from '../../core/recipe/wish.ts'
import { ChatError } from '../chat/chat-error.ts'
import { defineCommand } from '../chat/command.ts'
import { fields } from './fields.ts'
import { planFields } from './plan-fields.ts'
import { portionOf, spiritPortions } from './portions.ts'
import { stylesReply, syrupReply } from './syrup-reply.ts'

const input = z.object({
  infusion: fields.amount,
  strength: fields.strength.optional(),
  'to-strength': fields.wishedStrength.optional(),
  'to-sweetness': fields.sweetness.optional(),
  ratio: fields.ratio.optional(),
  'at-most': fields.wishedVolume.optional(),
  of: planFields.plants.optional(),
  spirit: planFields.drinkable.optional(),
})

/** The infusion as measured, or its strength as expected of what went into the jar. */
function infusionOf({ infusion, strength, of, spirit }: z.output<typeof input>): Portion {
  if (strength !== undefined) {
    if (of !== undefined || spirit !== undefined) {
      throw new ChatError('too_many_options', 'strength_or_plants', {}, { option: 'strength' })
    }
    return portionOf(infusion.is, strength.is, null, 'hydrometer')
  }
  if (of === undefined || spirit === undefined) {
    const option = of !== undefined ? 'spirit' : spirit !== undefined ? 'of' : 'strength'
    throw new ChatError('missing_option', 'missing_option', { command: 'syrup', option, example: null }, { option })
  }
  return {
    ...portionOf(infusion.is, null, null, 'label'),
    ...strained(of.is, spiritPortions('syrup', spirit.is, undefined)),
  }
}

export const syrupCommand = defineCommand({
  path: 'syrup',
  input,
  run(input) {
    const infusion = infusionOf(input)
    const named = {
      abvPercent: input['to-strength']?.is.abvPercent,
      sugarGPerL: input['to-sweetness']?.is.sugarGPerL,
      sugarPerWater: input.ratio?.is.sugarGPerWaterG,
    }
    const atMostMl = input['at-most'] ? volumeMl(input['at-most'].is).value : null
    const wish = wishOf(liquidOf(valuesOf(infusion)), named)
    return wish === null
      ? stylesReply(input, infusion, styles(infusion, named, atMostMl))
      : syrupReply(input, infusion, syrup(infusion, wish, atMostMl))
  },
})
