import type { Client } from 'discord.js'
import { trace } from '../../chat/trace.ts'
import type { StopReminding } from '../../reminders/start-reminders.ts'
import type { ConnectionFault } from '../../text/discord-text.ts'
import type { InteractionDesk } from '../receive/interaction-context.ts'
import { type Interactions, interactionsFor } from '../receive/on-interaction.ts'
import { messageForBot } from '../receive/on-message.ts'
import { restFault } from '../rest/rest-fault.ts'
import { atMost } from '../rest/timeout.ts'
import { greet } from './greet.ts'
import { takeAwayLeft } from './left-commands.ts'
import { answersRest, newClient, type Sending } from './new-client.ts'
import { registerIfChanged } from './register.ts'
import { registrationOf } from './registration.ts'
import { newShards, type Shards } from './shards.ts'
import { isToken } from './token.ts'

/** What discord.js says of a gateway that does not let the bot in; it has no codes for it. */
const SAID: readonly (readonly [said: RegExp, fault: ConnectionFault])[] = [
  [/^Authentication failed$/, 'wrong_token'],
  [/^Not enough sessions remaining/, 'too_often'],
  [/^Used (?:in|dis)\S+ intents$|^Sharding is required$/, 'refused'],
  [/^Unexpected server response: 5\d\d$/, 'server_fault'],
  [/^Unexpected server response: [34]\d\d$/, 'refused'],
]

/** Why a login failed; `unknown` is a fault of ours. */
const loginFault = (error: unknown): ConnectionFault => {
  if (!(error instanceof Error)) return 'unknown'
  if ((error as { readonly code?: unknown }).code === 'TokenInvalid') return 'wrong_token'
  const said = SAID.find(([message]) => message.test(error.message))
  if (said !== undefined) return said[1]
  const fault = restFault(error)
  if (fault === null) return 'unknown'
  return fault === 'no_rights' || fault === 'not_taken' ? 'refused' : fault
}

/** How long stopping waits for what is open; then it is left as it is. */
const MOST_STOPPING_MS = 10_000

export interface ConnectionDesk extends Omit<InteractionDesk, 'answers' | 'rest'>, Sending {
  readonly token: string
  /** Where commands are registered; null: everywhere. */
  readonly guildId: string | null
  /** Ends it. */
  readonly ended: AbortSignal
  /** @param heardMs - when Discord was last heard of; null before it ever was */
  readonly remind: (client: Client<true>, heardMs: () => number | null) => Promise<StopReminding>
}

const aborted = (signal: AbortSignal): Promise<'ended'> =>
  new Promise((resolve) => {
    if (signal.aborted) resolve('ended')
    else signal.addEventListener('abort', () => resolve('ended'), { once: true })
  })

/** Whether the commands are registered as they are now; their numbers go into `ids`. */
const registerAtStart = async (
  client: Client<true>,
  desk: ConnectionDesk,
  ids: Map<string, string>,
): Promise<boolean> => {
  const { commands, language, guildId, log } = desk
  const { connection, registration } = language
  const all = registrationOf(commands, language)
  try {
    const registered = await registerIfChanged(client.rest, {
      applicationId: client.application.id,
      guildId,
      commands: all,
    })
    for (const [name, id] of registered.ids) ids.set(name, id)
    log(registered.isChanged ? registration.registered({ count: all.length, guildId }) : connection.unchanged())
    return true
  } catch (error) {
    const fault = restFault(error)
    if (fault === null) log(trace(error))
    const sentence = fault === null ? language.problems.internal() : registration.faults[fault]({ guildId })
    log(connection.notRegistered({ sentence }))
    return false
  }
}

/** Logs in; resolves when a first connection is there, or with why none can be. */
const logIn = async (
  client: Client,
  desk: ConnectionDesk,
  { up }: Shards,
): Promise<'ready' | 'ended' | ConnectionFault> => {
  const isReady = up.then(() => 'ready' as const)
  try {
    return await Promise.race([isReady, client.login(desk.token).then(() => isReady), aborted(desk.ended)])
  } catch (error) {
    const fault = loginFault(error)
    if (fault === 'unknown') desk.log(trace(error))
    return fault
  }
}

interface Working {
  readonly interactions: Interactions
  readonly shards: Shards
  readonly desk: ConnectionDesk
  readonly commandIds: Map<string, string>
}

/** Works until it is ended or Discord ends it. */
const work = async (
  client: Client<true>,
  { interactions, shards, desk, commandIds }: Working,
): Promise<'lost' | 'outgrown' | 'ended'> => {
  const { log, language, after, ended } = desk
  const { connection } = language
  const { user, guilds } = client
  log(connection.connected({ name: user.username, id: user.id, servers: guilds.cache.size, of: shards.count() }))
  // Those left in a server are better than none.
  if (await registerAtStart(client, desk, commandIds)) void takeAwayLeft(client, desk)
  const reminding = desk.remind(client, shards.heardMs)
  reminding.catch((error: unknown) => log(`reminders: ${trace(error)}`))
  const why = await Promise.race([shards.lost, aborted(ended)])
  if (why === 'ended') log(connection.stopping())
  const reminded = reminding.then((stop) => stop()).catch(() => undefined)
  await Promise.all([interactions.stop(MOST_STOPPING_MS), atMost(MOST_STOPPING_MS, reminded, after)])
  return why
}

/**
 * Connects to Discord and answers there until `ended`; returns the exit code. discord.js is loaded here and not before.
 * What goes wrong is said in one sentence, and the token is never part of it.
 */
export async function connect(desk: ConnectionDesk): Promise<0 | 1> {
  const { token, log, language } = desk
  const { faults, stopped } = language.connection
  if (!isToken(token)) {
    log(faults.wrong_token())
    return 1
  }
  const discord = await import('discord.js')
  const shards = newShards(discord, { ...desk, connection: language.connection })
  const client = newClient(discord, desk, shards.buildStrategy)
  shards.watch(client)
  const commandIds = new Map<string, string>()
  const interactions = interactionsFor({ ...desk, commandIds, answers: answersRest(discord, desk), rest: client.rest })
  client.on('error', (error) => log(trace(error)))
  client.on('guildCreate', (guild) => void greet(guild, desk.language.discord, log))
  client.on('interactionCreate', (interaction) => {
    interactions.handle(interaction)
    // discord.js would remember everybody's direct messages for good.
    if (!interaction.inGuild() && interaction.channelId !== null) client.channels.cache.delete(interaction.channelId)
  })
  // As they come: discord.js would look up and remember the channel and the writer of each.
  client.on('raw', ({ t, d }: { readonly t: unknown; readonly d: unknown }) => {
    const botId = client.user?.id
    const message = t === 'MESSAGE_CREATE' && botId !== undefined ? messageForBot(d, botId) : null
    if (message !== null && botId !== undefined) interactions.hear(message, botId)
  })
  const connected = await logIn(client, desk, shards)
  const ending =
    connected === 'ready' ? await work(client as Client<true>, { interactions, shards, desk, commandIds }) : connected
  await client.destroy()
  log(ending === 'ended' ? stopped() : faults[ending]())
  return ending === 'ended' ? 0 : 1
}
