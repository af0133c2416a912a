import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { isToComeOut } from '../../../../core/jar/state/tastes-right.ts'
import { call } from '../../../calls/call.ts'
import { signature } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { jarRef } from '../known/jar-ref.ts'
import { troubleNoted } from '../known/kept-of-note.ts'
import { swallowedNotes } from '../known/note-swallowed-option.ts'
import { expectNothingTold } from '../known/told-trouble.ts'
import { expectJar, recordStep } from '../step/record-step.ts'
import { recordedHeadline, stepReply } from '../step/step-reply.ts'
import { troubleOffers } from './trouble-offers.ts'

const strainAction = (held: Parameters<typeof jarRef>[0], context: Context): Action => ({
  label: { group: 'actions', key: 'nudge_done', values: { duty: 'strain', name: null } },
  call: call('jar strain', { jar: jarRef(held, context) }),
})

export const jarTasteCommand = defineCommand({
  ...signature('jar taste'),
  topic: 'jars',
  async run(input, context) {
    const { rating, note } = input
    if (rating === undefined && note === undefined) {
      await expectJar(context, input.jar)
      const example = lineOf(call('jar taste', { jar: input.jar.is, rating: 4 }))
      const values = { command: 'jar taste', option: 'rating: or note', example }
      throw new ChatError('missing_option', 'missing_option', values, { option: 'rating' })
    }
    const happening = (before: JarState) =>
      ({
        kind: 'tasted',
        rating: rating?.is ?? null,
        note: note?.is ?? null,
        ...troubleNoted(note?.is ?? null, before, context),
      }) as const
    // What it tastes of may be what is wrong; a mark alone leads to drinking it.
    const isOnlyRated = note === undefined && input.when === undefined
    const recorded = await recordStep(context, input, {
      happening,
      ...(isOnlyRated && { expect: expectNothingTold }),
    })
    const { entry, story, jar } = recorded
    const isOut = entry.kind === 'tasted' && isToComeOut(story, entry.note)
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      ...(isOut && { under: [{ group: 'headlines', key: 'jar_out_now', values: undefined }], isNextSaid: true }),
      notes: swallowedNotes(note, ['rating', 'when']),
      actions: isOut ? [strainAction({ jar, story }, context)] : troubleOffers(recorded, context),
    })
  },
})
