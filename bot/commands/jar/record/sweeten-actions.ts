import { plannedSyrup } from '../../../../core/jar/state/planned-syrup.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { writeLine } from '../../../calls/write-line.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { afterNow, jarRef } from '../known/jar-ref.ts'
import { sweetenOptions } from '../known/sweeten-options.ts'
import { syrupAction } from './step-reply.ts'

type Held = Pick<JarView, 'jar' | 'story'>

/** The sweetening with the amounts that are worked out for a strained jar, or a way to work some out. */
export function sweetenActions(held: Held, context: Context): readonly Action[] {
  const found = plannedSyrup(held.story)
  if (found === null) return [syrupAction(held, context)]
  const options = sweetenOptions(found.syrup)
  if (options.length === 0) return []
  const line = writeLine('jar sweeten', jarRef(held, context), [
    ...options,
    ...afterNow(held.jar.entries, context.place),
  ])
  return [{ label: { group: 'actions', key: 'jar_sweeten', values: undefined }, line }]
}
