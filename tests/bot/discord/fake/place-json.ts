import { PermissionFlagsBits } from 'discord.js'
import type { Json } from './json.ts'
import type { FakeChannel, FakeGuild, FakeUser, Right, World } from './world.ts'

const BOT_RIGHTS = ['ViewChannel', 'SendMessages', 'ReadMessageHistory', 'AttachFiles', 'EmbedLinks'] as const
const bits = (rights: readonly Right[]): bigint => rights.reduce((sum, right) => sum | PermissionFlagsBits[right], 0n)

/** The bot's rights in a channel, as an interaction states them in `app_permissions`. */
export const botRights = ({ denied }: FakeChannel): string =>
  String(denied.has('ViewChannel') ? 0n : bits(BOT_RIGHTS.filter((right) => !denied.has(right))))

export const userJson = ({ id, name, isBot }: FakeUser): Json => ({
  id,
  username: name,
  global_name: isBot ? null : name,
  discriminator: '0',
  avatar: null,
  public_flags: 0,
  flags: 0,
  primary_guild: null,
  ...(isBot && { bot: true }),
})

export const applicationJson = ({ applicationId, bot }: World): Json => ({
  id: applicationId,
  name: bot.name,
  icon: null,
  description: '',
  type: null,
  flags: 0,
  flags_new: '0',
  bot: userJson(bot),
  verify_key: '0'.repeat(64),
  redirect_uris: [],
  interactions_endpoint_url: null,
  role_connections_verification_url: null,
  owner: userJson({ ...bot, isBot: false }),
  approximate_guild_count: 1,
  approximate_user_install_count: 0,
  approximate_user_authorization_count: 0,
  explicit_content_filter: 0,
  team: null,
  eligible_oauth2_scopes: [],
})

export const memberJson = (user: FakeUser): Json => ({
  user: userJson(user),
  nick: null,
  avatar: null,
  banner: null,
  roles: [],
  joined_at: '2026-01-05T09:00:00.000Z',
  premium_since: null,
  communication_disabled_until: null,
  deaf: false,
  mute: false,
  pending: false,
  flags: 0,
})

export const channelJson = (channel: FakeChannel, world: World): Json => {
  const shared = { id: channel.id, flags: 0, last_message_id: [...channel.messages.keys()].at(-1) ?? null }
  if (!channel.guild) {
    const recipients = channel.people.map(userJson)
    return channel.kind === 'dm'
      ? { ...shared, type: 1, recipients }
      : { ...shared, type: 3, recipients, name: channel.name, icon: null, owner_id: channel.people[0]!.id }
  }
  const denied = [...channel.denied]
  return {
    ...shared,
    type: 0,
    guild_id: channel.guild.id,
    name: channel.name,
    position: 0,
    parent_id: null,
    topic: null,
    nsfw: false,
    rate_limit_per_user: 0,
    permission_overwrites:
      denied.length === 0 ? [] : [{ id: world.bot.id, type: 1, allow: '0', deny: String(bits(denied)) }],
  }
}

const everyone = ({ id }: FakeGuild): Json => ({
  id,
  name: '@everyone',
  permissions: String(bits(BOT_RIGHTS)),
  position: 0,
  color: 0,
  colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
  hoist: false,
  managed: false,
  mentionable: false,
  icon: null,
  unicode_emoji: null,
  flags: 0,
})

export const guildJson = (guild: FakeGuild): Json => ({
  id: guild.id,
  name: guild.name,
  icon: null,
  description: null,
  home_header: null,
  splash: null,
  discovery_splash: null,
  features: [],
  banner: null,
  owner_id: [...guild.members].find(({ isBot }) => !isBot)?.id ?? guild.id,
  application_id: null,
  region: 'deprecated',
  afk_channel_id: null,
  afk_timeout: 300,
  system_channel_id: null,
  system_channel_flags: 0,
  widget_enabled: false,
  widget_channel_id: null,
  verification_level: 0,
  roles: [everyone(guild)],
  default_message_notifications: 1,
  mfa_level: 0,
  explicit_content_filter: 0,
  max_presences: null,
  max_members: 500_000,
  max_stage_video_channel_users: 50,
  max_video_channel_users: 25,
  vanity_url_code: null,
  premium_tier: 0,
  premium_subscription_count: 0,
  preferred_locale: guild.locale,
  rules_channel_id: null,
  safety_alerts_channel_id: null,
  public_updates_channel_id: null,
  premium_progress_bar_enabled: false,
  nsfw: false,
  nsfw_level: 0,
  emojis: [],
  stickers: [],
  incidents_data: null,
})

/** A guild with all that GUILD_CREATE adds to it. */
export const guildCreateJson = (guild: FakeGuild, world: World): Json => {
  const channels = [...world.channels.values()].filter((channel) => channel.guild === guild && !channel.isDeleted)
  return {
    ...guildJson(guild),
    joined_at: '2026-01-05T09:00:00.000Z',
    large: false,
    unavailable: false,
    member_count: guild.members.size,
    members: [memberJson(world.bot)],
    channels: channels.map((channel) => channelJson(channel, world)),
    threads: [],
    presences: [],
    voice_states: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
  }
}
