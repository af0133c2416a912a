/** A file that somebody gave. */
export interface GivenFile {
  /** As they call it; only ever shown. */
  readonly name: string
  readonly bytes: Uint8Array
}

/** Reads the file that an option names, up to `mostBytes`. Throws a ChatError of `FileProblems`. */
export type OpenFile = (typed: string, mostBytes: number) => Promise<GivenFile>
