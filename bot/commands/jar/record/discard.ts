import { z } from 'zod'
import { findWhole } from '../../../../core/jar/state/find-jar.ts'
import { defineCommand } from '../../../chat/command.ts'
import { jarFields } from '../known/jar-fields.ts'
import { recordStep } from './record-step.ts'
import { recordedHeadline, stepReply } from './step-reply.ts'

export const jarDiscardCommand = defineCommand({
  path: 'jar discard',
  input: z.object({ jar: jarFields.jar, when: jarFields.when.optional() }),
  async run(input, context) {
    const recorded = await recordStep(context, input, { happening: () => ({ kind: 'discarded' }) }, findWhole)
    return stepReply(context, input, recorded, { headline: recordedHeadline(recorded, context) })
  },
})
