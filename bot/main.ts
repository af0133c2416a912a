import { tmpdir } from 'node:os'
import { openStore } from '../store/open/open-store.ts'
import type { SetAside } from '../store/person.ts'
import { newDoubts } from './chat/doubts.ts'
import { nearest } from './chat/grammar/nearest.ts'
import { commands } from './commands/index.ts'
import { type Config, type DiscordConfig, loadSettings, readConfig, showsToken } from './config.ts'
import { enterFrom, tour } from './demo/tour.ts'
import { putBack } from './doctor/put-back.ts'
import { checkUp } from './doctor/run-doctor.ts'
import { spoken } from './languages.ts'
import { LOCAL_USER, localSession, screenOf } from './local-session.ts'
import { edge, runProcess } from './process-edge.ts'
import { ask, type ExitCode } from './terminal/ask/ask.ts'
import { chat } from './terminal/chat/chat.ts'
import { saveFileIn } from './terminal/files/save-file.ts'
import { clean } from './text/clean.ts'
import { wordsOf } from './text/words-of.ts'

/** Discord's makers are anywhere; whoever sits at the terminal is where the machine is. */
const ZONE_IN_DISCORD = 'UTC'

/** Put in by the bundle: a digest of all that decides when a reminder falls due. */
declare const LARDERBELL_RULES: string | undefined
const RULES = typeof LARDERBELL_RULES === 'undefined' ? null : LARDERBELL_RULES

const SETTINGS = '.env'
const ARGUMENTS = ['ask', 'register', 'doctor', 'season']

const { language } = spoken
const words = wordsOf(language)
const { out, err, log, isHeard, ended } = edge

const register = async (discord: DiscordConfig | null): Promise<ExitCode> => {
  if (discord === null) {
    err(`${words.problem('no_token', {}, 'metric')}\n`)
    return 2
  }
  const { registerCommands } = await import('./discord/connect/register.ts')
  return registerCommands({ ...discord, language, log })
}

const wrongArgument = (typed: string, known: readonly string[]): ExitCode => {
  err(`${clean(words.problem('bad_argument', { typed, nearest: nearest(typed, known) }, 'metric'))}\n`)
  return 2
}

const season = async ([folder]: readonly string[], config: Config): Promise<ExitCode> => {
  const stage = { season: language.season, commands, ...spoken, screen: screenOf(config), log, out, isHeard, ended }
  const nextDay = enterFrom(process.stdin, process.stdout, language.season.goOn, ended)
  const saveFile = folder === undefined ? null : saveFileIn(folder)
  await tour({ ...stage, saveFile, nextDay, parent: tmpdir(), now: Date.now })
  return 0
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
  if (first === 'season') return season(rest, config)
  const tellSetAside = (aside: SetAside): void =>
    log(language.console.setAside({ ...aside, folder, userId: LOCAL_USER }))
  const telling = isInDiscord ? {} : { tellSetAside }
  const store = openStore({ folder, assumedZone, rules: RULES, nowMs: Date.now, log, ...telling })
  try {
    if (first === 'doctor') {
      const desk = { ...config, store, nowMs: Date.now(), words, text: language.doctor, err }
      const [order, ...which] = rest
      if (order === 'restore') return await putBack(which, { ...desk, out })
      if (order !== undefined) return wrongArgument(order, ['restore'])
      const isTokenShown = showsToken(SETTINGS)
      return await checkUp({ ...desk, zone: assumedZone, isTokenShown, out: process.stdout })
    }
    if (isInDiscord) {
      if (showsToken(SETTINGS)) log(language.console.tokenShown())
      edge.joinPeople()
      const { startDiscord } = await import('./discord/connect/start-discord.ts')
      const told = { store, commands, ...spoken, assumedZone, now: Date.now, log, ended }
      return await startDiscord(discord, told)
    }
    const session = localSession({ config, assumedZone, store, commands, spoken, now: Date.now })
    if (first === 'ask') return await ask(rest, session)
    await chat({ ...session, asker: { ...session.asker, doubts: newDoubts() } })
    return 0
  } finally {
    await store.close()
  }
}

runProcess(main, words.problem('internal', {}, 'metric'))
