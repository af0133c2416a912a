import { trace } from './chat/trace.ts'

let isHeard = true
let isAmongPeople = false
const ended = new AbortController()

/** The streams and signals of the process. */
export const edge = {
  out: (text: string): void => {
    if (isHeard) process.stdout.write(text)
  },
  err: (text: string): void => {
    process.stderr.write(text)
  },
  log: (text: string): void => {
    process.stderr.write(`${text}\n`)
  },
  /** False once nobody reads the output any more. */
  isHeard: (): boolean => isHeard,
  /** A signal has asked for the end. */
  ended: ended.signal,
  /** In Discord a fault that nobody caught must not end the answers to everybody else. */
  joinPeople: (): void => {
    isAmongPeople = true
  },
} as const

/**
 * Runs `main` and sets the exit code: its own, 1 after a fault, 128 and the signal's number where `ask` was interrupted.
 *
 * @param excuse - one sentence for whoever meets a fault of ours
 */
export function runProcess(main: (argv: readonly string[]) => Promise<number>, excuse: string): void {
  const apologise = (error: unknown): void => {
    edge.err(`${trace(error)}\n${excuse}\n`)
    process.exitCode = 1
  }
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') apologise(error)
    isHeard = false
  })
  process.stderr.on('error', () => {})
  process.on('uncaughtException', (error) => {
    if (isAmongPeople) return edge.log(trace(error))
    apologise(error)
    process.stdin.destroy()
  })
  /** What is being written is finished, and the chat ends as it does by itself; a second signal does not wait. */
  const end = (signalNumber: number) => () => {
    if (process.argv[2] === 'ask') process.exitCode = 128 + signalNumber
    ended.abort()
    process.stdin.destroy()
  }
  process.once('SIGINT', end(2))
  process.once('SIGTERM', end(15))
  main(process.argv.slice(2)).then((code) => {
    process.exitCode ??= code
    // discord.js goes on connecting half a second after it was destroyed while it waited to try again.
    if (isAmongPeople) process.exit()
  }, apologise)
}
