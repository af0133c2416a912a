/** What a trouble cannot be asked. */
export interface TroubleProblems {
  /** Nothing that is on record; up to three names of what comes nearest. */
  unknown_symptom: { readonly typed: string; readonly nearest: readonly string[] }
  /** No question that is ever asked. */
  unknown_sign: { readonly typed: string; readonly known: readonly string[] }
}

declare module '../domain-error.ts' {
  interface Problems extends TroubleProblems {}
}
