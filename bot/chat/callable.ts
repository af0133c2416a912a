/** What the grammar, help and completion need of a command: its path and the names of its options, the first first. */
export interface Callable {
  readonly path: string
  readonly input: { readonly shape: Readonly<Record<string, unknown>> }
}

export const optionNames = (command: Callable): readonly string[] => Object.keys(command.input.shape)

/** The one that a path names, in any case, or null. */
export const byPath = <Called extends Callable>(path: string, commands: readonly Called[]): Called | null =>
  commands.find((command) => command.path === path.toLowerCase()) ?? null
