/** What a label cannot be asked. */
export interface LabelProblems {
  /** A region whose rules are not on record. */
  unknown_region: { readonly typed: string }
}
