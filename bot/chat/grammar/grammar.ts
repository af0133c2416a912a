import type { Invocation } from '../../calls/invocation.ts'
import { type Callable, optionNames } from '../callable.ts'
import { ChatError } from '../chat-error.ts'
import { findCommand } from './find-command.ts'
import { nearest } from './nearest.ts'

export const LONGEST_LINE = 4000

/** The option whose value is the rest of the line. */
const REST = 'note'

/** Options whose value is in somebody's own words; it may begin like an option: `water mint`, `no flavour`. */
const NAMES: readonly string[] = ['jar', 'name', 'symptom']

/** What other commands call the day. */
const OTHER_NAMES: Readonly<Record<string, string>> = {
  start: 'when',
  when: 'start',
  date: 'when',
  day: 'when',
  hydrometer: 'strength',
  density: 'hydrometer',
  gravity: 'hydrometer',
}

/** A word and a colon after a space: the beginning of an option, wherever it stands outside quotes. */
const NAME = /(?<!\S)([\p{L}_][\p{L}\p{M}\p{N}_-]*)(\s*):/gu

/** A value in double quotes, `\"` and `\\` inside. */
const QUOTED = /"((?:[^"\\]|\\.)*)"(?!\S)/y

/** A value in the quotes that a phone writes; none inside. */
const CURLY = /^[“„”«]([^“„”«»]*)[“”»]$/u

interface Piece {
  readonly text: string
  readonly end: number
}

interface Name extends Piece {
  readonly start: number
}

/** The next known option's name; one that only looks like an option is an error, not part of the value before it. */
const nextName = (line: string, from: number, command: Callable): Name | null => {
  const known = optionNames(command)
  NAME.lastIndex = from
  for (let match = NAME.exec(line); match !== null; match = NAME.exec(line)) {
    const text = match[1]!.toLowerCase()
    if (known.includes(text)) return { text, start: match.index, end: NAME.lastIndex }
    if (match[2] === '') {
      const meant = known.find((name) => name === OTHER_NAMES[text]) ?? nearest(text, known)
      const values = { command: command.path, typed: match[1]!, nearest: meant, known }
      throw new ChatError('unknown_option', 'unknown_option', values, { command: command.path, nearest: meant })
    }
  }
  return null
}

const readQuoted = (line: string, from: number): Piece | null => {
  QUOTED.lastIndex = from
  const match = QUOTED.exec(line)
  return match === null ? null : { text: match[1]!.replace(/\\(["\\])/g, '$1'), end: QUOTED.lastIndex }
}

/** The value that begins at `from`, and where it ends. */
const readValue = (line: string, from: number, option: string, command: Callable): Piece => {
  const place = { command: command.path, option }
  if (option === REST) {
    const quoted = readQuoted(line, from)
    return { text: quoted?.end === line.length ? quoted.text : line.slice(from), end: line.length }
  }
  if (line[from] !== '"') {
    const end = nextName(line, from, command)?.start ?? line.length
    return { text: line.slice(from, end).trim().replace(CURLY, '$1'), end }
  }
  const quoted = readQuoted(line, from)
  if (quoted === null) throw new ChatError('bad_value', 'quote_open', place, place)
  const end = nextName(line, quoted.end, command)?.start ?? line.length
  const stray = line.slice(quoted.end, end).trim()
  if (stray !== '') {
    const values = { command: command.path, text: stray, known: optionNames(command) }
    throw new ChatError('unknown_option', 'stray_text', values, { command: command.path })
  }
  return { text: quoted.text.trim(), end }
}

/** The option that a line's next part belongs to; the first option's name may be left out. */
const readOption = (line: string, from: number, isFirst: boolean, command: Callable): Piece => {
  const name = line[from] === '"' ? null : nextName(line, from, command)
  if (name?.start === from) return name
  const known = optionNames(command)
  const [first] = known
  const place = { command: command.path }
  if (!isFirst || first === undefined) {
    throw new ChatError('unknown_option', 'stray_text', { ...place, text: line.slice(from), known }, place)
  }
  const word = /^\S+(?=\s)/.exec(line.slice(from))?.[0].toLowerCase()
  if (word !== undefined && known.includes(word) && !NAMES.includes(first)) {
    throw new ChatError('unknown_option', 'colon_missing', { ...place, option: word }, { ...place, nearest: word })
  }
  return { text: first, end: from }
}

const skipSpace = (line: string, from: number): number => {
  let at = from
  while (at < line.length && line[at]!.trim() === '') at++
  return at
}

/**
 * `/syrup infusion:920 ml strength:94% to-strength:30%`. Values may hold spaces: an option ends where the next name
 * begins. Throws ChatError with the nearest command or option.
 */
export const parseLine = (typed: string, commands: readonly Callable[]): Invocation => {
  const line = typed.trim()
  if (line.length > LONGEST_LINE) {
    throw new ChatError('bad_value', 'line_too_long', { length: line.length, limit: LONGEST_LINE })
  }
  if (/(?!\t)\p{Cc}/u.test(line)) throw new ChatError('bad_value', 'control_characters', {})
  const { command, end } = findCommand(line, commands)
  const options: Record<string, string> = Object.create(null)
  const begin = skipSpace(line, end)
  for (let at = begin; at < line.length; ) {
    const option = readOption(line, at, at === begin, command)
    const place = { command: command.path, option: option.text }
    if (option.text in options) throw new ChatError('too_many_options', 'option_twice', place, place)
    const value = readValue(line, skipSpace(line, option.end), option.text, command)
    if (value.text === '') throw new ChatError('bad_value', 'option_empty', place, place)
    options[option.text] = value.text
    at = skipSpace(line, value.end)
  }
  return { path: command.path, options }
}
