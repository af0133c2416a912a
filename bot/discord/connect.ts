import type { Client } from 'discord.js'
import { trace } from '../chat/trace.ts'
import type { StopReminding } from '../reminders/start-reminders.ts'
import type { ConnectionFault } from '../text/en/connection.ts'
import { atMost } from './after.ts'
import { loginFault } from './login-fault.ts'
import { answersRest, newClient, type Sending } from './new-client.ts'
import { type Interactions, interactionsFor } from './on-interaction.ts'
import { registerIfChanged } from './register.ts'
import { registrationOf } from './registration.ts'
import { restFault } from './rest-fault.ts'
import { isToken } from './token.ts'
import type { InteractionDesk } from './turn.ts'

/** How long stopping waits for what is open; then it is left as it is. */
const MOST_STOPPING_MS = 10_000

export interface ConnectionDesk extends Omit<InteractionDesk, 'answers' | 'rest'>, Sending {
  readonly token: string
  /** Where commands are registered; null: everywhere. */
  readonly guildId: string | null
  /** Ends it. */
  readonly ended: AbortSignal
  readonly remind: (client: Client<true>) => Promise<StopReminding>
}

const aborted = (signal: AbortSignal): Promise<'ended'> =>
  new Promise((resolve) => {
    if (signal.aborted) resolve('ended')
    else signal.addEventListener('abort', () => resolve('ended'), { once: true })
  })

/** Tells of the connection: once when it drops, however often it is tried again, and when it is back. */
const watch = (client: Client, { log, language: { connection }, ended }: ConnectionDesk): void => {
  let isDown = false
  const back = () => {
    if (isDown) log(connection.resumed())
    isDown = false
  }
  client.on('shardReconnecting', () => {
    if (!isDown && !ended.aborted) log(connection.dropped())
    isDown = true
  })
  client.on('shardResume', back)
  client.on('shardReady', back)
}

const registerAtStart = async (client: Client<true>, desk: ConnectionDesk): Promise<void> => {
  const { commands, language, guildId, log } = desk
  const { connection, registration } = language
  const all = registrationOf(commands, language)
  try {
    const isChanged = await registerIfChanged(client.rest, {
      applicationId: client.application.id,
      guildId,
      commands: all,
    })
    log(isChanged ? registration.registered({ count: all.length, guildId }) : connection.unchanged())
  } catch (error) {
    const fault = restFault(error)
    if (fault === null) log(trace(error))
    const sentence = fault === null ? language.problems.internal() : registration.faults[fault]({ guildId })
    log(connection.notRegistered({ sentence }))
  }
}

/** Logs in; resolves when everything is there, or with why not. */
const logIn = async (
  client: Client,
  desk: ConnectionDesk,
  lost: Promise<'lost'>,
): Promise<'ready' | 'ended' | ConnectionFault> => {
  const ended = aborted(desk.ended)
  const isReady = new Promise<'ready'>((resolve) => {
    client.once('clientReady', () => resolve('ready'))
  })
  try {
    const early = await Promise.race([client.login(desk.token).then(() => null), ended])
    return early ?? (await Promise.race([isReady, lost, ended]))
  } catch (error) {
    const fault = loginFault(error)
    if (fault === 'unknown') desk.log(trace(error))
    return fault
  }
}

/** Works until it is ended or Discord ends it. */
const work = async (
  client: Client<true>,
  { interactions, lost, desk }: { interactions: Interactions; lost: Promise<'lost'>; desk: ConnectionDesk },
): Promise<'lost' | 'ended'> => {
  const { log, language, after, ended } = desk
  const { connection } = language
  const { user, guilds } = client
  watch(client, desk)
  log(connection.connected({ name: user.username, id: user.id, servers: guilds.cache.size }))
  await registerAtStart(client, desk)
  const reminding = desk.remind(client)
  reminding.catch((error: unknown) => log(`reminders: ${trace(error)}`))
  const why = await Promise.race([lost, aborted(ended)])
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
  const client = newClient(discord, desk)
  const interactions = interactionsFor({ ...desk, answers: answersRest(discord, desk), rest: client.rest })
  const lost = new Promise<'lost'>((resolve) => {
    client.on('shardDisconnect', () => resolve('lost'))
  })
  client.on('error', (error) => log(trace(error)))
  client.on('interactionCreate', (interaction) => {
    interactions.handle(interaction)
    // discord.js would remember everybody's direct messages for good.
    if (!interaction.inGuild() && interaction.channelId !== null) client.channels.cache.delete(interaction.channelId)
  })
  const connected = await logIn(client, desk, lost)
  const ending = connected === 'ready' ? await work(client as Client<true>, { interactions, lost, desk }) : connected
  await client.destroy()
  log(ending === 'ended' ? stopped() : faults[ending]())
  return ending === 'ended' ? 0 : 1
}
