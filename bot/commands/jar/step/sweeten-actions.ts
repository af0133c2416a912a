import { plannedSyrup } from '../../../../core/jar/state/planned-syrup.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { kitchenAmong } from '../known/jar-kitchen.ts'
import { sweetenCall } from '../known/task-call.ts'
import { syrupAction } from './step-reply.ts'

type Held = Pick<JarView, 'jar' | 'story'>

/** The sweetening with the amounts that are worked out for a strained jar, or a way to work some out. */
export function sweetenActions(
  held: Held,
  context: Context,
  kitchen = kitchenAmong(held.story, context.settings),
): readonly Action[] {
  if (plannedSyrup(held.story) === null) return [syrupAction(held, context)]
  const sweeten = sweetenCall(held, { place: context.place, kitchen })
  if (sweeten === null) return []
  return [{ label: { group: 'actions', key: 'jar_sweeten', values: undefined }, call: sweeten }]
}
