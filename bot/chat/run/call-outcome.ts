import type { ErrorCode } from '../../../core/domain-error.ts'
import type { Invocation } from '../../calls/invocation.ts'
import type { AllProblems } from '../../text/language.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import type { Asker, Command } from '../command.ts'
import type { Reply } from '../reply.ts'

export interface Dispatch extends Asker {
  readonly commands: readonly Command[]
  readonly nowMs: number
  /** Takes what the maker of the bot has to know: command names and stack frames, nothing that was typed. */
  readonly log: (text: string) => void
}

/** Why there is no reply: a key and values for the sentence, and what scripts branch on. */
export interface Problem {
  readonly code: ErrorCode
  readonly problem: keyof AllProblems
  readonly values: AllProblems[keyof AllProblems]
  readonly option?: string
  readonly nearest?: string
}

export interface Failure {
  readonly ok: false
  readonly path: string | null
  readonly error: Problem
  /** Whose measures the sentence speaks. */
  readonly kitchen: Kitchen
}

export type CallOutcome =
  | {
      readonly ok: true
      readonly path: string
      readonly reply: Reply
      readonly call?: Invocation
      /** It was read otherwise than it was typed, which is shown. */
      readonly isReread?: true
    }
  | Failure
