import { call } from '../../../calls/call.ts'
import { signature } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { defineCommand } from '../../../chat/command.ts'
import { swallowedNotes } from '../known/note-swallowed-option.ts'
import { expectJar, recordStep } from '../step/record-step.ts'
import { recordedHeadline, stepReply } from '../step/step-reply.ts'

export const jarNoteCommand = defineCommand({
  ...signature('jar note'),
  async run(input, context) {
    const { jar, where, vessel, note } = input
    if (where === undefined && vessel === undefined && note === undefined) {
      await expectJar(context, jar)
      const example = lineOf(call('jar note', { jar: jar.is, where: 'cellar' }))
      throw new ChatError('missing_option', 'nothing_given', { command: 'jar note', example }, { option: 'note' })
    }
    const recorded = await recordStep(context, input, {
      happening: () => ({
        kind: 'noted',
        note: note?.is ?? null,
        where: where?.is ?? null,
        vessel: vessel?.is ?? null,
      }),
    })
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      notes: swallowedNotes(note, ['where', 'vessel', 'when']),
    })
  },
})
