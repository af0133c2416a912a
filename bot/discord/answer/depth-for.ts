import { StorageError } from '../../../store/storage-error.ts'
import { lineOf } from '../../calls/write-line.ts'
import { type DepthShown, hasMore } from '../../chat/depth.ts'
import type { CallOutcome, Dispatch } from '../../chat/run/call-outcome.ts'
import type { HelpPage } from '../../chat/run/help-page.ts'
import { trace } from '../../chat/trace.ts'
import { markedId } from '../buttons/marked-lines.ts'

/** The first screen with a button that opens the rest, or all of it where nothing could. */
export const depthFor = async (
  outcome: CallOutcome | HelpPage,
  dispatch: Dispatch,
): Promise<{ readonly shown: DepthShown; readonly more: string | null }> => {
  if (!outcome.ok || !('reply' in outcome) || !hasMore(outcome.reply)) return { shown: 'first', more: null }
  if (outcome.call === undefined) return { shown: 'whole', more: null }
  try {
    const more = await markedId('!more ', { line: lineOf(outcome.call), path: outcome.path }, dispatch)
    return { shown: more === null ? 'whole' : 'first', more }
  } catch (error) {
    if (!(error instanceof StorageError)) dispatch.log(trace(error))
    return { shown: 'whole', more: null }
  }
}
