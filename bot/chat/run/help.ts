import { isRequired } from '../../calls/option.ts'
import type { CommandText } from '../../text/command-text.ts'
import type { HelpTopic } from '../../text/help-text.ts'
import { byPath } from '../callable.ts'
import type { Command } from '../command.ts'
import { nearest } from '../grammar/nearest.ts'
import type { Failure } from './execute.ts'

export const HELP = 'help'

/** Asks for every command. */
export const ALL = 'all'

const TOPICS: readonly HelpTopic[] = ['planning', 'jars', 'sums', 'sharing', 'you']

const isTopic = (typed: string): typed is HelpTopic => TOPICS.some((topic) => topic === typed)

export interface HelpOption {
  readonly name: string
  readonly text: string
  readonly required: boolean
}

export interface HelpEntry {
  readonly command: string
  readonly summary: string
  readonly options: readonly HelpOption[]
  readonly examples: readonly string[]
}

/** A page about one command, about some of them, or the first of all. */
export interface HelpPage {
  readonly ok: true
  readonly path: typeof HELP
  readonly topic: string | null
  /** On the page that comes first: what there is to read about. */
  readonly topics?: readonly HelpTopic[]
  readonly entries: readonly HelpEntry[]
}

const REQUEST = /^\/?\s*help(?:\s+(?:command:)?\s*\/?(.*))?$/is

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

/** The page that a line asks for, or null where it does not ask for help. */
export const help = (
  line: string,
  commands: readonly Command[],
  texts: Readonly<Record<string, CommandText>>,
): HelpPage | Failure | null => {
  const own = groupOf(line.trim().replace(/^\/\s*/, ''), commands)
  const request = own.length > 0 ? null : REQUEST.exec(line.trim())
  if (request === null && own.length === 0) return null
  const typed = (request?.[1] ?? '').trim().replace(/\s+/g, ' ')
  const group = own.length > 0 ? own : groupOf(typed, commands)
  if (group.length > 0) {
    return { ok: true, path: HELP, topic: null, entries: group.map((command) => entry(command, texts)) }
  }
  const all = commands.map((command) => entry(command, texts))
  if (typed === '') {
    const topics = TOPICS.filter((topic) => commands.some((each) => each.topic === topic))
    return { ok: true, path: HELP, topic: null, topics, entries: all }
  }
  const asked = typed.toLowerCase()
  if (asked === ALL) return { ok: true, path: HELP, topic: null, entries: all }
  if (isTopic(asked)) {
    const about = commands.filter(({ topic }) => topic === asked).map((command) => entry(command, texts))
    return { ok: true, path: HELP, topic: null, entries: about }
  }
  const command = byPath(typed, commands)
  if (command !== null) return { ok: true, path: HELP, topic: command.path, entries: [entry(command, texts)] }
  const meant = nearest(
    typed,
    commands.map((each) => each.path),
  )
  const values = { typed, nearest: meant }
  const problem = { code: 'unknown_command', problem: 'unknown_command', values } as const
  const error = meant === null ? problem : { ...problem, nearest: meant }
  return { ok: false, path: HELP, error, kitchen: 'metric' }
}
