import type { IsoDay } from '../../quantity/time/calendar-day.ts'

/** What can be wrong with a batch that is shared, or with looking for it. */
export interface ShareProblems {
  /** None of them withdrawn. */
  readonly too_many_shares: { readonly most: number }
  /** None of whoever asks. */
  readonly no_such_share: { readonly typed: string }
  /** Several batches, or several times the same; a null day where it was posted nowhere. */
  readonly several_shares: {
    readonly name: string
    readonly shares: readonly { readonly id: string; readonly day: IsoDay | null }[]
  }
  /** What was thrown away is no example. */
  readonly share_discarded: { readonly jar: string }
  readonly bad_share: { readonly typed: string }
  /** By whoever shared it. */
  readonly share_withdrawn: Record<string, never>
  /** It was forgotten with its owner, or is older than what is kept. */
  readonly share_gone: Record<string, never>
}

declare module '../../domain-error.ts' {
  interface Problems extends ShareProblems {}
}
