import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { commandActs } from './command-acts.ts'
import { fakeClock } from './fake-clock.ts'
import { INTENT, startGateway } from './gateway.ts'
import type { Context } from './handler.ts'
import type { Interactions } from './interactions.ts'
import { messageActs } from './message-acts.ts'
import { newOutages } from './outages.ts'
import { placeActs } from './place-acts.ts'
import { DISCORDS_LIMITS, newBuckets, type RateLimits } from './rate-buckets.ts'
import { handleRequest, type Rest } from './rest.ts'
import type { RouteName } from './routes.ts'
import { addChannel, addGuild, addUser, newWorld, type World } from './world.ts'

export interface FakeOptions {
  /** The test's own clock; when left out, time stands still but for `advance`. */
  readonly nowMs?: () => number
  /** Counts requests into buckets and answers 429 when one is spent; what is left out is as Discord does it. */
  readonly rateLimits?: Partial<RateLimits>
  readonly heartbeatMs?: number
  /** How many shards Discord asks for; 1 when left out. */
  readonly shards?: number
  /** Ids of people and places, by a name such as `user wren`; when left out, each is a new one. */
  readonly idFor?: (what: string) => string
}

const TOKEN = 'MTAx.fake.token-of-the-fake'
const HEARTBEAT_MS = 41_250

const serveFile = (world: World, url: string): { readonly status: number; readonly bytes: Uint8Array } => {
  const file = world.files.get(url.split('?')[0]!)
  return file ? { status: 200, bytes: file.bytes } : { status: 404, bytes: new Uint8Array() }
}

const listen = async (server: Server): Promise<number> => {
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  return (server.address() as AddressInfo).port
}

/**
 * A Discord of our own on loopback: REST and gateway on one port, one server with one channel, one person. Give `api` to
 * discord.js as `rest.api`, log in with `token`, and look at `faults()` at the end.
 */
export const startFake = async (options: FakeOptions = {}) => {
  const clock = fakeClock(options.nowMs)
  const world = newWorld(clock, TOKEN, options.idFor)
  world.leastShards = options.shards ?? 1
  const interactions: Interactions = new Map()
  const guild = addGuild(world, 'Allotment society')
  const channel = addChannel(world, { kind: 'guild', name: 'shelf', guild, people: [] })
  const user = addUser(world, 'wren')
  guild.members.add(user)

  const server = createServer()
  const port = await listen(server)
  world.filesUrl = `http://127.0.0.1:${port}`
  const gatewayUrl = `ws://127.0.0.1:${port}`
  const gateway = startGateway(server, world, gatewayUrl, options.heartbeatMs ?? HEARTBEAT_MS)
  const announce: Context['announce'] = (event, { json, channel: { guild: place } }) =>
    gateway.dispatch(
      event,
      { ...json, ...(place && { guild_id: place.id }) },
      place ? INTENT.guildMessages : INTENT.directMessages,
    )
  const rest: Rest = {
    context: { world, interactions, announce, gatewayUrl },
    outages: newOutages(),
    buckets: options.rateLimits && newBuckets({ ...DISCORDS_LIMITS, ...options.rateLimits }),
    requests: [],
    faults: [],
    counts: { rateLimited: 0 },
  }
  server.on('request', (request, response) => {
    if (request.url?.startsWith('/attachments/')) {
      const { status, bytes } = serveFile(world, request.url)
      response.writeHead(status).end(bytes)
      return
    }
    handleRequest(rest, request, response).catch((error: unknown) => {
      const problems = [`the fake itself failed: ${error instanceof Error ? error.stack : String(error)}`]
      rest.faults.push({ method: request.method ?? '', path: request.url ?? '', body: undefined, problems })
      response.destroy()
    })
  })
  const stage = { world, gateway, interactions, user, channel }
  return {
    /** For discord.js' `rest.api`. */
    api: `http://127.0.0.1:${port}/api`,
    token: TOKEN,
    applicationId: world.applicationId,
    bot: world.bot,
    guild,
    channel,
    user,
    clock,
    gateway,
    ...commandActs(stage),
    ...messageActs(stage),
    ...placeActs(world, gateway),
    guilds: () => [...world.guilds.values()],
    /** The list of commands of a guild, or the global one. */
    commands: (guildId = '') => world.commands.get(guildId) ?? [],
    /** Plans that requests of a route go wrong. */
    outage: rest.outages.plan,
    /** Every request so far, of one route or all. */
    requests: (route?: RouteName | 'unknown') =>
      rest.requests.filter((one) => route === undefined || one.route === route),
    /** What the bot has sent that is not valid; has to be empty at the end of a test. */
    faults: () => rest.faults as readonly (typeof rest.faults)[number][],
    /** How many requests were answered 429 because the bot was too fast. */
    rateLimited: () => rest.counts.rateLimited,
    /** Drops what is kept of requests, interactions and messages, so that many can be measured. */
    forget: () => {
      rest.requests.length = 0
      interactions.clear()
      world.nonces.clear()
      world.files.clear()
      gateway.forget()
      for (const { messages } of world.channels.values()) messages.clear()
    },
    stop: async () => {
      await gateway.stop()
      server.closeAllConnections()
      await new Promise((done) => server.close(done))
    },
  }
}

export type FakeDiscord = Awaited<ReturnType<typeof startFake>>
