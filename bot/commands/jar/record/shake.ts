import { DomainError } from '../../../../core/domain-error.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { recordStep } from '../step/record-step.ts'
import { recordedHeadline, stepReply } from '../step/step-reply.ts'
import { allReply, isAll, recordAll } from './record-all.ts'

export const jarShakeCommand = defineCommand({
  ...signature('jar shake'),
  topic: 'jars',
  async run(input, context) {
    const happening = () => ({ kind: 'shaken' }) as const
    if (!isAll(input.jar.is)) {
      const recorded = await recordStep(context, input, { happening })
      return stepReply(context, input, recorded, { headline: recordedHeadline(recorded, context) })
    }
    const all = await recordAll(context, input, {
      happening,
      isMeant: ({ story: { strained } }) => strained === null,
      none: () => new DomainError('wrong_stage', 'none_to_shake', {}),
    })
    return allReply(context, input, all, (names, day) => ({
      group: 'headlines',
      key: 'jar_all_shaken',
      values: { names, day },
    }))
  },
})
