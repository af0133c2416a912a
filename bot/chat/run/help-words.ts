import type { AboutWord, FirstLine } from '../../text/help-text.ts'
import { nearest } from '../grammar/nearest.ts'
import type { HelpEntry } from './help-page.ts'

const MOST_COMMANDS = 3

/** Without the mark of an option, of a command, or of several. */
const bare = (typed: string): string => typed.replace(/^\/|:$/g, '')

/** What a language says of a word, or of the one that it is a slip of. */
export function linesAbout(typed: string, about: readonly AboutWord[]): readonly FirstLine[] {
  const word = bare(typed)
  const known = about.flatMap(({ words }) => words)
  const meant = known.includes(word) ? word : nearest(word, known)
  return about.filter(({ words }) => meant !== null && words.includes(meant)).flatMap(({ lines }) => lines)
}

/** Commands of which a word is the name, then those of which it is an option: those that need it, and that say it in an example, first. */
export function commandsAbout(typed: string, entries: readonly HelpEntry[]): readonly HelpEntry[] {
  const word = bare(typed)
  const named = entries.filter(({ command }) => command.split(' ').includes(word))
  const rankOf = ({ options, examples }: HelpEntry): number =>
    2 * Number(examples.some((line) => line.includes(`${word}:`))) +
    Number(options.some(({ name, required }) => name === word && required))
  const having = entries
    .filter((each) => !named.includes(each) && each.options.some(({ name }) => name === word))
    .toSorted((one, other) => rankOf(other) - rankOf(one))
  return [...named, ...(named.length > 0 ? [] : having)].slice(0, MOST_COMMANDS).map((each) => ({
    ...each,
    examples: each.examples.toSorted(
      (one, other) => Number(other.includes(`${word}:`)) - Number(one.includes(`${word}:`)),
    ),
  }))
}
