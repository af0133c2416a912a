/** A command called: the only thing dispatch takes, whoever made it. */
export interface Invocation {
  readonly path: string
  /** Option name to the text typed for it. */
  readonly options: Readonly<Record<string, string>>
  /** A jar of whoever typed it stands for its numbers. */
  readonly isOfJar?: true
}
