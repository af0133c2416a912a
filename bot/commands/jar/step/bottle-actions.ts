import { isHeldBack } from '../../../../core/jar/limits/judge-jar.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { taskCall } from '../known/task-call.ts'
import type { Recorded } from './record-step.ts'

/** What says that it is in bottles, when it is. */
export function bottleActions(recorded: Recorded, context: Context): readonly Action[] {
  const bottled = taskCall('bottle', recorded, recorded.entry.day, context)
  const label = { group: 'actions', key: 'jar_bottle', values: undefined } as const
  // Once some of it is in bottles, how many more it fills is for its maker to say.
  const isOffered = recorded.story.bottled === null && !isHeldBack(recorded.story)
  return bottled === null || !isOffered ? [] : [{ label, call: bottled }]
}
