import { z } from 'zod'
import { byPath } from './callable.ts'
import type { Command } from './command.ts'
import type { CommandText } from './command-text.ts'
import type { Failure } from './execute.ts'
import { nearest } from './nearest.ts'

export const HELP = 'help'

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

/** A page about one command, or about all of them. */
export interface HelpPage {
  readonly ok: true
  readonly path: typeof HELP
  readonly topic: string | null
  readonly entries: readonly HelpEntry[]
}

const REQUEST = /^\/?\s*help(?:\s+(?:command:)?\s*\/?(.*))?$/is

const entry = (command: Command, texts: Readonly<Record<string, CommandText>>): HelpEntry => {
  const text = texts[command.path]
  if (text === undefined) throw new TypeError('a command without its text')
  const options = Object.entries(command.input.shape).map(([name, field]) => ({
    name,
    text: text.options[name] ?? '',
    required: !z.safeParse(field, undefined).success,
  }))
  return { command: command.path, summary: text.summary, options, examples: text.examples }
}

/** The page that a line asks for, or null where it does not ask for help. */
export const help = (
  line: string,
  commands: readonly Command[],
  texts: Readonly<Record<string, CommandText>>,
): HelpPage | Failure | null => {
  const request = REQUEST.exec(line.trim())
  if (request === null) return null
  const typed = (request[1] ?? '').trim().replace(/\s+/g, ' ')
  if (typed === '') {
    return { ok: true, path: HELP, topic: null, entries: commands.map((command) => entry(command, texts)) }
  }
  const command = byPath(typed, commands)
  if (command !== null) return { ok: true, path: HELP, topic: command.path, entries: [entry(command, texts)] }
  const meant = nearest(
    typed,
    commands.map((each) => each.path),
  )
  const values = { typed, nearest: meant }
  const problem = { code: 'unknown_command', problem: 'unknown_command', values } as const
  return { ok: false, path: HELP, error: meant === null ? problem : { ...problem, nearest: meant } }
}
