import type { Invocation } from '../../calls/invocation.ts'
import { byPath } from '../callable.ts'
import { ChatError } from '../chat-error.ts'
import type { Command } from '../command.ts'
import { nearest } from '../grammar/nearest.ts'

/** The command that an invocation names, whoever made it; its options are checked against the command's own. */
export const lookUp = (call: Invocation, commands: readonly Command[]): Command => {
  const command = byPath(call.path, commands)
  if (command !== null) return command
  const paths = commands.map((each) => each.path)
  const meant = nearest(call.path, paths)
  throw new ChatError('unknown_command', 'unknown_command', { typed: call.path, nearest: meant }, { nearest: meant })
}
