import type { REST } from 'discord.js'
import type { InTurn } from '../../../store/queue.ts'
import { nudgeFault, UNKNOWN_MEMBER } from '../rest/nudge-fault.ts'
import { codeOf } from '../rest/rest-fault.ts'
import type { Pace } from '../rest/send-pace.ts'

/** For so long nobody knocks at a place again that was found closed. */
const CLOSED_MS = 10 * 60_000
const MOST_CHANNELS = 10_000

/** In the place of a server's number. */
const CLOSED = 'closed'

/** What is known of channels, in memory only. */
export interface NudgePlaces {
  /** Whether somebody may still be reminded there: not where the channel is gone or closed to us, nor where they left. */
  isOpenTo(channelId: string, userId: string, signal: AbortSignal): Promise<boolean>
  /** It was found closed. */
  close(channelId: string): void
}

interface Knowing {
  readonly rest: Pick<REST, 'get'>
  readonly now: () => number
  readonly inTurn: InTurn
  readonly pace: Pace
}

export const nudgePlaces = ({ rest, now, inTurn, pace }: Knowing): NudgePlaces => {
  const guilds = new Map<string, string | null>()
  const closedMs = new Map<string, number>()

  const isClosed = (channelId: string): boolean => {
    const agoMs = now() - (closedMs.get(channelId) ?? Number.NEGATIVE_INFINITY)
    if (agoMs >= 0 && agoMs < CLOSED_MS) return true
    closedMs.delete(channelId)
    return false
  }

  const guildOf = async (channelId: string, signal: AbortSignal): Promise<string | null> => {
    const known = guilds.get(channelId)
    if (known !== undefined) return known
    await pace()
    const channel = (await rest.get(`/channels/${channelId}`, { signal })) as { readonly guild_id?: string }
    const [oldest] = guilds.keys()
    if (guilds.size >= MOST_CHANNELS && oldest !== undefined) guilds.delete(oldest)
    guilds.set(channelId, channel.guild_id ?? null)
    return channel.guild_id ?? null
  }

  const isThere = async (guildId: string, userId: string, signal: AbortSignal): Promise<boolean> => {
    await pace()
    try {
      await rest.get(`/guilds/${guildId}/members/${userId}`, { signal })
      return true
    } catch (error) {
      // Anything else that is wrong, sending will tell.
      return codeOf(error) !== UNKNOWN_MEMBER
    }
  }

  const close = (channelId: string): void => {
    closedMs.set(channelId, now())
    guilds.delete(channelId)
  }

  /** Null: in no server. */
  const guildOrClosed = async (channelId: string, signal: AbortSignal): Promise<string | null> => {
    if (isClosed(channelId)) return CLOSED
    try {
      return await guildOf(channelId, signal)
    } catch (error) {
      if (nudgeFault(error) !== 'impossible') return null
      close(channelId)
      return CLOSED
    }
  }

  return {
    close,
    async isOpenTo(channelId, userId, signal) {
      const guildId = await inTurn(`channel ${channelId}`, () => guildOrClosed(channelId, signal))
      if (guildId === CLOSED || guildId === null) return guildId === null
      return inTurn(`guild ${guildId}`, () => isThere(guildId, userId, signal))
    },
  }
}
