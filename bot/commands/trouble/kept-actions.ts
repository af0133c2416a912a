import { isFinished } from '../../../core/jar/tasks/jar-view.ts'
import type { Action } from '../../chat/reply.ts'
import { awayAction, nothingAction, toldIn } from '../jar/known/told-trouble.ts'
import { undoActions } from '../jar/known/undo-actions.ts'
import type { Asking } from './asking.ts'

/** Away with the jar that is asked about. */
export const discardOf = ({ held, context }: Asking): readonly Action[] =>
  held === null || isFinished(held) ? [] : [awayAction(held, context)]

/** What says that what is kept of a jar was nothing. */
export function nothingOf({ held, context }: Asking): readonly Action[] {
  const trouble = held === null ? null : toldIn(held.story)
  return held === null || trouble === null ? [] : [nothingAction({ ...held, trouble }, context)]
}

/** What takes back what was written down just now. */
export const undoOf = ({ held, kept }: Asking): readonly Action[] =>
  held === null || kept === null ? [] : undoActions([held.jar])
