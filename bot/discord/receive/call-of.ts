import type { Attachment, CommandInteractionOption } from 'discord.js'
import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import { byPath, type Callable, optionNames } from '../../chat/callable.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { LONGEST_LINE } from '../../chat/grammar/grammar.ts'
import { nearest } from '../../chat/grammar/nearest.ts'
import { HELP } from '../../chat/run/help-page.ts'
import type { LineOfCommand } from '../buttons/marked-lines.ts'
import { unisolated } from '../show/isolate-rtl.ts'

const [SUBCOMMAND, GROUP] = [1, 2]

/** Is kept as it is typed. */
const NOTE = 'note'

/** A slash command as discord.js hands it over. */
export interface Slash {
  readonly commandName: string
  readonly options: { readonly data: readonly CommandInteractionOption[] }
}

/** The words of a command, and the options of the last. */
function flat({ commandName, options }: Slash) {
  const words = [commandName]
  let { data } = options
  for (let [inner] = data; inner?.type === GROUP || inner?.type === SUBCOMMAND; [inner] = data) {
    words.push(inner.name)
    data = inner.options ?? []
  }
  return { path: words.join(' '), data }
}

/** The files that came along, each called in its option by its id. */
export const attachmentsOf = (slash: Slash): readonly Attachment[] =>
  flat(slash).data.flatMap((option) => option.attachment ?? [])

/** What was typed for its options, one under the other. */
export const typedIn = (slash: Slash): string =>
  flat(slash)
    .data.map(({ value }) => String(value ?? ''))
    .join('\n')

/** What was typed for one of its options; empty where nothing was. */
export const typedFor = (slash: Slash, option: string): string =>
  String(flat(slash).data.find(({ name }) => name === option)?.value ?? '')

export const pathOf = (slash: Slash): string => flat(slash).path

/**
 * The call that a slash command makes. Whoever has an old list of commands may send what is no longer one: the path is
 * looked up later, an option that the command no longer has throws here, as the grammar does.
 */
export const callOf = (slash: Slash, commands: readonly Callable[]): Invocation => {
  const { path, data } = flat(slash)
  const command = byPath(path, commands)
  const known = command === null ? [] : optionNames(command)
  const options: Record<string, string> = Object.create(null)
  for (const { name, value } of data) {
    if (value === undefined) continue
    if (command !== null && !known.includes(name)) {
      const meant = nearest(name, known)
      const values = { command: path, typed: name, nearest: meant, known }
      throw new ChatError('unknown_option', 'unknown_option', values, { command: path, nearest: meant })
    }
    options[name] = name === NOTE ? String(value) : unisolated(String(value))
  }
  const length = Object.values(options).reduce((sum, text) => sum + text.length, 0)
  if (length > LONGEST_LINE) {
    throw new ChatError('bad_value', 'line_too_long', { length, limit: LONGEST_LINE }, { command: path })
  }
  return { path, options }
}

/** What a slash command says, as a line; null where a file came along, which no line can hold. */
export function lineTyped(slash: Slash): LineOfCommand | null {
  const { path, data } = flat(slash)
  if (data.some(({ attachment }) => attachment !== undefined)) return null
  const typed = data.map(({ name, value = '' }) => [name, unisolated(String(value))] as const)
  return { path, line: lineOf({ path, options: Object.fromEntries(typed) }, true) }
}

/** The line that asks for help as `/help command:…` does, null for any other command. */
export const helpLine = (slash: Slash): string | null => {
  const { path, data } = flat(slash)
  return path === HELP ? `/${HELP} ${data.map(({ value }) => String(value)).join(' ')}`.trim() : null
}
