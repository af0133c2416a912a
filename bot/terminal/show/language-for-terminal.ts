import type { CommandText } from '../../text/command-text.ts'
import type { HelpText } from '../../text/help-text.ts'
import type { Language } from '../../text/language.ts'
import type { MoreText } from '../../text/more-text.ts'
import { inOwnKitchen } from '../../text/own-kitchen.ts'
import type { ConsoleText } from '../../text/terminal-text.ts'
import type { Words } from '../../text/words.ts'
import { wordsOf } from '../../text/words-of.ts'

/** One language, as the terminal needs it. */
export interface TerminalLanguage {
  readonly words: Words
  /** For scripts, whatever the kitchen. */
  readonly dataWords: Words
  readonly commands: Readonly<Record<string, CommandText>>
  readonly console: ConsoleText
  readonly more: MoreText
  readonly help: HelpText
}

/** A language as the terminal speaks it. */
export const terminalLanguage = (language: Language): TerminalLanguage => ({
  words: inOwnKitchen(wordsOf(language), language),
  dataWords: wordsOf(language),
  commands: language.commands,
  console: language.console,
  more: language.more,
  help: language.help,
})

/** A line that runs as it stands, for greeting and usage. */
export const firstExample = (speech: TerminalLanguage): string =>
  Object.values(speech.commands).flatMap((text) => text.examples)[0] ?? '/help'
