import type { ErrorCode } from '../../core/domain-error.ts'
import type { ChatProblems } from '../text/messages/chat-problems.ts'

/** Where in the line it went wrong, for scripts. */
interface Place {
  readonly command?: string
  readonly option?: string
  readonly nearest?: string | null
}

/** A line that cannot be taken: a key and its values, never a sentence. */
export class ChatError<Key extends keyof ChatProblems = keyof ChatProblems> extends Error {
  override readonly name = 'ChatError'
  readonly code: ErrorCode
  readonly problem: Key
  readonly values: ChatProblems[Key]
  readonly command: string | null
  readonly option: string | null
  readonly nearest: string | null

  constructor(code: ErrorCode, problem: Key, values: ChatProblems[Key], place: Place = {}) {
    super(`${code}: ${problem}`)
    this.code = code
    this.problem = problem
    this.values = values
    this.command = place.command ?? null
    this.option = place.option ?? null
    this.nearest = place.nearest ?? null
  }
}
