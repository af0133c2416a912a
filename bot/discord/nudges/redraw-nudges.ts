import type { REST } from 'discord.js'
import type { SentNudge } from '../../../store/person.ts'
import type { InTurn } from '../../../store/queue.ts'
import { trace } from '../../chat/trace.ts'
import { nudgesAnsweredBy } from '../../reminders/sent-nudge.ts'
import { codeOf, restFault } from '../rest/rest-fault.ts'
import { COMPONENTS_V2 } from '../show/message-payload.ts'
import { type NudgeWriting, redrawnNudge } from './draw-nudge.ts'

export interface NudgeEditing extends NudgeWriting {
  readonly rest: Pick<REST, 'patch'>
  /** Edits of one message one after the other, so that the last shows the latest. */
  readonly inTurn: InTurn
  readonly log: (text: string) => void
}

const UNKNOWN_MESSAGE = 10008

async function redraw(userId: string, { id }: SentNudge, editing: NudgeEditing): Promise<void> {
  const person = await editing.store.read(userId)
  const nudge = person.sentNudges?.find((each) => each.id === id)
  if (nudge === undefined) return
  const { channelId, messageId } = nudge.postedIn
  const { components } = await redrawnNudge(userId, person, nudge, editing)
  const body = { flags: COMPONENTS_V2, components, allowed_mentions: { parse: [] } }
  await editing.rest.patch(`/channels/${channelId}/messages/${messageId}`, { body })
}

/**
 * Draws the reminders anew that something answers, or takes back, which was recorded by an attempt: be it a press on one of
 * them, a command, or a button somewhere else. Those that are no longer kept stay as they are. Never throws: what was recorded
 * is, and its owner was told.
 */
export async function redrawNudges(userId: string, attempt: string, editing: NudgeEditing): Promise<void> {
  const guarded = async (what: string, work: () => Promise<void>): Promise<void> => {
    try {
      await work()
    } catch (error) {
      if (codeOf(error) !== UNKNOWN_MESSAGE) editing.log(`${what}: ${restFault(error) ?? trace(error)}`)
    }
  }
  await guarded(`nudges of ${userId}`, async () => {
    const answered = nudgesAnsweredBy(await editing.store.read(userId), attempt)
    for (const nudge of answered) {
      const edit = () => redraw(userId, nudge, editing)
      await guarded(`editing nudge ${nudge.id}`, () => editing.inTurn(nudge.postedIn.messageId, edit))
    }
  })
}
