import type { Context } from '../../chat/command.ts'
import type { Action } from '../../chat/reply.ts'
import { writeLine } from '../../chat/write-line.ts'
import { type Input, type Recorded, typedIn } from './change-jar.ts'
import { jarRef } from './jar-ref.ts'

/** The same once more, where it was held for a slip. */
export const onceMore = (path: string, recorded: Recorded, input: Input, context: Context): Action => ({
  label: { group: 'actions', key: 'jar_once_more', values: undefined },
  line: writeLine(path, jarRef(recorded, context), [...typedIn(input), ['again', 'yes']]),
})
