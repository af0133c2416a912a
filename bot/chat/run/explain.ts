import { quoted } from '../../calls/write-line.ts'
import { clean } from '../../text/clean.ts'
import type { CommandText } from '../../text/command-text.ts'
import type { ChatProblems } from '../../text/messages/chat-problems.ts'
import type { Words } from '../../text/words.ts'
import type { Failure } from './call-outcome.ts'
import { exampleOfCommand } from './in-kitchen.ts'

interface Speech {
  readonly words: Words
  readonly commands: Readonly<Record<string, CommandText>>
}

/** The jar of the examples. */
const A_JAR = /^(\/jar \S+|\/again) lemon(?= )/

/** A command in use, of the jar that was named. */
function exampleOf(
  { path, kitchen }: Pick<Failure, 'path' | 'kitchen'>,
  jar: string | null,
  commands: Speech['commands'],
): string | null {
  const text = path === null ? undefined : commands[path]
  const example = text === undefined ? undefined : exampleOfCommand(text, kitchen)
  if (example === undefined) return null
  return jar === null ? example : example.replace(A_JAR, (_, command) => `${command} ${quoted(jar)}`)
}

/** The sentence for a problem; one about a missing option shows the command in use. */
export const explain = (
  { path, error: { problem, values }, kitchen }: Failure,
  { words, commands }: Speech,
): string => {
  if (problem !== 'missing_option') return clean(words.problem(problem, values, kitchen))
  const missing = values as ChatProblems[typeof problem]
  const isTold = missing.example === '' || missing.example?.startsWith('/')
  const example = isTold ? missing.example || null : exampleOf({ path, kitchen }, missing.jar ?? null, commands)
  return clean(words.problem(problem, { ...missing, example }, kitchen))
}
