import { z } from 'zod'
import { volumeMl } from '../../core/quantity/precision.ts'
import { liquidOf } from '../../core/recipe/portion.ts'
import { valuesOf } from '../../core/recipe/propagate.ts'
import { styles } from '../../core/recipe/styles.ts'
import { syrup } from '../../core/recipe/syrup.ts'
import { wishOf } from '../../core/recipe/wish.ts'
import { defineCommand } from '../chat/command.ts'
import { fields } from './fields.ts'
import { portionOf } from './portions.ts'
import { stylesReply, syrupReply } from './syrup-reply.ts'

export const syrupCommand = defineCommand({
  path: 'syrup',
  input: z.object({
    infusion: fields.amount,
    strength: fields.strength,
    'to-strength': fields.wishedStrength.optional(),
    'to-sweetness': fields.sweetness.optional(),
    ratio: fields.ratio.optional(),
    'at-most': fields.wishedVolume.optional(),
  }),
  run(input) {
    const infusion = portionOf(input.infusion.is, input.strength.is, null, 'hydrometer')
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
