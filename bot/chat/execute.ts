import { ZodError } from 'zod'
import { DomainError, type ErrorCode } from '../../core/domain-error.ts'
import type { AllProblems } from '../text/words.ts'
import { byPath } from './callable.ts'
import { ChatError } from './chat-error.ts'
import type { Command } from './command.ts'
import { parseLine } from './grammar.ts'
import type { Invocation } from './invocation.ts'
import { nearest } from './nearest.ts'
import type { Reply } from './reply.ts'
import { trace } from './trace.ts'
import { holdsOnlyFinite, verifyReply } from './verify-reply.ts'

export interface Dispatch {
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
}

export type Outcome = { readonly ok: true; readonly path: string; readonly reply: Reply } | Failure

const fromDomain = (error: DomainError, option: string | null): Problem => ({
  code: error.code,
  problem: error.problem,
  values: error.values,
  ...(option === null ? {} : { option }),
})

const fromChat = (error: ChatError): Problem => ({
  code: error.code,
  problem: error.problem,
  values: error.values,
  ...(error.option === null ? {} : { option: error.option }),
  ...(error.nearest === null ? {} : { nearest: error.nearest }),
})

/** The first option that cannot be taken, or null where the fault is ours. */
const fromSchema = (error: ZodError, call: Invocation): Problem | null => {
  const issue = error.issues[0]
  const option = typeof issue?.path[0] === 'string' ? issue.path[0] : null
  if (issue?.code === 'custom') {
    const cause: unknown = issue.params?.error
    if (cause instanceof DomainError) return fromDomain(cause, option)
  }
  if (option === null || Object.hasOwn(call.options, option)) return null
  const values = { command: call.path, option, example: null }
  return { code: 'missing_option', problem: 'missing_option', values, option }
}

const known = (error: unknown, call: Invocation | null): Problem | null => {
  if (error instanceof DomainError) return fromDomain(error, null)
  if (error instanceof ChatError) return fromChat(error)
  return error instanceof ZodError && call !== null ? fromSchema(error, call) : null
}

type Attempt<Result> = { readonly ok: true; readonly result: Result } | Failure

/** The one place that catches: what a person can mend becomes a problem, anything else is logged and excused. */
export const attempt = <Result>(
  work: () => Result,
  called: () => Invocation | null,
  log: Dispatch['log'],
): Attempt<Result> => {
  try {
    return { ok: true, result: work() }
  } catch (error) {
    const call = called()
    const path = call?.path ?? (error instanceof ChatError ? error.command : null)
    const problem = known(error, call)
    const isTheirs = problem !== null && problem.code !== 'internal' && holdsOnlyFinite(problem.values)
    if (isTheirs) return { ok: false, path, error: problem }
    log(`${path === null ? 'unread line' : `/${path}`}: ${trace(error)}`)
    return { ok: false, path, error: { code: 'internal', problem: 'internal', values: {} } }
  }
}

/** The command that an invocation names, whoever made it; its options are checked against the command's own. */
const lookUp = (call: Invocation, commands: readonly Command[]): Command => {
  const command = byPath(call.path, commands)
  if (command !== null) return command
  const paths = commands.map((each) => each.path)
  const meant = nearest(call.path, paths)
  throw new ChatError('unknown_command', 'unknown_command', { typed: call.path, nearest: meant }, { nearest: meant })
}

/** Runs a line, or an invocation made elsewhere. Never throws; a number that is not finite never leaves. */
export const execute = (line: string | Invocation, { commands, nowMs, log }: Dispatch): Outcome => {
  let call: Invocation | null = null
  const work = () => {
    const read = typeof line === 'string' ? parseLine(line, commands) : line
    const command = lookUp(read, commands)
    call = read
    const reply = command.run(command.input.parse({ ...read.options }), { nowMs })
    verifyReply(reply)
    return { path: command.path, reply }
  }
  const attempted = attempt(work, () => call, log)
  return attempted.ok ? { ok: true, ...attempted.result } : attempted
}
