import { z } from 'zod'
import type { ReadAmount } from '../../../core/jar/event.ts'
import type { Story } from '../../../core/jar/story.ts'
import type { IsoDay } from '../../../core/quantity/calendar.ts'
import { defineCommand } from '../../chat/command.ts'
import { fields } from '../fields.ts'
import { planFields } from '../plan-fields.ts'
import { amountOf } from '../portions.ts'
import { recordStep } from './change-jar.ts'
import { jarFields } from './jar-fields.ts'
import { onceMore } from './once-more.ts'
import { nowRows, recordedHeadline, stepReply } from './step-reply.ts'

/** The entry of that day that says the same. */
const sameFiltering = ({ happened }: Story, on: IsoDay, measured: ReadAmount | null) =>
  happened.find(
    (entry) => entry.kind === 'filtered' && entry.day === on && entry.measured?.amount.value === measured?.amount.value,
  )

export const jarFilterCommand = defineCommand({
  path: 'jar filter',
  input: z.object({
    jar: jarFields.jar,
    measured: fields.amount.optional(),
    when: jarFields.when.optional(),
    again: planFields.yesNo.optional(),
  }),
  async run(input, context) {
    const measured = input.measured === undefined ? null : amountOf(input.measured.is)
    const isMeant = input.again?.is ?? false
    const recorded = await recordStep(context, input, {
      happening: () => ({ kind: 'filtered', measured }),
      sameOn: (story, day) => (isMeant ? undefined : sameFiltering(story, day, measured)),
    })
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      actionsHeld: recorded.held === 'same_again' ? [onceMore('jar filter', recorded, input, context)] : [],
      rows: nowRows,
    })
  },
})
