import type { Client, ClientOptions } from 'discord.js'
import type { ConnectionText } from '../../text/discord-text.ts'

type Discord = typeof import('discord.js')

type BuildStrategy = NonNullable<NonNullable<ClientOptions['ws']>['buildStrategy']>

/** The event of discord.js's inner manager that its client passes on as a text only. */
interface Heartbeats {
  on(event: 'heartbeat', listener: (beat: { readonly shardId: number }) => void): unknown
}

interface ShardsDesk {
  readonly connection: Pick<ConnectionText, 'dropped' | 'resumed' | 'oneLost' | 'allConnected'>
  readonly ended: AbortSignal
  readonly now: () => number
  readonly log: (text: string) => void
}

/** The connections to Discord: each has some of the servers, and none waits for another. */
export interface Shards {
  /** For discord.js. */
  readonly buildStrategy: BuildStrategy
  /** Has to be called before the login. */
  readonly watch: (client: Client) => void
  /** Resolves with the first that is there. */
  readonly up: Promise<void>
  /** Resolves when Discord has ended each of them for good, or asks for more of them, which takes another start. */
  readonly lost: Promise<'lost' | 'outgrown'>
  readonly count: () => number
  /** When Discord last acknowledged the one that it has been silent to for longest; null before there is any. */
  readonly heardMs: () => number | null
}

interface Shard {
  state: 'connecting' | 'up' | 'down' | 'gone'
  wasUp: boolean
  heardMs: number
}

/** A promise and what settles it. */
const settling = <Result>() => {
  let resolve: (result: Result) => void = () => undefined
  let reject: (why: unknown) => void = () => undefined
  const promise = new Promise<Result>((resolved, rejected) => {
    resolve = resolved
    reject = rejected
  })
  return { promise, resolve, reject }
}

export function newShards(discord: Discord, { connection, ended, now, log }: ShardsDesk): Shards {
  const { GatewayCloseCodes, GatewayDispatchEvents, SimpleShardingStrategy, Status } = discord
  const shards = new Map<number, Shard>()
  const failing = new Set<number>()
  const [up, lost, allFailing] = [settling<void>(), settling<'lost' | 'outgrown'>(), settling<never>()]
  allFailing.promise.catch(() => undefined)
  const all = (is: (shard: Shard) => boolean): boolean => [...shards.values()].every(is)
  const isAnyUp = (): boolean => !all(({ wasUp }) => !wasUp)
  const named = (id: number) => ({ number: id + 1, of: shards.size })

  class Independent extends SimpleShardingStrategy {
    override async spawn(ids: number[]): Promise<void> {
      for (const id of ids) shards.set(id, { state: 'connecting', wasUp: false, heardMs: now() })
      await super.spawn(ids)
    }
    /** The first that fails would end the login, and with it all others. */
    override async connect(): Promise<void> {
      await super.connect().catch(() => allFailing.promise)
    }
  }

  const onThere = (id: number, { guilds }: Client): void => {
    const shard = shards.get(id)
    if (shard === undefined) return
    if (shard.state === 'down') log(connection.resumed(named(id)))
    const isNew = !shard.wasUp
    Object.assign(shard, { state: 'up', wasUp: true, heardMs: now() })
    up.resolve()
    if (isNew && shards.size > 1 && all(({ wasUp }) => wasUp))
      log(connection.allConnected({ of: shards.size, servers: guilds.cache.size }))
  }
  const onDown = (id: number): void => {
    const shard = shards.get(id)
    if (shard === undefined || ended.aborted || !isAnyUp()) return
    if (shard.state !== 'down') log(connection.dropped(named(id)))
    shard.state = 'down'
  }
  const onGone = (id: number, code: number): void => {
    const shard = shards.get(id)
    if (shard !== undefined) shard.state = 'gone'
    if (code === GatewayCloseCodes.ShardingRequired) lost.resolve('outgrown')
    else if (all(({ state }) => state === 'gone')) lost.resolve('lost')
    else log(connection.oneLost(named(id)))
  }

  return {
    buildStrategy: (manager) => {
      const heartbeats = manager as unknown as Heartbeats
      heartbeats.on('heartbeat', ({ shardId }) => {
        const shard = shards.get(shardId)
        // One that has no session yet hears of nobody, although it is acknowledged.
        if (shard?.state === 'up') shard.heardMs = now()
      })
      return new Independent(manager)
    },
    watch: (client) => {
      client.ws.on(GatewayDispatchEvents.Ready, (_, id) => {
        // discord.js would keep back whatever anybody asks until every shard is there, with every server.
        client.ws.status = Status.Ready
        queueMicrotask(() => onThere(id, client))
      })
      client.ws.on(GatewayDispatchEvents.Resumed, (_, id) => onThere(id, client))
      client.on('shardReconnecting', onDown)
      client.on('shardDisconnect', ({ code }, id) => onGone(id, code))
      client.on('shardError', (error, id) => {
        failing.add(id)
        if (failing.size === shards.size && !isAnyUp()) allFailing.reject(error)
      })
    },
    up: up.promise,
    lost: lost.promise,
    count: () => shards.size,
    heardMs: () => (shards.size === 0 ? null : Math.min(...[...shards.values()].map(({ heardMs }) => heardMs))),
  }
}
