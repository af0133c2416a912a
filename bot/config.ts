import { existsSync, readFileSync, statSync } from 'node:fs'
import { loadEnvFile } from 'node:process'
import { parseEnv } from 'node:util'
import { z } from 'zod'
import { DomainError } from '../core/domain-error.ts'
import type { QuantityProblems } from '../core/quantity/problems.ts'
import { parseZone } from '../core/quantity/time/parse-zone.ts'
import type { ChatProblems } from './text/messages/chat-problems.ts'

const WIDTH = { least: 40, most: 200 }
const DATA = './data'

export interface Config {
  /** Columns of text: those that were set, else those of `COLUMNS`, which a pipe has no other way to tell. Null: the terminal's own. */
  readonly width: number | null
  readonly noColour: boolean
  /** The folder of data. */
  readonly data: string
  /** IANA name of the zone of who has chosen none, or null: the machine's. */
  readonly zone: string | null
  /** Null: the terminal alone. */
  readonly discord: DiscordConfig | null
}

export interface DiscordConfig {
  readonly token: string
  /** The one server that commands are registered in, or null: everywhere. */
  readonly guildId: string | null
  /** Base address of Discord's REST, without its version, or null: Discord's own. */
  readonly api: string | null
}

type WrongKey = 'bad_width' | 'bad_zone' | 'bad_api' | 'bad_guild'

/** A setting that cannot be taken. */
export type WrongSetting = {
  [Key in WrongKey]: { readonly problem: Key; readonly values: ChatProblems[Key] }
}[WrongKey]

/** The settings, or what is wrong with each of those that cannot be taken. */
export type ConfigRead =
  | { readonly ok: true; readonly config: Config }
  | { readonly ok: false; readonly wrong: readonly WrongSetting[] }

const isSet = (text: string | undefined): text is string => text !== undefined && text.trim() !== ''

const widthSchema = z
  .string()
  .trim()
  .regex(/^\d{1,4}$/)
  .transform(Number)
  .pipe(z.number().min(WIDTH.least).max(WIDTH.most))

type Read<Value> = { readonly value: Value } | { readonly wrong: WrongSetting }

const readWidth = (typed: string | undefined): Read<number | null> => {
  if (!isSet(typed)) return { value: null }
  const read = widthSchema.safeParse(typed)
  return read.success ? { value: read.data } : { wrong: { problem: 'bad_width', values: { typed, ...WIDTH } } }
}

/** What the shell says of its columns. It's nobody's setting of ours, so what can't be used is passed over. */
const readColumns = (typed: string | undefined): number | null =>
  isSet(typed) && /^\d{1,4}$/.test(typed.trim()) && Number(typed) > 0
    ? Math.min(Math.max(Number(typed), WIDTH.least), WIDTH.most)
    : null

const nearestZone = ({ problem, values }: DomainError): string | null =>
  problem === 'unknown_zone' ? ((values as QuantityProblems['unknown_zone']).nearest[0] ?? null) : null

const readZone = (typed: string | undefined): Read<string | null> => {
  if (!isSet(typed)) return { value: null }
  try {
    return { value: parseZone(typed) }
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    return { wrong: { problem: 'bad_zone', values: { typed, nearest: nearestZone(error) } } }
  }
}

const readGuild = (typed: string | undefined): Read<string | null> => {
  if (!isSet(typed)) return { value: null }
  const guildId = typed.trim()
  return /^\d{17,20}$/.test(guildId) ? { value: guildId } : { wrong: { problem: 'bad_guild', values: { typed } } }
}

/** This machine, by name or number: what is sent there passes nobody. */
const LOOPBACK = /^(?:localhost|.+\.localhost|127(?:\.\d+){3}|\[::1\])$/

/** The token travels to this address, so nobody may read along: https, or this machine. */
const readApi = (typed: string | undefined): Read<string | null> => {
  if (!isSet(typed)) return { value: null }
  const wrong: Read<string | null> = { wrong: { problem: 'bad_api', values: { typed } } }
  if (!URL.canParse(typed)) return wrong
  const { protocol, hostname, username, search, hash, origin, pathname } = new URL(typed)
  const isSafe = protocol === 'https:' || (protocol === 'http:' && LOOPBACK.test(hostname))
  if (!isSafe || username !== '' || search !== '' || hash !== '') return wrong
  return { value: origin + pathname.replace(/\/(?:v\d+\/?)?$/, '') }
}

/** Adds the settings of a `.env` file to the environment, which wins. */
export const loadSettings = (path: string): void => {
  if (existsSync(path)) loadEnvFile(path)
}

const FOR_OTHERS = 0o044

/** Whether others on this machine may read the token in a `.env` file. Windows keeps rights elsewhere. */
export const showsToken = (path: string): boolean =>
  process.platform !== 'win32' &&
  existsSync(path) &&
  (statSync(path).mode & FOR_OTHERS) !== 0 &&
  isSet(parseEnv(readFileSync(path, 'utf8')).DISCORD_TOKEN)

/** Reads the environment once; everything else is told. */
export const readConfig = (environment: Readonly<Record<string, string | undefined>>): ConfigRead => {
  const { LARDERBELL_WIDTH, LARDERBELL_ZONE, LARDERBELL_DATA, NO_COLOR, COLUMNS } = environment
  const { DISCORD_TOKEN, DISCORD_GUILD_ID, DISCORD_API } = environment
  const [width, zone] = [readWidth(LARDERBELL_WIDTH), readZone(LARDERBELL_ZONE)]
  const [guild, api] = [readGuild(DISCORD_GUILD_ID), readApi(DISCORD_API)]
  if ('wrong' in width || 'wrong' in zone || 'wrong' in guild || 'wrong' in api) {
    return { ok: false, wrong: [width, zone, guild, api].flatMap((read) => ('wrong' in read ? [read.wrong] : [])) }
  }
  const discord = isSet(DISCORD_TOKEN) ? { token: DISCORD_TOKEN.trim(), guildId: guild.value, api: api.value } : null
  const data = isSet(LARDERBELL_DATA) ? LARDERBELL_DATA.trim() : DATA
  const columns = width.value ?? readColumns(COLUMNS)
  return { ok: true, config: { width: columns, zone: zone.value, data, noColour: isSet(NO_COLOR), discord } }
}
