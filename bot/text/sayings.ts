/** Sentences that need no values. */
export type Sayings<Key extends string> = { readonly [Each in Key]: () => string }
