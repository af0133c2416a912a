import type { APIMessage } from 'discord.js'
import { ApiError } from './api-error.ts'
import { COMPONENTS_V2, checkMessage } from './check-message.ts'
import { isRecord, type Json, type Upload } from './json.ts'
import { userJson } from './place-json.ts'
import { errorTree, type Problem } from './problem.ts'
import { shownComponents } from './shown-components.ts'
import type { FakeChannel, FakeMessage, FakeUser, World } from './world.ts'

/** How long Discord remembers a nonce: "the past few minutes" by its documentation. */
const NONCE_MS = 5 * 60_000

export const EPHEMERAL = 1 << 6
export const LOADING = 1 << 7

/** Flags that a change of the message leaves as they are. */
const LASTING = EPHEMERAL | COMPONENTS_V2

export interface NewMessage {
  readonly channel: FakeChannel
  readonly author: FakeUser
  readonly body: Json
  readonly files?: readonly Upload[]
  readonly onlyFor?: FakeUser | undefined
  /** What an answer to an interaction has besides. */
  readonly extra?: Json
}

/** Keeps the files where they can be fetched and gives them as attachments. */
const attach = (world: World, channel: FakeChannel, files: readonly Upload[], listed: unknown): readonly Json[] =>
  files.map((file) => {
    const id = world.clock.snowflake()
    const path = `/attachments/${channel.id}/${id}/${encodeURIComponent(file.name)}`
    world.files.set(path, file)
    const entries = Array.isArray(listed) ? (listed as readonly Json[]) : []
    const description = entries.find((entry) => entry.id === file.index)?.description
    return {
      id,
      filename: file.name,
      size: file.bytes.length,
      url: world.filesUrl + path,
      proxy_url: world.filesUrl + path,
      content_type: file.mime,
      ...(typeof description === 'string' && { description }),
    }
  })

/** The fields of a message that a body sets. */
const fields = (
  world: World,
  channel: FakeChannel,
  body: Json,
  files: readonly Upload[],
  kept: readonly Json[],
): Json => {
  const attachments = [...kept, ...attach(world, channel, files, body.attachments)]
  return {
    ...(body.content !== undefined && { content: body.content ?? '' }),
    ...(body.embeds !== undefined && {
      embeds: ((body.embeds ?? []) as readonly Json[]).map((embed) => ({ type: 'rich', ...embed })),
    }),
    ...(Array.isArray(body.components) && { components: shownComponents(body.components, attachments) }),
    attachments,
  }
}

const mentioned = (world: World, body: Json): readonly Json[] => {
  const allowed = isRecord(body.allowed_mentions) ? body.allowed_mentions : {}
  const ids = Array.isArray(allowed.users) ? allowed.users : []
  const text = JSON.stringify([body.content, body.components])
  return [...world.users.values()].filter(({ id }) => ids.includes(id) && text.includes(`<@${id}>`)).map(userJson)
}

const nonceKey = ({ author, body }: NewMessage): string => `${author.id}:${body.nonce}`

const remembered = (world: World, made: NewMessage): FakeMessage | undefined => {
  const before = made.body.enforce_nonce === true ? world.nonces.get(nonceKey(made)) : undefined
  return before && before.sentMs > world.clock.nowMs() - NONCE_MS ? before : undefined
}

/** Makes a message, or gives the one that the same nonce has made already. */
export const createMessage = (
  world: World,
  made: NewMessage,
): { readonly message: FakeMessage; readonly isNew: boolean } => {
  const before = remembered(world, made)
  if (before) return { message: before, isNew: false }
  const { channel, author, body, files = [], onlyFor, extra } = made
  const sentMs = world.clock.nowMs()
  const json = {
    id: world.clock.snowflake(),
    channel_id: channel.id,
    type: 0,
    author: userJson(author),
    content: '',
    embeds: [],
    components: [],
    mentions: mentioned(world, body),
    mention_roles: [],
    mention_everyone: false,
    pinned: false,
    tts: false,
    timestamp: new Date(sentMs).toISOString(),
    edited_timestamp: null,
    flags: typeof body.flags === 'number' ? body.flags : 0,
    ...(body.nonce !== undefined && { nonce: body.nonce }),
    ...fields(world, channel, body, files, []),
    ...extra,
  }
  const message = {
    channel,
    author,
    json: json as unknown as APIMessage,
    files,
    onlyFor,
    sentMs,
    edits: 0,
    isDeleted: false,
  }
  if (!onlyFor) channel.messages.set(message.json.id, message)
  if (body.nonce !== undefined) world.nonces.set(nonceKey(made), message)
  return { message, isNew: true }
}

export interface Change {
  readonly body: Json
  readonly files: readonly Upload[]
  /** Told what only the message as it was shows to be wrong. */
  readonly blame: (problems: readonly Problem[]) => void
}

/** Changes a message; a key that is left out stays as it was. */
export const editMessage = (world: World, message: FakeMessage, { body, files, blame }: Change): FakeMessage => {
  const { json, channel } = message
  const before = json.flags ?? 0
  const named = Array.isArray(body.attachments) ? (body.attachments as readonly Json[]).map(({ id }) => id) : undefined
  const kept = json.attachments.filter(({ id }) => named?.includes(id) ?? true)
  const found = checkMessage(body, files, {
    isEdit: true,
    mayBePrivate: true,
    isV2: (before & COMPONENTS_V2) !== 0,
    keeps: kept.map(({ filename }) => filename),
  })
  if (found.length > 0) {
    blame(found)
    throw new ApiError(50035, errorTree(found))
  }
  const asked = typeof body.flags === 'number' ? body.flags : 0
  message.json = {
    ...json,
    ...fields(world, channel, body, files, kept as unknown as readonly Json[]),
    flags: (before & LASTING) | (asked & ~EPHEMERAL),
    edited_timestamp: new Date(world.clock.nowMs()).toISOString(),
  } as unknown as APIMessage
  message.files = message.json.attachments.flatMap(({ url }) => world.files.get(url.slice(world.filesUrl.length)) ?? [])
  message.edits += 1
  return message
}
