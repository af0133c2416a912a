import type { Context } from '../../chat/command.ts'
import type { Action } from '../../chat/reply.ts'
import { writeLine } from '../../chat/write-line.ts'
import { afterNow, jarRef } from './jar-ref.ts'
import type { JarView } from './jar-view.ts'
import { plannedSyrup, sweetenOptions } from './planned-syrup.ts'
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
