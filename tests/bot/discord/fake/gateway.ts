import type { IncomingMessage, Server } from 'node:http'
import type { Duplex } from 'node:stream'
import { type WebSocket, WebSocketServer } from 'ws'
import { isRecord, type Json } from './json.ts'
import { applicationJson, guildCreateJson, userJson } from './place-json.ts'
import { placeOf, type Shard, shardOf } from './shard-of.ts'
import type { World } from './world.ts'

const OP = { dispatch: 0, heartbeat: 1, identify: 2, resume: 6, reconnect: 7, invalid: 9, hello: 10, ack: 11 } as const
export const INTENT = { guilds: 1 << 0, guildMessages: 1 << 9, directMessages: 1 << 12 } as const
/** Members, presences, contents of messages: an application has to be granted them. */
const PRIVILEGED = (1 << 1) | (1 << 8) | (1 << 15)

interface Session {
  readonly id: string
  readonly intents: number
  readonly shard: Shard
  last: number
  readonly log: { readonly op: 0; readonly t: string; readonly s: number; readonly d: Json }[]
  socket: WebSocket | undefined
}

export interface Gateway {
  /** What has happened so far. */
  readonly counts: { identifies: number; resumes: number; heartbeats: number; connections: number }
  /** Sends an event to the session of its place that wants it; one whose connection is down gets it when it resumes. */
  readonly dispatch: (event: string, data: Json, intent?: number) => void
  readonly sessions: () => readonly (Pick<Session, 'id' | 'intents' | 'shard'> & { readonly isConnected: boolean })[]
  /** Closes every connection, or those of one shard, with a code of Discord's (4004, 4009, …), or tears it (1006) without one. */
  readonly close: (code?: number, shardId?: number) => void
  /** Gives a shard no READY, until `free`. */
  readonly hold: (shardId: number) => void
  readonly free: () => void
  /** Answers the next handshakes with this status instead, until `undefined`. */
  readonly refuse: (status: number | undefined) => void
  /** Closes with this code instead of READY, until `undefined`. */
  readonly closeOnIdentify: (code: number | undefined, shardId?: number) => void
  /** Says that the session is invalid; it may be resumed, or has to begin anew. */
  readonly invalidate: (isResumable: boolean) => void
  /** Tells every client to reconnect. */
  readonly reconnect: () => void
  /** Drops what was kept for a resume. */
  readonly forget: () => void
  readonly stop: () => Promise<void>
}

/** The gateway of the fake on the server's own port. */
export const startGateway = (server: Server, world: World, url: string, heartbeatMs: number): Gateway => {
  const wss = new WebSocketServer({ noServer: true })
  const counts = { identifies: 0, resumes: 0, heartbeats: 0, connections: 0 }
  const sessions = new Map<string, Session>()
  let refusal: number | undefined
  let identifyCode: { readonly code: number; readonly shardId: number | undefined } | undefined
  let begun = 0
  const shards = new Map<WebSocket, number>()
  const held = new Map<number, (() => void) | undefined>()

  const send = (socket: WebSocket, payload: Json): void => socket.send(JSON.stringify(payload))
  const dispatchTo = (session: Session, t: string, d: Json): void => {
    session.last += 1
    const event = { op: OP.dispatch, t, s: session.last, d } as const
    session.log.push(event)
    if (session.socket) send(session.socket, event)
  }

  /** The code with which an identify is refused: 4004 authentication failed, 4011 too few shards, 4014 disallowed intents. */
  const refusedWith = ({ token, intents }: Json, [shardId, count]: Shard): number | undefined => {
    const planned =
      identifyCode?.shardId === undefined || identifyCode.shardId === shardId ? identifyCode?.code : undefined
    if (planned !== undefined || token !== world.token) return planned ?? 4004
    if (count < world.leastShards) return 4011
    return Number(intents) & PRIVILEGED ? 4014 : undefined
  }

  const begin = (socket: WebSocket, intents: number, shard: Shard): void => {
    begun += 1
    const session: Session = { id: `session-${begun}`, intents, shard, last: 0, log: [], socket }
    sessions.set(session.id, session)
    const [shardId, count] = shard
    const guilds = [...world.guilds.values()].filter(({ hasBot, id }) => hasBot && shardOf(id, count) === shardId)
    dispatchTo(session, 'READY', {
      v: 10,
      user: userJson(world.bot),
      application: { id: world.applicationId, flags: applicationJson(world).flags },
      guilds: guilds.map(({ id }) => ({ id, unavailable: true })),
      session_id: session.id,
      resume_gateway_url: url,
      shard: [...shard],
    })
    if ((session.intents & INTENT.guilds) === 0) return
    for (const guild of guilds)
      if (!guild.isUnavailable) dispatchTo(session, 'GUILD_CREATE', guildCreateJson(guild, world))
  }

  const resume = (socket: WebSocket, { token, session_id: id, seq }: Json): void => {
    const session = token === world.token ? sessions.get(String(id)) : undefined
    if (session) {
      session.socket = socket
      for (const event of session.log.filter(({ s }) => s > Number(seq))) send(socket, event)
      dispatchTo(session, 'RESUMED', {})
    } else send(socket, { op: OP.invalid, d: false })
  }

  wss.on('connection', (socket: WebSocket) => {
    counts.connections += 1
    socket.on('error', () => undefined)
    socket.on('message', (data) => {
      const { op, d } = JSON.parse(String(data)) as Json
      if (op === OP.identify && isRecord(d)) {
        counts.identifies += 1
        const shard = (d.shard ?? [0, 1]) as unknown as Shard
        shards.set(socket, shard[0])
        const code = refusedWith(d, shard)
        const act = () => begin(socket, Number(d.intents), shard)
        if (code !== undefined) socket.close(code)
        else if (held.has(shard[0])) held.set(shard[0], act)
        else act()
      } else if (op === OP.resume && isRecord(d)) {
        counts.resumes += 1
        shards.set(socket, sessions.get(String(d.session_id))?.shard[0] ?? 0)
        resume(socket, d)
      } else if (op === OP.heartbeat) {
        counts.heartbeats += 1
        send(socket, { op: OP.ack })
      }
    })
    socket.on('close', (code) => {
      shards.delete(socket)
      for (const session of sessions.values()) {
        if (session.socket !== socket) continue
        session.socket = undefined
        // A client that says goodbye ends its session; any other end can be resumed.
        if (code === 1000 || code === 1001) sessions.delete(session.id)
      }
    })
    send(socket, { op: OP.hello, d: { heartbeat_interval: heartbeatMs } })
  })

  server.on('upgrade', (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    if (refusal === undefined) {
      wss.handleUpgrade(request, socket, head, (accepted) => wss.emit('connection', accepted, request))
      return
    }
    socket.end(`HTTP/1.1 ${refusal} Refused\r\nconnection: close\r\ncontent-length: 0\r\n\r\n`)
  })

  const each = (act: (socket: WebSocket) => void): void => {
    for (const socket of wss.clients) act(socket)
  }
  return {
    counts,
    dispatch: (event, data, intent) => {
      for (const session of sessions.values())
        if (
          (intent === undefined || session.intents & intent) &&
          session.shard[0] === shardOf(placeOf(event, data), session.shard[1])
        )
          dispatchTo(session, event, data)
    },
    sessions: () =>
      [...sessions.values()].map(({ id, intents, shard, socket }) => ({ id, intents, shard, isConnected: !!socket })),
    close: (code, shardId) =>
      each((socket) => {
        if (shardId !== undefined && shards.get(socket) !== shardId) return
        if (code === undefined) socket.terminate()
        else socket.close(code)
      }),
    hold: (shardId) => {
      held.set(shardId, undefined)
    },
    free: () => {
      const waiting = [...held.values()]
      held.clear()
      for (const act of waiting) act?.()
    },
    refuse: (status) => {
      refusal = status
    },
    closeOnIdentify: (code, shardId) => {
      identifyCode = code === undefined ? undefined : { code, shardId }
    },
    invalidate: (isResumable) => {
      if (!isResumable) sessions.clear()
      each((socket) => send(socket, { op: OP.invalid, d: isResumable }))
    },
    reconnect: () => each((socket) => send(socket, { op: OP.reconnect, d: null })),
    forget: () => {
      for (const session of sessions.values()) session.log.length = 0
    },
    stop: async () => {
      each((socket) => socket.terminate())
      await new Promise((done) => wss.close(done))
    },
  }
}
