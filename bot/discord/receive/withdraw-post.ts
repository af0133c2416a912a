import type { REST } from 'discord.js'
import type { WithdrawPost } from '../../chat/command.ts'
import { trace } from '../../chat/trace.ts'
import { UNKNOWN_CHANNEL } from '../rest/nudge-fault.ts'
import { codeOf, restFault } from '../rest/rest-fault.ts'
import { COMPONENTS_V2, messageOf } from '../show/message-payload.ts'

/** Discord's numbers for a message or a whole channel that is not there. */
const GONE: readonly unknown[] = [10008, UNKNOWN_CHANNEL]

interface Withdrawing {
  readonly rest: Pick<REST, 'patch'>
  /** Takes the place of all that the message showed. */
  readonly sentence: string
  readonly log: (text: string) => void
}

/** Of messages of the bot's own, by its rights in their place: those of an interaction end after a quarter of an hour. */
export const withdrawPostBy =
  ({ rest, sentence, log }: Withdrawing): WithdrawPost =>
  async ({ channelId, messageId }) => {
    const { components, allowed_mentions } = messageOf([sentence], [], { isPrivate: false, pinged: null })
    const body = { flags: COMPONENTS_V2, components, attachments: [], allowed_mentions }
    try {
      await rest.patch(`/channels/${channelId}/messages/${messageId}`, { body })
      return 'changed'
    } catch (error) {
      if (GONE.includes(codeOf(error))) return 'gone'
      const fault = restFault(error)
      if (fault === 'no_rights') return 'out_of_reach'
      log(`withdrawing post ${messageId}: ${fault ?? trace(error)}`)
      return 'failed'
    }
  }
