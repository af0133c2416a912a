/** What can be wrong with a price. `typed` is fit to be shown. */
export interface CostProblems {
  readonly price_not_read: { readonly typed: string }
  /** A price without how much it is for, or for what is not sold so; `example`: one that is read. */
  readonly price_per_what: { readonly typed: string; readonly example: string }
  /** A `?` where a price belongs. */
  readonly price_asked: { readonly of: readonly string[] }
  readonly too_many_prices: { readonly most: number }
}

declare module '../domain-error.ts' {
  interface Problems extends CostProblems {}
}
