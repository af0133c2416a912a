import type { REST } from 'discord.js'
import type { ProvePlace } from '../../chat/command.ts'
import { nudgeFault } from '../rest/nudge-fault.ts'
import { codeOf } from '../rest/rest-fault.ts'
import type { MessagePayload } from '../show/message-payload.ts'

/** Whoever chooses waits for it. */
const MOST_MS = 8000

interface Proving {
  readonly userId: string
  readonly rest: Pick<REST, 'post'>
  /** Says that reminders come there. */
  readonly message: () => MessagePayload
  readonly log: (text: string) => void
}

/** Sends one message by the bot's own rights, as reminders are, to the place that somebody chooses. */
export const provePlaceBy =
  ({ userId, rest, message, log }: Proving): ProvePlace =>
  async (place) => {
    if (place.kind === 'console') return 'failed'
    const signal = AbortSignal.timeout(MOST_MS)
    const channel = async (): Promise<string> => {
      if (place.kind === 'channel') return place.channelId
      const opened = await rest.post('/users/@me/channels', { body: { recipient_id: userId }, signal })
      return (opened as { readonly id: string }).id
    }
    try {
      await rest.post(`/channels/${await channel()}/messages`, { body: message(), signal })
      return 'sent'
    } catch (error) {
      log(`proving a place of ${userId}: Discord says ${String(codeOf(error))}`)
      return nudgeFault(error) === 'impossible' ? 'closed' : 'failed'
    }
  }
