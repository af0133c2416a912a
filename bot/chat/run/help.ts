import { isRequired } from '../../calls/option.ts'
import type { CommandText } from '../../text/command-text.ts'
import type { AboutWord } from '../../text/help-text.ts'
import { byPath } from '../callable.ts'
import type { Command } from '../command.ts'
import { nearest } from '../grammar/nearest.ts'
import type { Failure } from './call-outcome.ts'
import { ALL, HELP, HELP_TOPICS, type HelpEntry, type HelpPage, isHelpTopic } from './help-page.ts'
import { firstCommands, firstOptions } from './help-room.ts'
import { commandsAbout, linesAbout } from './help-words.ts'

/** What help is told of: the commands, what is said of them, and of words that are none. */
export interface HelpTexts {
  readonly commands: Readonly<Record<string, CommandText>>
  about(): readonly AboutWord[]
}

/** What asks for every command. */
const EVERYTHING = new RegExp(`^(?:${ALL}|everything|(?:all )?commands)$`)

const REQUEST = /^help(?:\s+(?:command:)?\s*\/?(.*))?$/is

const entry = (command: Command, texts: Readonly<Record<string, CommandText>>): HelpEntry => {
  const text = texts[command.path]
  if (text === undefined) throw new TypeError('a command without its text')
  const options = Object.entries(command.input.shape).map(([name, field]) => ({
    name,
    text: text.options[name] ?? '',
    required: isRequired(field),
  }))
  return { command: command.path, summary: text.summary, options, examples: text.examples }
}

/** The commands of two words that begin with this one: those of `jar`. */
const groupOf = (typed: string, commands: readonly Command[]): readonly Command[] =>
  /^\S+$/.test(typed) && byPath(typed, commands) === null
    ? commands.filter(({ path }) => path.startsWith(`${typed.toLowerCase()} `))
    : []

/** Some commands, as many first as have room; all of them where all were asked for. */
function listPage(entries: readonly HelpEntry[], asked: string, isAll: boolean): HelpPage {
  const count = isAll ? entries.length : firstCommands(entries)
  const page = { ok: true, path: HELP, topic: null, entries } as const
  return count === entries.length ? page : { ...page, first: { count, rest: `/help ${asked} ${ALL}` } }
}

function commandPage(about: HelpEntry, isAll: boolean): HelpPage {
  const count = isAll ? about.options.length : firstOptions(about)
  const page = { ok: true, path: HELP, topic: about.command, entries: [about] } as const
  return count === about.options.length ? page : { ...page, first: { count, rest: `/help ${about.command} ${ALL}` } }
}

/** The page about a word that is no command; null where nothing is known of it. */
function wordPage(typed: string, all: readonly HelpEntry[], about: readonly AboutWord[]): HelpPage | null {
  const lines = linesAbout(typed, about)
  const named = commandsAbout(typed, all)
  const [only, another] = named
  if (lines.length === 0 && only !== undefined && another === undefined) return commandPage(only, false)
  const examples = named.map(({ summary, examples: [line = ''] }) => ({ line, what: summary }))
  const said = (lines.length > 0 ? lines : examples).slice(0, MOST_LINES_ABOUT)
  if (said.length === 0) return null
  const page = { ok: true, path: HELP, topic: null, lines: said, entries: named } as const
  const [shown] = all
    .filter(({ command }) => `${said[0]!.line} `.startsWith(`/${command} `))
    .toSorted((one, other) => other.command.length - one.command.length)
  return shown === undefined ? page : { ...page, first: { count: 0, rest: `/help ${shown.command}` } }
}

const MOST_LINES_ABOUT = 4

/** The page that a line asks for, or null where it does not ask for help. */
export const help = (line: string, commands: readonly Command[], texts: HelpTexts): HelpPage | Failure | null => {
  const said = line.trim().replace(/^\/\s*/, '')
  const own = groupOf(said, commands)
  const request = own.length > 0 ? null : REQUEST.exec(said)
  if (request === null && own.length === 0) return null
  const asked = (request?.[1] ?? '').trim().replace(/\s+/g, ' ')
  const isAll = / all$/i.test(asked)
  const typed = isAll ? asked.slice(0, -' all'.length) : asked
  const all = commands.map((command) => entry(command, texts.commands))
  const entriesOf = (some: readonly Command[]) => some.map((command) => entry(command, texts.commands))
  if (own.length > 0) return listPage(entriesOf(own), said.toLowerCase(), isAll)
  const group = groupOf(typed, commands)
  if (group.length > 0) return listPage(entriesOf(group), typed.toLowerCase(), isAll)
  if (typed === '') {
    const topics = HELP_TOPICS.filter((topic) => commands.some((each) => each.topic === topic))
    return { ok: true, path: HELP, topic: null, topics, entries: all }
  }
  const word = typed.toLowerCase()
  if (EVERYTHING.test(word)) return { ok: true, path: HELP, topic: null, entries: all }
  if (isHelpTopic(word)) return listPage(entriesOf(commands.filter(({ topic }) => topic === word)), word, isAll)
  const command = byPath(typed, commands)
  if (command !== null) {
    const page = commandPage(entry(command, texts.commands), isAll)
    const also = all.find(({ command: path }) => path !== command.path && path.split(' ').includes(word))
    return also === undefined ? page : { ...page, also: `/help ${also.command}` }
  }
  const page = wordPage(word, all, texts.about())
  if (page !== null) return page
  const meant = nearest(
    typed,
    commands.map((each) => each.path),
  )
  const values = { typed, nearest: meant }
  const problem = { code: 'unknown_command', problem: 'unknown_command', values } as const
  const error = meant === null ? problem : { ...problem, nearest: meant }
  return { ok: false, path: HELP, error, kitchen: 'metric' }
}
