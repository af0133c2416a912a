import { gauged } from '../../../core/recipe/solve/gauged.ts'
import { type InputOf, signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { defineCommand } from '../../chat/command.ts'
import { exampleAfter, gaugingGiven, hasReadings, measureLine } from './gauging-given.ts'
import { boilReply, gaugedReply, waysReply } from './measure-reply.ts'

export const measureCommand = defineCommand({
  ...signature('measure'),
  run(input) {
    if (!hasReadings(input)) return waysReply(null)
    const gauging = gaugingGiven(input, null, null)
    if (gauging === null) {
      return boilReply(input, measureLine(null, input, ['before'], { after: exampleAfter(input.before!.is) }))
    }
    expectHeavier(input)
    return gaugedReply(input, gauging, gauged(gauging))
  },
})

/** Without its alcohol a liqueur is heavier; the other way round the two readings were swapped. */
function expectHeavier(input: InputOf<'measure'>): void {
  const { before, after } = input
  if (before === undefined || after === undefined || before.is.scale !== after.is.scale) return
  if (before.is.scale === 'percent' || after.is.value.value >= before.is.value.value) return
  const example = measureLine(null, input, [], { before: after.typed, after: before.typed })
  throw new ChatError('bad_value', 'boiled_lighter', { example }, { option: 'after' })
}
