/** What can be wrong with what is at hand. `typed` is fit to be shown. */
export interface ShoppingProblems {
  /** A bag of sugar, of which nobody said how heavy; `example`: all that is at hand, with a weight in its place. */
  readonly pack_weight: { readonly typed: string; readonly example: string }
}

declare module '../domain-error.ts' {
  interface Problems extends ShoppingProblems {}
}
