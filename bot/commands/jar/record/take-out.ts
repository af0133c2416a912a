import { liftedOut } from '../../../../core/jar/pour/lifted-out.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { recordStep } from '../step/record-step.ts'
import { nowRows, recordedHeadline, stepReply } from '../step/step-reply.ts'

export const jarTakeOutCommand = defineCommand({
  ...signature('jar take-out'),
  topic: 'jars',
  async run(input, context) {
    const recorded = await recordStep(context, input, {
      happening: (story) => ({
        kind: 'taken_out',
        plants: story.strained === null ? asOptionProblem('of', () => liftedOut(story, input.of.is)) : [],
      }),
    })
    return stepReply(context, input, recorded, { headline: recordedHeadline(recorded, context), rows: nowRows })
  },
})
