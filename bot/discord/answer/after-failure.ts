import { StorageError } from '../../../store/storage-error.ts'
import { lineOf } from '../../calls/write-line.ts'
import { parseLine } from '../../chat/grammar/grammar.ts'
import type { CallOutcome, Dispatch, Failure } from '../../chat/run/call-outcome.ts'
import type { HelpPage } from '../../chat/run/help-page.ts'
import { trace } from '../../chat/trace.ts'
import type { ChatProblems } from '../../text/messages/chat-problems.ts'
import { buttonIds } from '../buttons/button-ids.ts'
import type { LineOfCommand } from '../buttons/marked-lines.ts'
import type { SentForm } from '../forms/form.ts'
import { againId } from '../forms/reopen-form.ts'
import { retypeId } from '../forms/retype.ts'
import { type Button, LABEL_CHARACTERS } from '../show/message-payload.ts'

/** What somebody sent: a form, or a line, which can name another jar as well. */
export type SentBefore = SentForm | LineOfCommand

const isForm = (sent: SentBefore): sent is SentForm => 'filled' in sent

/** The button that opens it again; null where it was not wrong. */
async function againIn({ error }: Failure, sent: SentBefore | null, dispatch: Dispatch): Promise<string | null> {
  if (sent === null || (isForm(sent) && error.code === 'wrong_stage')) return null
  return isForm(sent) ? againId(sent, dispatch) : retypeId(sent, dispatch)
}

/** What a jar is held back for was nothing: one press says so. */
async function wayOut({ error }: Failure, { commands, userId: owner, store }: Dispatch): Promise<Button | null> {
  if (error.problem !== 'jar_told_held') return null
  const { line } = error.values as ChatProblems['jar_told_held']
  const call = parseLine(line, commands)
  const ids = await buttonIds([call], { owner, nudgeId: null }, store)
  const customId = ids.get(lineOf(call))
  return customId === undefined ? null : { label: line.slice(0, LABEL_CHARACTERS), customId, isMain: false }
}

/** Buttons under a line that was not taken; none where they cannot be kept. */
export async function afterFailure(outcome: CallOutcome | HelpPage, sent: SentBefore | null, dispatch: Dispatch) {
  if (outcome.ok) return { again: null }
  try {
    return { again: await againIn(outcome, sent, dispatch), wayOut: await wayOut(outcome, dispatch) }
  } catch (error) {
    if (!(error instanceof StorageError)) dispatch.log(trace(error))
    return { again: null }
  }
}
