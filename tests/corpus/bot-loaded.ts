import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { EventEmitter } from 'node:events'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { PassThrough } from 'node:stream'
import { Script } from 'node:vm'

/** What `bot/start.cjs` bundled of a tree's sources as they are now. */
export const bundleOf = (tree: string): string => {
  execFileSync(process.execPath, ['bot/start.cjs', 'ask', '--help'], { cwd: tree, stdio: 'ignore' })
  const kept = join(tree, 'node_modules', '.cache', 'larderbell')
  const bundles = existsSync(kept) ? readdirSync(kept).filter((name) => /^main-.*\.cjs$/.test(name)) : []
  const newest = bundles
    .map((name) => join(kept, name))
    .toSorted((one, other) => statSync(other).mtimeMs - statSync(one).mtimeMs)[0]
  if (newest === undefined) throw new Error(`${tree} has no bundle: does \`npm run ask\` run there?`)
  return newest
}

/** The clock that a bot believes, and how many ids it was given. */
export interface Clock {
  nowMs: number
  ids: number
}

interface Starting {
  readonly clock: Clock
  readonly argv: readonly string[]
  readonly env: Readonly<Record<string, string>>
}

/** A bot that runs in this process and believes to have one of its own. */
export interface RunningBot {
  readonly type: (line: string) => void
  /** Ends what it reads. */
  readonly endInput: () => void
  /** As SIGTERM does. */
  readonly terminate: () => void
  /** All that it has printed since the last call, output and errors. */
  readonly printed: () => string
  /** Resolves at the next text printed. */
  readonly prints: () => Promise<void>
  readonly ended: Promise<void>
}

const PARAMETERS = 'exports, require, module, __filename, __dirname, process, Date, setInterval'

/** Tasks of the minute and of the night would come when the real clock says so. */
const noCron = { schedule: () => ({ destroy: async () => undefined }) }

const LONG_MS = 20_000

/** Takes heartbeats of the bot's own for never. */
const quietInterval = (act: () => void, ms: number) =>
  ms >= LONG_MS ? setTimeout(() => undefined, 0) : setInterval(act, ms)

const dateBy = (clock: Clock): DateConstructor =>
  class extends Date {
    constructor(...given: readonly unknown[]) {
      super(...((given.length === 0 ? [clock.nowMs] : given) as [number]))
    }
    static override now(): number {
      return clock.nowMs
    }
  } as unknown as DateConstructor

/** Loads a bundle once, and starts it as often as is wanted. */
export const loadBot = (bundle: string) => {
  const script = new Script(`(function (${PARAMETERS}) {${readFileSync(bundle, 'utf8')}\n})`, { filename: bundle })
  const realRequire = createRequire(bundle)
  return ({ clock, argv, env }: Starting): RunningBot => {
    /** The same ids every time: they count. */
    const randomUUID = (): string => `00000000-0000-4000-8000-${String(++clock.ids).padStart(12, '0')}`
    const own: Readonly<Record<string, unknown>> = {
      'node-cron': noCron,
      'node:crypto': { ...(realRequire('node:crypto') as object), randomUUID },
    }
    const require = Object.assign((name: string): unknown => own[name] ?? realRequire(name), {
      resolve: realRequire.resolve,
    })
    const stdin = new PassThrough()
    const signals = new EventEmitter()
    let text = ''
    let heard = (): void => undefined
    let end = (): void => undefined
    const ended = new Promise<void>((resolve) => {
      end = resolve
    })
    const output = () =>
      Object.assign(new EventEmitter(), {
        columns: 80,
        isTTY: false,
        write: (part: string) => {
          text += part
          if (part !== '\n') heard()
          return true
        },
      })
    let exitCode: number | undefined
    const ownProcess = Object.create(process, {
      argv: { value: [process.execPath, 'start.cjs', ...argv] },
      env: { value: { PATH: process.env.PATH, NO_COLOR: '1', ...env } },
      stdin: { value: stdin },
      stdout: { value: output() },
      stderr: { value: output() },
      on: { value: () => undefined },
      once: { value: (name: string, act: () => void) => signals.once(name, act) },
      exit: { value: end },
      exitCode: {
        get: () => exitCode,
        set: (code: number) => {
          exitCode = code
          end()
        },
      },
    })
    const module = { exports: {} }
    script.runInThisContext()(
      module.exports,
      require,
      module,
      bundle,
      dirname(bundle),
      ownProcess,
      dateBy(clock),
      quietInterval,
    )
    return {
      type: (line) => stdin.write(`${line}\n`),
      endInput: () => stdin.end(),
      terminate: () => signals.emit('SIGTERM'),
      printed: () => {
        const printed = text
        text = ''
        return printed
      },
      prints: () =>
        new Promise((resolve) => {
          heard = resolve
        }),
      ended,
    }
  }
}

export type StartBot = ReturnType<typeof loadBot>

export const hashOf = (...texts: readonly (string | Uint8Array)[]): string =>
  texts
    .reduce((hash, text) => hash.update(text), createHash('sha256'))
    .digest('hex')
    .slice(0, 16)
