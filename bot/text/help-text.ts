import type { Sayings } from './sayings.ts'

/** What commands are about, for whoever looks for one. */
export type HelpTopic = 'planning' | 'jars' | 'sums' | 'sharing' | 'you'

/** A line to type, and what it is for. */
export interface FirstLine {
  readonly line: string
  readonly what: string
}

/** A sentence that is understood, and the line that it stands for. */
export interface FirstSaid {
  readonly said: string
  readonly line: string
}

/** Words that are no command, and what to type for what is meant by them. */
export interface AboutWord {
  /** In lower case. */
  readonly words: readonly string[]
  readonly lines: readonly FirstLine[]
}

/** The page of help that comes first. */
export interface HelpText extends Sayings<'startHere' | 'byTopic' | 'everything' | 'oneCommand'> {
  /** In the order in which somebody new types them. */
  first(): readonly FirstLine[]
  /** For whoever was not understood: three things that can be said. */
  said(): readonly FirstSaid[]
  about(): readonly AboutWord[]
  /** What asks for what has no room. */
  rest(line: string): string
  /** What asks for another command of that name. */
  also(line: string): string
  readonly topics: Readonly<Record<HelpTopic, string>>
}
