import type { Guild } from 'discord.js'
import { trace } from '../../chat/trace.ts'
import type { DiscordText } from '../../text/discord-text.ts'
import { restFault } from '../rest/rest-fault.ts'

/** Where new things are told in a server, else the first channel where the bot may write; null where it may nowhere. */
async function placeIn(guild: Guild) {
  const { ChannelType, PermissionFlagsBits } = await import('discord.js')
  const needed = PermissionFlagsBits.ViewChannel | PermissionFlagsBits.SendMessages
  const texts = [...guild.channels.cache.values()].filter((channel) => channel.type === ChannelType.GuildText)
  const inOrder = [guild.systemChannel, ...texts.toSorted((one, other) => one.rawPosition - other.rawPosition)]
  const { me } = guild.members
  return inOrder.find((channel) => channel !== null && me !== null && channel.permissionsFor(me).has(needed)) ?? null
}

/** Says hello where the bot was just added to a server, once and where it may. Never throws. */
export async function greet(guild: Guild, { hello }: DiscordText, log: (text: string) => void): Promise<void> {
  try {
    const place = await placeIn(guild)
    await place?.send({ content: hello(), allowedMentions: { parse: [] } })
  } catch (error) {
    // A server may forbid what its rights allow.
    if (restFault(error) === null) log(`greeting: ${trace(error)}`)
  }
}
