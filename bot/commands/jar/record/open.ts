import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { servedCautions } from '../known/jar-cautions.ts'
import { recordStep } from '../step/record-step.ts'
import { nowRows, recordedHeadline, stepReply } from '../step/step-reply.ts'

export const jarOpenCommand = defineCommand({
  ...signature('jar open'),
  async run(input, context) {
    const step = { happening: () => ({ kind: 'opened' }) as const, cautions: servedCautions }
    const recorded = await recordStep(context, input, step)
    // What is open already is drunk all the same.
    const said = recorded.isAlready ? { ...recorded, cautions: servedCautions(recorded.story) } : recorded
    return stepReply(context, input, said, { headline: recordedHeadline(recorded, context), rows: nowRows })
  },
})
