import type { Client, REST, RESTOptions } from 'discord.js'

import { rejectsLongWaits } from '../nudges/nudge-surface.ts'
import type { Shards } from './shards.ts'

/** People and messages that discord.js may remember; nothing here looks them up again. */
const MOST_REMEMBERED = 100

/** Of answers: two tries fit into the three seconds that Discord waits. */
const ANSWER_MS = 1200

/** discord.js remembers a pace for every interaction until it looks again. */
const SWEEP_MS = 60_000

type Discord = typeof import('discord.js')

/** Where requests go, and how, where not as usual. */
export interface Sending {
  /** Base address of Discord's REST, without its version; null: Discord's own. */
  readonly api: string | null
  readonly sending?: Partial<RESTOptions>
}

const optionsOf = ({ api, sending }: Sending): Partial<RESTOptions> => ({ ...(api !== null && { api }), ...sending })

/** A client that hears of servers, of messages and of what is asked of it, remembers none of them, and pings nobody by itself. */
export function newClient(
  { Client: Made, GatewayIntentBits, Options }: Discord,
  sending: Sending,
  buildStrategy: Shards['buildStrategy'],
): Client {
  const isOwn = ({ id }: { readonly id: string }): boolean => id === client.user?.id
  const few = { maxSize: MOST_REMEMBERED, keepOverLimit: isOwn }
  const client: Client = new Made({
    // Messages in private, and those that name the bot, bring their text without a privileged intent.
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages],
    // No shard may have more than 2,500 servers; Discord says how many it takes.
    shards: 'auto',
    ws: { buildStrategy },
    allowedMentions: { parse: [] },
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      MessageManager: 0,
      UserManager: few,
      GuildMemberManager: few,
      DMMessageManager: 0,
      GuildMessageManager: 0,
    }),
    rest: { rejectOnRateLimit: rejectsLongWaits, ...optionsOf(sending) },
  })
  return client
}

/** What answers are sent with: they need no token, and Discord counts them into no pace of the bot's. */
export const answersRest = ({ REST: Made }: Discord, sending: Sending): REST =>
  new Made({
    timeout: ANSWER_MS,
    retries: 1,
    globalRequestsPerSecond: Number.POSITIVE_INFINITY,
    handlerSweepInterval: SWEEP_MS,
    ...optionsOf(sending),
  })
