import { z } from 'zod'
import { defineCommand } from '../../chat/command.ts'
import { fields } from '../fields.ts'
import { amountOf } from '../portions.ts'
import { recordStep } from './change-jar.ts'
import { jarFields } from './jar-fields.ts'
import { nowRows, recordedHeadline, stepReply } from './step-reply.ts'

export const jarFilterCommand = defineCommand({
  path: 'jar filter',
  input: z.object({ jar: jarFields.jar, measured: fields.amount.optional(), when: jarFields.when.optional() }),
  async run(input, context) {
    const measured = input.measured === undefined ? null : amountOf(input.measured.is)
    const recorded = await recordStep(context, input, { happening: () => ({ kind: 'filtered', measured }) })
    return stepReply(context, input, recorded, { headline: recordedHeadline(recorded, context), rows: nowRows })
  },
})
