import type { FirstLine, HelpTopic } from '../../text/help-text.ts'

export const HELP = 'help'

/** Asks for every command; behind a topic or a command, for all of it. */
export const ALL = 'all'

export const HELP_TOPICS: readonly HelpTopic[] = ['planning', 'jars', 'sums', 'sharing', 'you']

export const isHelpTopic = (typed: string): typed is HelpTopic => HELP_TOPICS.some((topic) => topic === typed)

export interface HelpOption {
  readonly name: string
  readonly text: string
  readonly required: boolean
}

export interface HelpEntry {
  readonly command: string
  readonly summary: string
  readonly options: readonly HelpOption[]
  readonly examples: readonly string[]
}

/** A page about one command, about some of them, or the first of all. */
export interface HelpPage {
  readonly ok: true
  readonly path: typeof HELP
  readonly topic: string | null
  /** On the page that comes first: what there is to read about. */
  readonly topics?: readonly HelpTopic[]
  /** There, what somebody new types, in the units of whoever asked; left out: as in everybody's help. */
  readonly firstLines?: readonly FirstLine[]
  /** About a word that is no command: what to type. */
  readonly lines?: readonly FirstLine[]
  readonly entries: readonly HelpEntry[]
  /** What asks for the other command of that name. */
  readonly also?: string
  /** How many commands, or options of one, are told on the first screen, and what asks for the rest; left out: all. */
  readonly first?: { readonly count: number; readonly rest: string }
}

/** What of a page is told on the first screen: some commands, or of one some options and one example; all where all has room. */
export function toldFirst({ topic, entries, first }: HelpPage): readonly HelpEntry[] {
  if (first === undefined) return entries
  const { count } = first
  if (topic === null) return entries.slice(0, count)
  return entries.map(({ options, examples, ...entry }) => ({
    ...entry,
    options: options.slice(0, count),
    examples: examples.slice(0, 1),
  }))
}
