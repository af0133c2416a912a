import { randomUUID } from 'node:crypto'
import { existsSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Maintenance } from '../store/maintenance.ts'
import { openStore } from '../store/open/open-store.ts'
import type { SetAside } from '../store/person.ts'
import type { Store } from '../store/store.ts'
import { nearest } from './chat/grammar/nearest.ts'
import { newDoubts } from './chat/retry/doubts.ts'
import { trace } from './chat/trace.ts'
import { commands } from './commands/index.ts'
import { type Config, type DiscordConfig, loadSettings, readConfig, showsToken } from './config.ts'
import { pauseFor } from './demo/demo-pause.ts'
import { tour } from './demo/tour.ts'
import { putBack } from './doctor/put-back.ts'
import { checkUp } from './doctor/run-doctor.ts'
import { startReminders } from './reminders/start-reminders.ts'
import { noReminders } from './reminders/why-no-reminders.ts'
import { ask, type ExitCode } from './terminal/ask/ask.ts'
import { chat } from './terminal/chat/chat.ts'
import { consoleSurface } from './terminal/chat/terminal-delivery.ts'
import type { TerminalSession } from './terminal/chat/terminal-session.ts'
import { openFile } from './terminal/files/open-file.ts'
import { forgetFilesIn, saveFileIn } from './terminal/files/save-file.ts'
import { clean } from './text/clean.ts'
import { en } from './text/en/index.ts'
import { wordsOf } from './text/words-of.ts'

const DEFAULT_WIDTH = 80
const USER = 'local'

/** Discord's makers are anywhere; whoever sits at the terminal is where the machine is. */
const ZONE_IN_DISCORD = 'UTC'

/** Put in by the bundle: a digest of all that decides when a reminder falls due. */
declare const LARDERBELL_RULES: string | undefined
const RULES = typeof LARDERBELL_RULES === 'undefined' ? null : LARDERBELL_RULES

const SETTINGS = '.env'
const ARGUMENTS = ['ask', 'register', 'doctor', 'season']

const words = wordsOf(en)
const speech = { words, commands: en.commands, console: en.console }

const err = (text: string): void => {
  process.stderr.write(text)
}
const log = (text: string): void => err(`${text}\n`)

let isHeard = true
/** In Discord a fault that nobody caught must not end the answers to everybody else. */
let isAmongPeople = false
const ended = new AbortController()

const screenOf = ({ width, noColour }: Config) => ({
  width: width ?? (process.stdout.columns || DEFAULT_WIDTH),
  colour: process.stdout.isTTY === true && !noColour,
})

const out = (text: string): void => {
  if (isHeard) process.stdout.write(text)
}

const deskOf = (config: Config, assumedZone: string, store: Store & Maintenance): TerminalSession => {
  const { stdin, stdout } = process
  const screen = screenOf(config)
  const files = join(config.data, 'files')
  const forgetFiles = forgetFilesIn(files)
  return {
    commands,
    asker: {
      userId: USER,
      place: { kind: 'console' },
      assumedZone,
      store,
      openFile,
      forgetFiles,
      newAttempt: randomUUID,
    },
    speech,
    screen,
    saveFile: saveFileIn(files),
    now: Date.now,
    log,
    out,
    err,
    isHeard: () => isHeard,
    ended: ended.signal,
    remind: (say) =>
      startReminders({
        store,
        surface: consoleSurface({ userId: USER, speech, screen, say, isHeard: () => isHeard }),
        now: Date.now,
        assumedZone,
        log,
        hasData: () => existsSync(config.data),
        complain: (error) => say(clean(noReminders(error, words, en.console))),
      }),
    input: stdin,
    terminal: stdin.isTTY === true && stdout.isTTY === true ? stdout : null,
  }
}

const register = async (discord: DiscordConfig | null): Promise<ExitCode> => {
  if (discord === null) {
    err(`${words.problem('no_token', {}, 'metric')}\n`)
    return 2
  }
  const { registerCommands } = await import('./discord/connect/register.ts')
  return registerCommands({ ...discord, log })
}

const wrongArgument = (typed: string, known: readonly string[]): ExitCode => {
  err(`${clean(words.problem('bad_argument', { typed, nearest: nearest(typed, known) }, 'metric'))}\n`)
  return 2
}

const main = async (argv: readonly string[]): Promise<ExitCode> => {
  const [first, ...rest] = argv
  if (first !== undefined && !ARGUMENTS.includes(first)) return wrongArgument(first, ARGUMENTS)
  loadSettings(SETTINGS)
  const read = readConfig(process.env)
  if (!read.ok) {
    for (const { problem, values } of read.wrong) err(`${clean(words.problem(problem, values, 'metric'))}\n`)
    return 2
  }
  const { config } = read
  const { discord, data: folder } = config
  if (first === 'register') return register(discord)
  const isInDiscord = discord !== null && first !== 'ask'
  const assumedZone =
    config.zone ?? (isInDiscord ? ZONE_IN_DISCORD : new Intl.DateTimeFormat().resolvedOptions().timeZone)
  if (first === 'season') {
    const stage = { season: en.season, commands, speech, screen: screenOf(config), log, out, ended: ended.signal }
    const pause = pauseFor(process.stdout.isTTY === true, ended.signal)
    const [folder] = rest
    const saveFile = folder === undefined ? null : saveFileIn(folder)
    await tour({ saveFile, ...stage, pause, isHeard: () => isHeard, parent: tmpdir(), now: Date.now })
    return 0
  }
  const tellSetAside = (aside: SetAside): void => log(en.console.setAside({ ...aside, folder, userId: USER }))
  const telling = isInDiscord ? {} : { tellSetAside }
  const store = openStore({ folder, assumedZone, rules: RULES, nowMs: Date.now, log, ...telling })
  try {
    if (first === 'doctor') {
      const desk = { ...config, store, nowMs: Date.now(), words, text: en.doctor, err }
      const [order, ...which] = rest
      if (order === 'restore') return await putBack(which, { ...desk, out })
      if (order !== undefined) return wrongArgument(order, ['restore'])
      const isTokenShown = showsToken(SETTINGS)
      return await checkUp({ ...desk, zone: assumedZone, isTokenShown, out: process.stdout })
    }
    if (isInDiscord) {
      if (showsToken(SETTINGS)) log(en.console.tokenShown())
      isAmongPeople = true
      const { startDiscord } = await import('./discord/connect/start-discord.ts')
      const told = { store, commands, language: en, assumedZone, now: Date.now, log, data: folder, ended: ended.signal }
      return await startDiscord(discord, told)
    }
    const desk = deskOf(config, assumedZone, store)
    if (first === 'ask') return await ask(rest, desk)
    await chat({ ...desk, asker: { ...desk.asker, doubts: newDoubts() } })
    return 0
  } finally {
    await store.close()
  }
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
  if (isAmongPeople) return log(trace(error))
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
