import { extractIn } from '../../../core/jar/state/extract-in.ts'
import { runningJars } from '../../../core/jar/state/running-jars.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { abvPercent, sugarGPerL } from '../../../core/quantity/measured/precision.ts'
import { gauged } from '../../../core/recipe/solve/gauged.ts'
import { type Call, call } from '../../calls/call.ts'
import { type InputOf, signature } from '../../calls/signatures.ts'
import { lineOf } from '../../calls/write-line.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import { jarNamed } from '../jar/known/jar-named.ts'
import { jarRef } from '../jar/known/jar-ref.ts'
import { afterText, gaugingGiven, hasReadings, measureCall, measureLine } from './gauging-given.ts'
import { boilReply, gaugedReply, waysReply } from './measure-reply.ts'
import { measuredJarReply, recipeReply, toldJarReply } from './measured-jar.ts'

export const measureCommand = defineCommand({
  ...signature('measure'),
  topic: 'sums',
  isOfLineAlone: true,
  async run(input, context) {
    if (!hasReadings(input) && input.strength === undefined) {
      return input.jar === undefined
        ? waysReply(await recipeCall(context))
        : recipeReply(await jarNamed(input.jar.is, context))
    }
    const held = input.jar === undefined ? null : await jarNamed(input.jar.is, context)
    const jar = input.jar?.typed ?? null
    if (input.strength !== undefined) return trueStrength({ ...input, strength: input.strength }, held, context)
    const gauging = gaugingGiven(input, jar, held?.contents.outcome.sugarGPerL ?? null)
    if (gauging === null) {
      return boilReply(input, measureCall(jar, input, ['before'], { after: afterText(input.before!.is) }))
    }
    expectHeavier(input)
    const outcome = gauged(gauging, held === null ? undefined : extractIn(held.story))
    return input.jar === undefined
      ? gaugedReply(input, gauging, outcome)
      : measuredJarReply({ ...input, jar: input.jar }, gauging, outcome, context)
  },
})

/** A strength that needs no putting right, with the sugar that the jar has where none was told; of a jar alone, and without a reading. */
function trueStrength(
  input: InputOf<'measure'> & { readonly strength: NonNullable<InputOf<'measure'>['strength']> },
  held: JarView | null,
  context: Context,
): Promise<Reply> {
  const { jar, strength, sweetness, brix, hydrometer, before, after } = input
  const example = lineOf(call('measure', { jar: jar?.typed ?? 'lemon', strength: strength.is }))
  if (jar === undefined || held === null)
    throw new ChatError(
      'missing_option',
      'missing_option',
      { command: 'measure', option: 'jar', example },
      { option: 'jar' },
    )
  if ((brix ?? hydrometer ?? before ?? after) !== undefined)
    throw new ChatError('too_many_options', 'measure_one_way', { example })
  const sugar = sweetness === undefined ? held.contents.outcome.sugarGPerL : sugarGPerL(sweetness.is)
  return toldJarReply({ ...input, jar }, { abvPercent: abvPercent(strength.is, 'label'), sugarGPerL: sugar }, context)
}

/** What tells what the recipe of a jar says: the first that is strained, or runs; null where there is none. */
async function recipeCall({ store, userId, place }: Context): Promise<Call | null> {
  const running = runningJars((await store.read(userId)).jars)
  const held = running.find(({ story }) => story.strained !== null) ?? running[0]
  return held === undefined ? null : call('measure', { jar: jarRef(held, { place }) })
}

/** Without its alcohol a liqueur is heavier; the other way round the two readings were swapped. */
function expectHeavier(input: InputOf<'measure'>): void {
  const { before, after } = input
  if (before === undefined || after === undefined || before.is.scale !== after.is.scale) return
  if (before.is.scale === 'percent' || after.is.value.value >= before.is.value.value) return
  const example = measureLine(input.jar?.typed ?? null, input, [], { before: after.typed, after: before.typed })
  throw new ChatError('bad_value', 'boiled_lighter', { example }, { option: 'after' })
}
