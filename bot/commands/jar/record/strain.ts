import { z } from 'zod'
import { defineCommand } from '../../../chat/command.ts'
import { fields } from '../../options/fields.ts'
import { amountOf, strengthRead, waterG } from '../../options/input-to-portion.ts'
import { jarFields } from '../known/jar-fields.ts'
import { recordStep } from './record-step.ts'
import { lateDay } from './step-reply.ts'
import { strainedCautions, strainedReply } from './strained-reply.ts'

export const jarStrainCommand = defineCommand({
  path: 'jar strain',
  input: z.object({
    jar: jarFields.jar,
    measured: fields.amount.optional(),
    strength: fields.strength.optional(),
    rinse: fields.amount.optional(),
    when: jarFields.when.optional(),
  }),
  async run(input, context) {
    const { measured, strength, rinse } = input
    const recorded = await recordStep(context, input, {
      happening: () => ({
        kind: 'strained',
        measured: measured === undefined ? null : amountOf(measured.is),
        strength: strength === undefined ? null : strengthRead(strength.is),
        rinseWaterG: waterG(rinse),
      }),
      cautions: strainedCautions,
    })
    const { story, entry } = recorded
    return strainedReply(context, input, recorded, (syrup) => ({
      group: 'headlines',
      key: 'jar_strained',
      values: { name: story.name, happening: entry, day: lateDay(entry, context), syrup },
    }))
  },
})
