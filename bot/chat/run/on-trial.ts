import type { Asker } from '../command.ts'
import { withoutKeeping } from './without-keeping.ts'

interface Trying extends Asker {
  readonly log: (text: string) => void
}

/** What reaches beyond the answer: messages, files, and what is remembered of somebody. */
type Reaching = 'newAttempt' | 'doubts' | 'replies' | 'talk' | 'provePlace' | 'withdrawPost' | 'forgetFiles'

/** The same asker for a line that is only tried: nothing it does is kept, erased, sent, logged or remembered. */
export function onTrial<Of extends Trying>(dispatch: Of): Omit<Of, Reaching> {
  const {
    newAttempt: _a,
    doubts: _d,
    replies: _r,
    talk: _t,
    provePlace: _p,
    withdrawPost: _w,
    forgetFiles: _f,
    ...asking
  } = dispatch
  return { ...asking, store: withoutKeeping(dispatch.store), log: () => {} }
}
