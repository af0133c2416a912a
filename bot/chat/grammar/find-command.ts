import { byPath, type Callable } from '../callable.ts'
import { ChatError } from '../chat-error.ts'
import { nearest } from './nearest.ts'

/** Where somebody has named a thing alone: `jar herb`. */
const showing = (group: string, commands: readonly Callable[]): string | null =>
  byPath(`${group} show`, commands)?.path ?? null

/** What else makers call a thing that is done with a jar. */
const OTHER_PATHS: ReadonlyMap<string, string> = new Map([
  ['jar blend', 'jar combine'],
  ['jar mix', 'jar combine'],
  ['jar merge', 'jar combine'],
  ['jar remove', 'jar take-out'],
  ['jar lift', 'jar take-out'],
  ['jar takeout', 'jar take-out'],
  ['jar move', 'jar note'],
  ['jar freeze', 'jar note'],
  ['jar rack', 'jar filter'],
  ['jar drink', 'jar open'],
])

/** Pseudo-commands of the chat itself, which a misspelt command may have meant. */
const OWN = ['help']

/** Whether somebody talks, and gives no command. */
export const isSentence = (line: string): boolean => /^\s*[^/\s]\S*\s+\S+\s+\S/.test(line)

interface Found {
  readonly command: Callable
  /** Where the text of its options begins. */
  readonly end: number
}

/** The path of the command that a line begins with; null where it begins with none. */
export function pathTyped(line: string, commands: readonly Callable[]): string | null {
  try {
    return findCommand(line, commands).command.path
  } catch (error) {
    if (error instanceof ChatError) return null
    throw error
  }
}

/** The command that a line begins with, its slash optional; of two that fit, the one of more words. */
export const findCommand = (line: string, commands: readonly Callable[]): Found => {
  const most = Math.max(1, ...commands.map((command) => command.path.split(' ').length))
  const start = /^\s*\/?\s*/.exec(line)![0].length
  const words: { readonly text: string; readonly end: number }[] = []
  const word = /\S+/g
  word.lastIndex = start
  for (let match = word.exec(line); match !== null && words.length < most; match = word.exec(line)) {
    words.push({ text: match[0], end: word.lastIndex })
  }
  if (words.length === 0) throw new ChatError('unknown_command', 'empty_line', {})

  const pathOf = (count: number) => words.slice(0, count).map((each) => each.text)
  for (let count = words.length; count > 0; count--) {
    const command = byPath(pathOf(count).join(' '), commands)
    if (command !== null) return { command, end: words[count - 1]!.end }
  }
  const inGroup = commands.some((command) => command.path.startsWith(`${words[0]!.text.toLowerCase()} `))
  const typed = pathOf(inGroup ? words.length : 1).join(' ')
  const paths = [...commands.map((command) => command.path), ...OWN]
  const meant =
    OTHER_PATHS.get(typed.toLowerCase()) ??
    nearest(typed, paths) ??
    (inGroup && words.length > 1 ? showing(words[0]!.text, commands) : null)
  const values = { typed, nearest: meant, isSentence: isSentence(line) }
  throw new ChatError('unknown_command', 'unknown_command', values, { nearest: meant })
}
