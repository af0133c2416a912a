import type { REST } from 'discord.js'
import type { Pace } from '../rest/send-pace.ts'

/** The channels of direct messages with people, by their numbers; kept in memory only. */
export interface DirectMessages {
  /** Opens it where it is not known. What the network or Discord fail at comes out. */
  channelOf(userId: string, signal?: AbortSignal): Promise<string>
  forget(userId: string): void
}

const MOST_KNOWN = 10_000

export const directMessages = (rest: Pick<REST, 'post'>, pace: Pace): DirectMessages => {
  const known = new Map<string, string>()
  return {
    async channelOf(userId, signal) {
      const before = known.get(userId)
      if (before !== undefined) return before
      await pace()
      const body = { recipient_id: userId }
      const { id } = (await rest.post('/users/@me/channels', { body, ...(signal && { signal }) })) as {
        readonly id: string
      }
      const [oldest] = known.keys()
      if (known.size >= MOST_KNOWN && oldest !== undefined) known.delete(oldest)
      known.set(userId, id)
      return id
    },
    forget: (userId) => {
      known.delete(userId)
    },
  }
}
