import { writeLine } from '../../../calls/write-line.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { jarRef } from '../known/jar-ref.ts'
import { type Input, type Recorded, typedIn } from '../record/record-step.ts'

/** The same once more, where it was held for a slip. */
export const onceMore = (path: string, recorded: Recorded, input: Input, context: Context): Action => ({
  label: { group: 'actions', key: 'jar_once_more', values: undefined },
  line: writeLine(path, jarRef(recorded, context), [...typedIn(input), ['again', 'yes']]),
})
