import { type Call, callOfTexts } from '../../bot/calls/call.ts'
import type { Path } from '../../bot/calls/signatures.ts'
import { lineOf } from '../../bot/calls/write-line.ts'
import { parseLine } from '../../bot/chat/grammar/grammar.ts'
import type { Action } from '../../bot/chat/reply.ts'
import { commands } from '../../bot/commands/index.ts'

/** The call that a line is read as. */
export function callTyped(line: string): Call {
  const { path, options } = parseLine(line, commands)
  const call = callOfTexts(path as Path, Object.entries(options))
  if (call === null) throw new TypeError(`cannot be read: ${line}`)
  return call
}

/** What to type for each of some actions. */
export const linesOf = (actions: readonly Pick<Action, 'call'>[]): readonly string[] =>
  actions.map(({ call }) => lineOf(call))
