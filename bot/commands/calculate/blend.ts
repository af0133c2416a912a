import { mix } from '../../../core/recipe/solve/mix.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { blendPortions } from '../options/input-to-portion.ts'
import { freezerOf, note } from '../reply/outcome-reply.ts'
import { mixtureReply } from './mixture-reply.ts'

export const blendCommand = defineCommand({
  ...signature('blend'),
  topic: 'sums',
  isOfLineAlone: true,
  run(input, context) {
    const portions = blendPortions(input.parts.is)
    const isPlain = input.parts.is.some(({ strength, sweetness }) => strength === null || sweetness === null)
    const mixture = mix({ portions, sweetenings: [] })
    return mixtureReply(mixture, {
      input,
      portions,
      handled: portions,
      notes: [
        ...(isPlain ? [note('plain_parts')] : []),
        ...(mixture.outcome.sugarGPerL.value > 0 ? [note('sweet_reading')] : []),
      ],
      freezerC: input.freezer?.is ?? freezerOf(context),
      isFreezerAsked: input.freezer !== undefined,
      isSyrup: false,
    })
  },
})
