import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { CallRead } from '../../talk/frames/reading.ts'

/** What was read of a sentence, as a call that can be run. */
export const asInvocation = ({ command, options }: CallRead): Invocation => ({ path: command, options })

/** Its exact line. */
export const written = (call: CallRead): string => lineOf(asInvocation(call))
