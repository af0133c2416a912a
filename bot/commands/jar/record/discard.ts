import { findWhole } from '../../../../core/jar/state/find-jar.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { recordStep } from '../step/record-step.ts'
import { recordedHeadline, stepReply, typedUndo } from '../step/step-reply.ts'

export const jarDiscardCommand = defineCommand({
  ...signature('jar discard'),
  topic: 'jars',
  async run(input, context) {
    const recorded = await recordStep(context, input, { happening: () => ({ kind: 'discarded' }) }, findWhole)
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      actions: typedUndo(recorded, context),
    })
  },
})
