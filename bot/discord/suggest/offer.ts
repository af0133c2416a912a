/** One of the values that are offered while somebody types. */
export interface Offer {
  /** What is shown. */
  readonly name: string
  /** What is sent when it is chosen. */
  readonly value: string
}
