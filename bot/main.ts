import { nearest } from './chat/nearest.ts'
import { trace } from './chat/trace.ts'
import { commands } from './commands/index.ts'
import { type Config, loadSettings, readConfig } from './config.ts'
import { ask, type ExitCode } from './console/ask.ts'
import { chat } from './console/chat.ts'
import { clean } from './console/clean.ts'
import type { Desk } from './console/desk.ts'
import { en } from './text/en/index.ts'
import { wordsOf } from './text/words-of.ts'

const DEFAULT_WIDTH = 80

const words = wordsOf(en)
const speech = { words, commands: en.commands, console: en.console }

const err = (text: string): void => {
  process.stderr.write(text)
}

let isHeard = true

const deskOf = (config: Config): Desk => {
  const { stdin, stdout } = process
  return {
    commands,
    speech,
    screen: {
      width: config.width ?? (stdout.columns || DEFAULT_WIDTH),
      colour: stdout.isTTY === true && !config.noColour,
    },
    now: Date.now,
    log: (text) => err(`${text}\n`),
    out: (text) => {
      if (isHeard) stdout.write(text)
    },
    err,
    isHeard: () => isHeard,
    input: stdin,
    terminal: stdin.isTTY === true && stdout.isTTY === true ? stdout : null,
  }
}

const main = async (argv: readonly string[]): Promise<ExitCode> => {
  const [first, ...rest] = argv
  if (first !== undefined && first !== 'ask') {
    err(`${clean(words.problem('bad_argument', { typed: first, nearest: nearest(first, ['ask']) }, 'metric'))}\n`)
    return 2
  }
  loadSettings('.env')
  const read = readConfig(process.env)
  if (!read.ok) {
    for (const wrong of read.wrong) err(`${clean(words.problem('bad_width', wrong, 'metric'))}\n`)
    return 2
  }
  if (first === 'ask') return ask(rest, deskOf(read.config))
  await chat(deskOf(read.config))
  return 0
}

const apologise = (error: unknown): void => {
  err(`${trace(error)}\n${words.problem('internal', {}, 'metric')}\n`)
  process.exitCode = 1
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') apologise(error)
  isHeard = false
})
process.stderr.on('error', () => {})
process.on('uncaughtException', (error) => {
  apologise(error)
  process.stdin.destroy()
})

main(process.argv.slice(2)).then((code) => {
  process.exitCode ??= code
}, apologise)
