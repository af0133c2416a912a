import { findWhole } from '../../../../core/jar/state/find-jar.ts'
import { call } from '../../../calls/call.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { jarRef } from '../known/jar-ref.ts'
import { recordStep } from '../step/record-step.ts'
import { recordedHeadline, stepReply } from '../step/step-reply.ts'

export const jarEmptyCommand = defineCommand({
  ...signature('jar empty'),
  topic: 'jars',
  async run(input, context) {
    const recorded = await recordStep(context, input, { happening: () => ({ kind: 'emptied' }) }, findWhole)
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      actions: [
        {
          label: { group: 'actions', key: 'jar_again', values: undefined },
          call: call('again', { jar: jarRef(recorded, context) }),
        },
      ],
    })
  },
})
