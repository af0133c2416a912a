/**
 * What can be wrong, by key, with the values its sentence needs. Each room's `problems.ts` adds its own, so that this file
 * knows none of them; the sentences stand in bot/text.
 */
// biome-ignore lint/suspicious/noEmptyInterface: the rooms extend it
export interface Problems {}

/** The kinds of failure that callers and scripts may branch on. */
export type ErrorCode =
  | 'question'
  | 'not_understood'
  | 'bad_value'
  | 'ambiguous'
  | 'unknown_command'
  | 'unknown_option'
  | 'missing_option'
  | 'too_many_options'
  | 'unreachable'
  | 'not_soluble'
  | 'refused'
  | 'over_ceiling'
  | 'wrong_stage'
  | 'limit'
  | 'storage'
  | 'not_found'
  | 'internal'

/** A wish that cannot be met or a value that cannot be taken: a key and its values, never a sentence. */
export class DomainError<Key extends keyof Problems = keyof Problems> extends Error {
  override readonly name = 'DomainError'
  readonly code: ErrorCode
  readonly problem: Key
  readonly values: Problems[Key]

  constructor(code: ErrorCode, problem: Key, values: Problems[Key]) {
    super(`${code}: ${problem}`)
    this.code = code
    this.problem = problem
    this.values = values
  }
}

/** What `work` throws for what was asked; null where it throws nothing. Anything but a `DomainError` comes out here. */
export function domainErrorOf(work: () => unknown): DomainError | null {
  try {
    work()
    return null
  } catch (error) {
    if (error instanceof DomainError) return error
    throw error
  }
}

export const isRefused = (work: () => unknown): boolean => domainErrorOf(work) !== null

/** What `work` makes; null where it throws one for what was asked. A fault of ours comes out here as it is. */
export function unlessRefused<Made>(work: () => Made): Made | null {
  try {
    return work()
  } catch (error) {
    if (error instanceof DomainError && error.code !== 'internal') return null
    throw error
  }
}
