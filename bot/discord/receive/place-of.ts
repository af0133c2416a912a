import type { BaseInteraction } from 'discord.js'
import type { Place } from '../../../store/person.ts'

/** Discord's number for direct messages with the bot itself. */
const BOT_DM = 1

/** Where somebody asks: the channel, or in private with the bot. */
export const placeOf = ({ context, guildId, channelId }: BaseInteraction): Place => {
  const isPrivate = context === null ? guildId === null : context === BOT_DM
  return isPrivate || channelId === null ? { kind: 'private' } : { kind: 'channel', channelId }
}

/** Whether nobody else reads along; not so in a group, nor where Discord does not say. */
export const isAloneIn = ({ context }: Pick<BaseInteraction, 'context'>): boolean => context === BOT_DM
