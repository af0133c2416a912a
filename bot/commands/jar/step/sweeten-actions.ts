import { plannedSyrup } from '../../../../core/jar/state/planned-syrup.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { afterNow, jarRef } from '../known/jar-ref.ts'
import { syrupValues } from '../known/sweeten-options.ts'
import { syrupAction } from './step-reply.ts'

type Held = Pick<JarView, 'jar' | 'story'>

/** The sweetening with the amounts that are worked out for a strained jar, or a way to work some out. */
export function sweetenActions(held: Held, context: Context): readonly Action[] {
  const found = plannedSyrup(held.story)
  if (found === null) return [syrupAction(held, context)]
  const values = syrupValues(found.syrup)
  if (Object.keys(values).length === 0) return []
  const after = afterNow(held.jar.entries, context.place)
  const sweeten = call('jar sweeten', { jar: jarRef(held, context), ...values, ...after })
  return [{ label: { group: 'actions', key: 'jar_sweeten', values: undefined }, call: sweeten }]
}
