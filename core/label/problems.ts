/** What a label cannot be asked. */
export interface LabelProblems {
  /** A region whose rules are not on record. */
  unknown_region: { readonly typed: string }
  /** No country of ISO 3166; two letters of the nearest, or null. */
  unknown_country_code: { readonly typed: string; readonly nearest: string | null }
}

declare module '../domain-error.ts' {
  interface Problems extends LabelProblems {}
}
