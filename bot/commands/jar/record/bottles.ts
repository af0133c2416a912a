import type { BottlesOut } from '../../../../core/jar/entry/entry.ts'
import { bestUntil } from '../../../../core/jar/state/best-until.ts'
import { bottleStock, bottlesLeft, bottlesTaken } from '../../../../core/jar/state/bottle-stock.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { isFinished, type JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { call } from '../../../calls/call.ts'
import { asOptionProblem, type Given } from '../../../calls/option.ts'
import { type InputOf, signature } from '../../../calls/signatures.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action, Data, Reply } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { dangerCautions } from '../known/jar-dangers.ts'
import { jarBrief } from '../known/jar-data.ts'
import { kitchenOfJars } from '../known/jar-kitchen.ts'
import { jarNamed } from '../known/jar-named.ts'
import { jarRef } from '../known/jar-ref.ts'
import { expectNothingTold, heldFirst } from '../known/told-trouble.ts'
import { todayOf, viewOf } from '../known/view-of.ts'
import { recordStep } from '../step/record-step.ts'
import { recordedHeadline, stepReply } from '../step/step-reply.ts'

type Input = InputOf<'bottles'>

function stockNote(story: JarState, context: Context): Message<'notes'> {
  const until = bestUntil(story)
  const isPast = until !== null && until < todayOf(context) && bottlesLeft(story) > 0
  const values = { name: story.name, stock: bottleStock(story), bestUntil: until, isPast }
  return { group: 'notes', key: 'bottles_stock', values }
}

const stockData = (view: JarView): { readonly [name: string]: Data } => ({
  ...jarBrief(view),
  bottles: bottleStock(view.story).map((each) => ({ ...each })),
  bestUntil: bestUntil(view.story),
})

/** What is past its best first comes first, what nobody knows of last, and then that of which nothing is left. */
const bySoonest = (views: readonly JarView[]): readonly JarView[] => {
  const dayOf = ({ story }: JarView): string =>
    `${bottlesLeft(story) === 0 ? 1 : 0} ${bestUntil(story) ?? '9999-12-31'}`
  return views.toSorted((one, other) => dayOf(one).localeCompare(dayOf(other)))
}

/** Once the last bottle is gone the jar is done. */
function lastActions(view: JarView, context: Context): readonly Action[] {
  const jar = jarRef(view, context)
  const isLast = bottleStock(view.story).length > 0 && bottlesLeft(view.story) === 0 && !isFinished(view)
  return isLast
    ? [{ label: { group: 'actions', key: 'bottles_all_gone', values: undefined }, call: call('jar empty', { jar }) }]
    : [
        {
          label: { group: 'actions', key: 'bottles_label', values: undefined },
          call: call('jar label', { jar }),
          depth: 'more',
        },
      ]
}

async function takenReply(input: Input & { readonly jar: Given<string> }, context: Context): Promise<Reply> {
  const { given, opened } = input
  if (given !== undefined && opened !== undefined) throw new ChatError('too_many_options', 'bottles_one_way', {})
  const [use, asked] = given === undefined ? (['opened', opened!] as const) : (['given', given] as const)
  const recorded = await recordStep(context, input, {
    happening: (story): BottlesOut => ({
      kind: 'bottles_out',
      use,
      bottles: asOptionProblem(use, () => bottlesTaken(asked.is, story, use)),
    }),
    // What is gone is written down, whatever stands of it.
    ...(input.already?.is !== true && { expect: expectNothingTold }),
  })
  const view = viewOf(recorded.jar, context)!
  const reply = stepReply(context, input, recorded, {
    headline: recordedHeadline(recorded, context),
    notes: [stockNote(recorded.story, context)],
    actions: lastActions(view, context),
  })
  return { ...reply, table: inMore(reply.table), data: { ...reply.data, ...stockData(view) } }
}

/** What is left of one jar, or of all of them. */
function shelfReply(views: readonly JarView[], context: Context): Reply {
  const shelved = bySoonest(views.filter(({ story }) => bottleStock(story).length > 0))
  const count = shelved.reduce((sum, { story }) => sum + bottlesLeft(story), 0)
  const [only] = views
  return {
    headline: { group: 'headlines', key: 'bottles_shelf', values: { count, jars: shelved.length } },
    table: [],
    sure: [],
    notes: shelved.map(({ story }) => stockNote(story, context)),
    cautions: dangerCautions(shelved.map(({ story }) => story)),
    actions: views.length === 1 && shelved.length === 1 && only !== undefined ? lastActions(only, context) : [],
    data: { jars: shelved.map(stockData) },
    kitchen: kitchenOfJars(
      {},
      shelved.map(({ story }) => story),
    ),
  }
}

export const bottlesCommand = defineCommand({
  ...signature('bottles'),
  topic: 'jars',
  async run(input, context) {
    const { jar, given, opened } = input
    if (given !== undefined || opened !== undefined) {
      if (jar === undefined) {
        const values = { command: 'bottles', option: 'jar', example: null }
        throw new ChatError('missing_option', 'missing_option', values, { option: 'jar' })
      }
      return takenReply({ ...input, jar }, context)
    }
    if (jar !== undefined) {
      const view = await jarNamed(jar.is, context)
      return heldFirst(shelfReply([view], context), [view.story])
    }
    const { jars } = await context.store.read(context.userId)
    const views = jars.flatMap((each) => viewOf(each, context) ?? []).filter((view) => !isFinished(view))
    return shelfReply(views, context)
  },
})
