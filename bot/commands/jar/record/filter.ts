import { z } from 'zod'
import type { ReadAmount } from '../../../../core/jar/entry/entry.ts'
import type { Story } from '../../../../core/jar/state/jar-state.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { defineCommand } from '../../../chat/command.ts'
import { fields } from '../../options/fields.ts'
import { amountOf } from '../../options/input-to-portion.ts'
import { planFields } from '../../plan/plan-fields.ts'
import { onceMore } from '../amend/repeat-action.ts'
import { jarFields } from '../known/jar-fields.ts'
import { recordStep } from './record-step.ts'
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
