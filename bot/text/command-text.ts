/** What a language says about a command. */
export interface CommandText {
  readonly summary: string
  /** Option name to what belongs there. */
  readonly options: Readonly<Record<string, string>>
  /** Lines that run as they stand. */
  readonly examples: readonly string[]
}
