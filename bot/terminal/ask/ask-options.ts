import { ChatError } from '../../chat/chat-error.ts'
import { nearest } from '../../chat/grammar/nearest.ts'

const FLAGS = ['--json', '--full', '--now', '--help']

/** An instant with its zone, to the minute at least. */
const INSTANT = /^(\d{4}-\d{2}-\d{2})T\d{2}:\d{2}(:\d{2}(\.\d{1,3})?)?(Z|[+-]\d{2}:\d{2})$/

export interface AskOptions {
  readonly json: boolean
  /** Both depths of a reply. */
  readonly full: boolean
  readonly help: boolean
  /** The clock, where it was set. */
  readonly nowMs: number | null
  /** The line to answer, `-` for standard input, null where none was given. */
  readonly line: string | null
}

const readInstant = (typed: string): number => {
  const day = INSTANT.exec(typed)?.[1]
  const isDay = day !== undefined && new Date(`${day}T00:00:00Z`).toJSON()?.startsWith(day)
  const instant = isDay ? Date.parse(typed) : Number.NaN
  if (Number.isNaN(instant)) throw new ChatError('bad_value', 'bad_instant', { typed })
  return instant
}

/** Reads the arguments after `ask`. A line that lost its quotes comes in pieces and is put together again. */
export const readAskOptions = (argv: readonly string[]): AskOptions => {
  const pieces: string[] = []
  let json = false
  let full = false
  let help = false
  let nowMs: number | null = null
  for (let index = 0; index < argv.length; index++) {
    const argument = argv[index]!
    if (argument === '--json') json = true
    else if (argument === '--full') full = true
    else if (argument === '--help' || argument === '-h') help = true
    else if (argument === '--now') nowMs = readInstant(argv[++index] ?? '')
    else if (argument.startsWith('--now=')) nowMs = readInstant(argument.slice('--now='.length))
    else if (argument.startsWith('--')) {
      const meant = nearest(argument, FLAGS)
      throw new ChatError('unknown_option', 'bad_flag', { typed: argument, nearest: meant }, { nearest: meant })
    } else pieces.push(argument)
  }
  return { json, full, help, nowMs, line: pieces.length === 0 ? null : pieces.join(' ') }
}
