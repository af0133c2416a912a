import { existsSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { startFake } from '../bot/discord/fake/fake-discord.ts'
import { isRecord } from '../bot/discord/fake/json.ts'
import type { FakeMessage } from '../bot/discord/fake/world.ts'
import type { Desk } from '../bot/discord/stand-in/desk.ts'
import { idFor } from '../bot/discord/stand-in/kept-world.ts'
import { choose, command, fill, press, type } from '../bot/discord/stand-in/message-lines.ts'
import { become, go } from '../bot/discord/stand-in/place-lines.ts'
import { newScene } from '../bot/discord/stand-in/scene.ts'
import type { Clock, RunningBot, StartBot } from './bot-loaded.ts'
import { firstOptions } from './first-options.ts'
import { DATA, type Said, START_MS, STEP_MS, ZONE } from './in-terminal.ts'
import type { Session } from './sessions.ts'

const ACTS: Readonly<Record<string, (rest: string, desk: Desk) => string | Promise<string>>> = {
  press,
  choose,
  fill,
  type,
  as: become,
  in: go,
}

const MOST_STARTING_MS = 20_000
const CALM_MS = 8
const CALM_LOOKS = 5
/** After a start it looks for what is due by itself. */
const LOOKS_AT_START = 30
const MOST_CALMING_MS = 10_000

/** In Discord every option has its name, so the first one's is put where it was left out. */
const allNamed = (line: string): string => {
  const words = line.slice(1).split(' ')
  const path = [words.slice(0, 2).join(' '), words[0]!].find((known) => known in firstOptions)
  if (path === undefined) return line
  const rest = line.slice(path.length + 1).trim()
  return rest === '' || /^[a-z-]+:/.test(rest) ? line : `/${path} ${firstOptions[path]}:${rest}`
}

const lineKept = (owner: string, id: string): string => {
  const path = join(DATA, 'users', `${owner}.json`)
  const { lines = [] } = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : {}
  return lines.find((kept: { readonly id: string }) => kept.id === id)?.line ?? `kept as ${id}`
}

/** What a button runs: its id, with the line that is kept for it. */
const pressRuns = (customId: string): string => {
  const [, coded = '', line = ''] = customId.split('|')
  const [, kept] = /^@([0-9a-f]{12}) /.exec(line) ?? []
  if (kept === undefined) return customId
  const owner = [...coded].reduce((sum, digit) => sum * 36n + BigInt(Number.parseInt(digit, 36)), 0n)
  return customId.replace(line, lineKept(String(owner), kept))
}

/** Without ports, and with what each button runs in the place of its id. */
const plain = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(plain)
  if (typeof value === 'string') return value.replace(/http:\/\/127\.0\.0\.1:\d+\S*/g, 'http://file')
  if (!isRecord(value)) return value
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => key !== 'attachment_id')
      .map(([key, inner]) => [key, key === 'custom_id' && typeof inner === 'string' ? pressRuns(inner) : plain(inner)]),
  )
}

const shown = (message: FakeMessage, numberOf: (message: FakeMessage) => number): unknown => {
  const { json, channel, onlyFor, isDeleted, edits, files } = message
  const { flags, content, components, attachments } = json
  const where = { number: numberOf(message), place: channel.name, onlyFor: onlyFor?.name ?? null, isDeleted }
  if (isDeleted) return where
  const sent = attachments.map(({ filename, description = null }) => ({ filename, description }))
  return plain({ ...where, isEdited: edits > 0, flags, content, components, attachments: sent, files: files.length })
}

/** Plays a session in a Discord of our own: each line as a slash command, each act on a message. */
export const playInDiscord = async ({ steps }: Session, startBot: StartBot): Promise<Said> => {
  rmSync(DATA, { recursive: true, force: true })
  const clock: Clock = { nowMs: START_MS, ids: 0 }
  const fake = await startFake({ nowMs: () => clock.nowMs, idFor })
  const env = { LARDERBELL_DATA: DATA, LARDERBELL_ZONE: ZONE, DISCORD_API: fake.api, DISCORD_TOKEN: fake.token }
  const said: Record<number, unknown> = {}
  const connected = async (): Promise<RunningBot> => {
    const bot = startBot({ clock, argv: [], env })
    let log = ''
    const isThere = (): boolean => fake.gateway.sessions().some(({ isConnected }) => isConnected)
    for (const endMs = performance.now() + MOST_STARTING_MS; performance.now() < endMs; await sleep(5)) {
      log += bot.printed()
      if (isThere() && /\bregistered\b/.test(log)) break
    }
    if (!/\bregistered\b/.test(log)) throw new Error(`the bot does not connect: ${log}`)
    return bot
  }
  const isAtRest = (): boolean => !process.getActiveResourcesInfo().some((name) => name.startsWith('FSReq'))
  /** Until nothing is asked of Discord and nothing is written for a while. */
  const calm = async (looks = CALM_LOOKS): Promise<void> => {
    let [seen, quiet] = [-1, 0]
    for (const endMs = performance.now() + MOST_CALMING_MS; performance.now() < endMs; await sleep(CALM_MS)) {
      const count = fake.requests().length
      quiet = count === seen && isAtRest() ? quiet + 1 : 0
      if (quiet === looks) return
      seen = count
    }
  }
  let bot = await connected()
  await calm()
  const scene = newScene(fake)
  const running = { isRunning: () => true } as unknown as Desk['bot']
  const desk: Desk = { fake, scene, bot: running, zone: ZONE, form: null, aheadMs: 0, keepAhead: () => undefined }
  const news = (answer: string): unknown => {
    const messages = scene.news().map((message) => {
      const news = shown(message, scene.numberOf)
      scene.markShown(message)
      return news
    })
    const log = bot.printed()
    return { answer, messages, ...(log !== '' && { log }) }
  }
  const act = async (line: string): Promise<unknown> => {
    const [, word = '', rest = ''] = /^(\S+) ?(.*)$/.exec(line) ?? []
    const answer = line.startsWith('/') ? command(allNamed(line), desk) : ACTS[word]!(rest, desk)
    return Promise.resolve(answer).catch((error: Error) => `refused: ${error.message}`)
  }
  for (const { step, lineNumber } of steps) {
    if (step.kind === 'clock') clock.nowMs = step.nowMs
    else if (step.kind === 'remind') {
      bot.terminate()
      await bot.ended
      bot = await connected()
      await calm(LOOKS_AT_START)
      said[lineNumber] = news('')
    } else if (step.kind === 'act' || step.line.startsWith('/')) {
      clock.nowMs += STEP_MS
      const answer = await act(step.line)
      await calm()
      said[lineNumber] = news(String(answer))
    }
  }
  bot.terminate()
  await bot.ended
  await fake.stop()
  const faults = fake.faults()
  return faults.length === 0 ? said : { ...said, 0: faults.map(({ method, problems }) => ({ method, problems })) }
}
