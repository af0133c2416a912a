import { mix } from '../../../core/recipe/solve/mix.ts'
import { signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { defineCommand } from '../../chat/command.ts'
import { spiritPortions, sweeteningsOf, waterOf } from '../options/input-to-portion.ts'
import { freezerOf, note } from '../reply/outcome-reply.ts'
import { sweetenerNotes } from '../reply/sweetener-notes.ts'
import { mixtureReply } from './mixture-reply.ts'

export const mixCommand = defineCommand({
  ...signature('mix'),
  topic: 'sums',
  isOfLineAlone: true,
  run(input, context) {
    if (!input.spirit && !input.water && !input.sugar) {
      throw new ChatError('missing_option', 'nothing_given', {
        command: 'mix',
        example: '/mix spirit:1 l strength:95% water:500 ml',
      })
    }
    const spirits = input.spirit ? spiritPortions(input.spirit.is, input.strength) : []
    const portions = [...spirits, ...(input.water?.is.waters ?? []).map(waterOf)]
    const sweetenings = sweeteningsOf(input.sugar, input.water)
    return mixtureReply(mix({ portions, sweetenings }), {
      input,
      portions,
      handled: spirits,
      notes: [
        ...(spirits.length > 0 && portions.length > 1 ? [note('settle')] : []),
        ...sweetenerNotes(sweetenings.map(({ material }) => material)),
      ],
      freezerC: input.freezer?.is ?? freezerOf(context),
      isFreezerAsked: input.freezer !== undefined,
      isSyrup: spirits.length > 0 && input.water !== undefined && input.sugar !== undefined,
    })
  },
})
