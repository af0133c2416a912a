import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, watch } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { clockAhead } from '../clock-ahead.ts'
import type { FakeDiscord } from '../fake/fake-discord.ts'

const START = join(import.meta.dirname, '..', '..', '..', '..', 'bot', 'start.cjs')

const MOST_STARTING_MS = 30_000
const MOST_REMINDING_MS = 5000
const MOST_STOPPING_MS = 12_000
const LOOK_MS = 20
const KEPT_CHARACTERS = 100_000

export interface BotProcess {
  /** Resolves when it is connected and has said what is due, or has failed to; whether it is there. */
  readonly start: (aheadMs: number) => Promise<boolean>
  readonly stop: () => Promise<void>
  /** Ends it at once. */
  readonly kill: () => void
  readonly isRunning: () => boolean
  /** All that it has written, of every time it was started. */
  readonly log: () => string
}

const hasEnded = ({ exitCode, signalCode }: ChildProcess): boolean => exitCode !== null || signalCode !== null

/** Sees the first pass over what is due, which is noted in the folder at its beginning and at its end. */
const watchPass = (data: string) => {
  let noted = 0
  const watcher = existsSync(data)
    ? watch(data, (_, file) => {
        if (file === 'status.json') noted += 1
      })
    : null
  watcher?.on('error', () => undefined)
  return { hasEnded: (): boolean => watcher === null || noted >= 2, close: (): void => watcher?.close() }
}

/** The bot as `npm start` starts it, with no setting but those it is given here, its data in `folder`. */
export const botProcess = (fake: FakeDiscord, folder: string, zone: string): BotProcess => {
  const data = join(folder, 'data')
  let child: ChildProcess | null = null
  let log = ''
  let said = ''
  const isRunning = (): boolean => child !== null && !hasEnded(child)
  const until = async (isSo: () => boolean, mostMs: number): Promise<boolean> => {
    for (const endMs = performance.now() + mostMs; !isSo(); await sleep(LOOK_MS))
      if (!isRunning() || performance.now() > endMs) return false
    return true
  }
  return {
    isRunning,
    log: () => log,
    start: async (aheadMs) => {
      const own = Object.entries(process.env).filter(([key]) => !/^(?:DISCORD|LARDERBELL)_|^NO_COLOR$/.test(key))
      const settings = {
        DISCORD_API: fake.api,
        DISCORD_TOKEN: fake.token,
        LARDERBELL_ZONE: zone,
        LARDERBELL_DATA: data,
      }
      const pass = watchPass(data)
      said = ''
      const begun = spawn(process.execPath, [...clockAhead(aheadMs), START], {
        cwd: folder,
        env: { ...Object.fromEntries(own), ...settings },
        stdio: ['ignore', 'pipe', 'pipe'],
      })
      child = begun
      begun.on('error', (error) => {
        log += `${error.message}\n`
      })
      for (const stream of [begun.stdout, begun.stderr])
        stream.setEncoding('utf8').on('data', (text) => {
          said += text
          log = (log + text).slice(-KEPT_CHARACTERS)
        })
      const isThere = (): boolean => fake.gateway.sessions().some(({ isConnected }) => isConnected)
      // It says of the commands whether they are, or could not be, registered; then it reminds.
      const isConnected = await until(() => isThere() && /\bregistered\b/.test(said), MOST_STARTING_MS)
      if (isConnected) await until(pass.hasEnded, MOST_REMINDING_MS)
      pass.close()
      return isConnected && isRunning()
    },
    stop: async () => {
      if (child === null || !isRunning()) return
      const gone = once(child, 'close')
      const late = setTimeout(() => child?.kill('SIGKILL'), MOST_STOPPING_MS)
      child.kill('SIGTERM')
      await gone
      clearTimeout(late)
    },
    kill: () => {
      child?.kill('SIGKILL')
    },
  }
}
