import type { BotanicalProblems } from './botanical/problems.ts'
import type { SpiritProblems } from './botanical/spirit/problems.ts'
import type { JarProblems } from './jar/problems.ts'
import type { ShareProblems } from './jar/share-problems.ts'
import type { LabelProblems } from './label/problems.ts'
import type { LiquidProblems } from './liquid/problems.ts'
import type { QuantityProblems } from './quantity/problems.ts'
import type { CodeProblems } from './recipe/code/problems.ts'
import type { PlanProblems } from './recipe/plan/problems.ts'
import type { RecipeProblems } from './recipe/problems.ts'

/** What can be wrong, by key, with the values its sentence needs. The sentences live in bot/text. */
export interface Problems
  extends QuantityProblems,
    LiquidProblems,
    RecipeProblems,
    PlanProblems,
    CodeProblems,
    BotanicalProblems,
    SpiritProblems,
    LabelProblems,
    JarProblems,
    ShareProblems {}

/** The kinds of failure that callers and scripts may branch on. */
export type ErrorCode =
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
