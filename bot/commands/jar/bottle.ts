import { z } from 'zod'
import { type Contents, contentsOf } from '../../../core/jar/contents.ts'
import { defineCommand } from '../../chat/command.ts'
import type { Message } from '../../text/words.ts'
import { planFields } from '../plan-fields.ts'
import { bottlesFilled } from './amounts.ts'
import { recordStep } from './change-jar.ts'
import { allergenCautions } from './jar-cautions.ts'
import { jarFields } from './jar-fields.ts'
import { recordedHeadline, stepReply } from './step-reply.ts'

/** More in bottles than there was, or less, beyond what is known of it. */
function moreNotes({ bottledMl, outcome: { volumeMl } }: Contents): readonly Message<'notes'>[] {
  const leftMl = volumeMl.value - bottledMl
  if (leftMl > volumeMl.plusMinus) {
    const left = { value: leftMl, plusMinus: volumeMl.plusMinus }
    return [{ group: 'notes', key: 'jar_bottled_left', values: { leftMl: left } }]
  }
  if (leftMl >= -volumeMl.plusMinus) return []
  return [{ group: 'notes', key: 'jar_bottled_more', values: { bottledMl, volumeMl } }]
}

export const jarBottleCommand = defineCommand({
  path: 'jar bottle',
  input: z.object({ jar: jarFields.jar, bottles: planFields.bottles, when: jarFields.when.optional() }),
  async run(input, context) {
    const recorded = await recordStep(context, input, {
      happening: (story) => ({
        kind: 'bottled',
        bottles: bottlesFilled(input.bottles.is, contentsOf(story).outcome.volumeMl.value),
      }),
      cautions: allergenCautions,
    })
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      notes: moreNotes(contentsOf(recorded.story)),
    })
  },
})
