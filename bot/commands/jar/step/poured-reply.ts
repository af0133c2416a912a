import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import type { Jar } from '../../../../store/person.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Reply } from '../../../chat/reply.ts'
import { assumptionNotes } from '../../options/input-units.ts'
import { honeyCautions } from '../known/jar-cautions.ts'
import { dangerActions, dangerCautions } from '../known/jar-dangers.ts'
import { jarData } from '../known/jar-data.ts'
import { kitchenOfJar } from '../known/jar-kitchen.ts'
import { heldFirst } from '../known/told-trouble.ts'
import { undoActions } from '../known/undo-actions.ts'
import { viewOf } from '../known/view-of.ts'
import { nextRows } from './next-said.ts'
import type { Input } from './record-step.ts'
import { nowRows } from './step-reply.ts'

/** What came of liquid that went from jar to jar: the jar that it is in, and one press that takes back all of it. */
export function pouredReply(
  context: Context,
  input: Input,
  into: Jar,
  touched: readonly Jar[],
  headline: Reply['headline'],
): Reply {
  const view = viewOf(into, context)!
  const stories = touched.flatMap(({ entries }) => jarStateOf(entries) ?? [])
  const reply: Reply = {
    headline,
    table: [...nextRows(view, context), ...inMore(nowRows(view))],
    sure: [],
    notes: inMore(assumptionNotes(input)),
    cautions: [...dangerCautions(stories), ...honeyCautions(view.story)],
    actions: [
      ...dangerActions(view, context),
      {
        label: { group: 'actions', key: 'jar_show', values: undefined },
        call: call('jar show', { jar: view.story.name }),
      },
      ...undoActions(touched),
    ],
    data: { ...jarData(view), jars: touched.map((jar) => jarData(viewOf(jar, context)!)) },
    kitchen: kitchenOfJar(input, view.story),
  }
  return heldFirst(reply, stories)
}
