import { spawn } from 'node:child_process'
import { setTimeout as sleep } from 'node:timers/promises'
import { clockAhead } from '../bot/discord/clock-ahead.ts'

export interface Used {
  readonly rssMb: number
  /** After a garbage collection. */
  readonly heapMb: number
  readonly cpuMs: number
}

export interface Measured {
  readonly used: () => Promise<Used>
  /** Resolves when it has nothing to do any more. */
  readonly idle: () => Promise<void>
  readonly stop: () => Promise<void>
}

/** Answers every message with what the process uses, and keeps nothing alive. */
const PROBE = `process.on('message', () => {
  globalThis.gc()
  const { rss, heapUsed } = process.memoryUsage()
  const { user, system } = process.cpuUsage()
  process.send({ rssMb: rss / 2 ** 20, heapMb: heapUsed / 2 ** 20, cpuMs: (user + system) / 1000 })
})
process.channel.unref()`

const LOOK_MS = 1000
const IDLE_CPU_MS = 150

export interface Start {
  readonly argv: readonly string[]
  readonly cwd: string
  readonly settings: Readonly<Record<string, string>>
  readonly aheadMs: number
}

/** Starts a bot and waits until it says that it is connected. */
export async function startMeasured({ argv, cwd, settings, aheadMs }: Start): Promise<Measured> {
  const probe = ['--expose-gc', '--import', `data:text/javascript,${encodeURIComponent(PROBE)}`]
  const child = spawn(process.execPath, [...probe, ...clockAhead(aheadMs), ...argv], {
    cwd,
    env: { PATH: process.env.PATH, ...settings },
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  })
  const gone = new Promise<void>((resolve) => child.on('close', () => resolve()))
  let said = ''
  await new Promise<void>((resolve, reject) => {
    child.stderr!.on('data', (chunk) => {
      said = `${said}${chunk}`.slice(-10_000)
      if (said.includes('Connected')) resolve()
    })
    child.on('close', () => reject(new Error(`it ended: ${said}`)))
  })
  const used = (): Promise<Used> =>
    new Promise((resolve) => {
      child.once('message', (told) => resolve(told as Used))
      child.send('how much?')
    })
  return {
    used,
    async idle() {
      let before = (await used()).cpuMs
      for (let isBusy = true; isBusy; ) {
        await sleep(LOOK_MS)
        // One collection of garbage is its own work, the next shows what is left.
        const { cpuMs } = await used()
        isBusy = cpuMs - before > IDLE_CPU_MS + LOOK_MS / 5
        before = cpuMs
      }
    },
    async stop() {
      child.kill('SIGTERM')
      await gone
    },
  }
}
