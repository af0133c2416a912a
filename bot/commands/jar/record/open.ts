import { isInFreezer } from '../../../../core/jar/state/where-it-stands.ts'
import { call } from '../../../calls/call.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action } from '../../../chat/reply.ts'
import { note } from '../../reply/outcome-reply.ts'
import { servedCautions } from '../known/jar-cautions.ts'
import { jarRef } from '../known/jar-ref.ts'
import { expectNothingTold } from '../known/told-trouble.ts'
import { recordStep } from '../step/record-step.ts'
import { nowRows, recordedHeadline, stepReply } from '../step/step-reply.ts'

export const jarOpenCommand = defineCommand({
  ...signature('jar open'),
  topic: 'jars',
  async run(input, context) {
    const step = { happening: () => ({ kind: 'opened' }) as const, cautions: servedCautions, expect: expectNothingTold }
    const recorded = await recordStep(context, input, step)
    // What is open already is drunk all the same.
    const said = recorded.isAlready ? { ...recorded, cautions: servedCautions(recorded.story) } : recorded
    const jar = jarRef(recorded, context)
    const rate = context.place.kind === 'console' ? { jar, rating: 4 } : { jar }
    return stepReply(context, input, said, {
      headline: recordedHeadline(recorded, context),
      rows: nowRows,
      notes: isInFreezer(recorded.story) ? [note('jar_out_of_freezer')] : [],
      actions: [
        { label: { group: 'actions', key: 'jar_rate', values: undefined }, call: call('jar taste', rate) },
        ...inMore<Action>([
          { label: { group: 'actions', key: 'jar_again', values: undefined }, call: call('again', { jar }) },
        ]),
      ],
    })
  },
})
