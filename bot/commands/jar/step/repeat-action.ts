import type { CallValues } from '../../../calls/call.ts'
import { call } from '../../../calls/call.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { jarRef } from '../known/jar-ref.ts'
import { happenedIn, type Recorded } from './record-step.ts'

/** The same once more, where it was held for a slip. */
export const onceMore = <Called extends 'jar sweeten' | 'jar filter'>(
  path: Called,
  recorded: Recorded,
  input: InputOf<Called>,
  context: Context,
): Action => ({
  label: { group: 'actions', key: 'jar_once_more', values: undefined },
  call: call(path, { ...happenedIn(input), jar: jarRef(recorded, context), again: true } as CallValues<Called>),
})
