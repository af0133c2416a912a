import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { amountOf, strengthRead, waterG } from '../../options/input-to-portion.ts'
import { recordStep } from '../step/record-step.ts'
import { recordedHeadline } from '../step/step-reply.ts'
import { strainedCautions, strainedReply } from '../step/strained-reply.ts'

export const jarStrainCommand = defineCommand({
  ...signature('jar strain'),
  topic: 'jars',
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
    return strainedReply(context, input, recorded, recordedHeadline(recorded, context))
  },
})
