import { sameFiltering } from '../../../../core/jar/state/same-again.ts'
import { isSweetening } from '../../../../core/jar/state/syrup-wanted.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { amountOf } from '../../options/input-to-portion.ts'
import { recordStep } from '../step/record-step.ts'
import { onceMore } from '../step/repeat-action.ts'
import { becameHeadline, nowRows, recordedHeadline, stepReply } from '../step/step-reply.ts'
import { clearingNotes, strainedReply } from '../step/strained-reply.ts'

export const jarFilterCommand = defineCommand({
  ...signature('jar filter'),
  async run(input, context) {
    const measured = input.measured === undefined ? null : amountOf(input.measured.is)
    const isMeant = input.again?.is ?? false
    const recorded = await recordStep(context, input, {
      happening: () => ({ kind: 'filtered', measured }),
      sameOn: (story, day) => (isMeant ? undefined : sameFiltering(story, day, measured)),
    })
    const { story } = recorded
    // What is left wants a syrup of its own.
    if (!recorded.isAlready && story.ended === null && isSweetening(story)) {
      return strainedReply(context, input, recorded, recordedHeadline(recorded, context))
    }
    return stepReply(context, input, recorded, {
      headline: becameHeadline(recorded, context),
      notes: clearingNotes(story),
      actionsHeld: recorded.held === 'same_again' ? [onceMore('jar filter', recorded, input, context)] : [],
      rows: nowRows,
    })
  },
})
