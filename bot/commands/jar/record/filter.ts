import type { Filtered } from '../../../../core/jar/entry/entry.ts'
import { sameFiltering } from '../../../../core/jar/state/same-again.ts'
import { isSweetening } from '../../../../core/jar/state/syrup-wanted.ts'
import { finingOf } from '../../../../core/label/fining.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import type { Message } from '../../../text/words.ts'
import { amountOf } from '../../options/input-to-portion.ts'
import { recordStep } from '../step/record-step.ts'
import { onceMore } from '../step/repeat-action.ts'
import { becameHeadline, nowRows, recordedHeadline, stepReply } from '../step/step-reply.ts'
import { clearingNotes, strainedReply } from '../step/strained-reply.ts'

/** What its guests have to know of what it was fined with. */
function finingNotes({ fining }: Filtered): readonly Message<'notes'>[] {
  if (fining === undefined || !finingOf(fining).isAnimal) return []
  return [{ group: 'notes', key: 'jar_fined', values: { fining, isAllergen: finingOf(fining).allergen !== null } }]
}

export const jarFilterCommand = defineCommand({
  ...signature('jar filter'),
  topic: 'jars',
  async run(input, context) {
    const measured = input.measured === undefined ? null : amountOf(input.measured.is)
    const filtered: Filtered = {
      kind: 'filtered',
      measured,
      ...(input.racked?.is === true && { isRacked: true }),
      ...(input.fining !== undefined && { fining: input.fining.is }),
    }
    const isMeant = input.again?.is ?? false
    const recorded = await recordStep(context, input, {
      happening: () => filtered,
      sameOn: (story, day) => (isMeant ? undefined : sameFiltering(story, day, filtered)),
    })
    const { story } = recorded
    // What is left wants a syrup of its own.
    if (!recorded.isAlready && story.ended === null && isSweetening(story)) {
      const reply = strainedReply(context, input, recorded, recordedHeadline(recorded, context))
      return { ...reply, notes: [...finingNotes(filtered), ...reply.notes] }
    }
    return stepReply(context, input, recorded, {
      headline: becameHeadline(recorded, context),
      notes: [...finingNotes(filtered), ...(filtered.isRacked === true ? [] : clearingNotes(story))],
      actionsHeld: recorded.held === 'same_again' ? [onceMore('jar filter', recorded, input, context)] : [],
      rows: nowRows,
    })
  },
})
