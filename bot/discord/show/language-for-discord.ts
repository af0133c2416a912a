import { once } from '../../../core/once.ts'
import type { CommandText } from '../../text/command-text.ts'
import type { DiscordText } from '../../text/discord-text.ts'
import type { HelpText } from '../../text/help-text.ts'
import type { Language } from '../../text/language.ts'
import type { MoreText } from '../../text/more-text.ts'
import { inOwnKitchen } from '../../text/own-kitchen.ts'
import type { Words } from '../../text/words.ts'
import { wordsOf } from '../../text/words-of.ts'
import { type JarNames, noJarNames } from './jar-names.ts'
import { type NamedLines, namedLines } from './name-first-option.ts'
import { stamped, unmarked } from './timestamps.ts'

/** One language, as Discord needs it for one person. */
export interface DiscordLanguage {
  /** Their days are marked, for `escapeText` to show by each reader's clocks. */
  readonly words: Words
  /** For labels, where Discord shows no timestamps. */
  readonly plainWords: Words
  readonly commands: Readonly<Record<string, CommandText>>
  readonly discord: DiscordText
  readonly more: MoreText
  readonly help: HelpText
  /** A line as Discord takes it. */
  readonly line: NamedLines['line']
}

const adapted = (words: Words, { sentence }: NamedLines, byName: JarNames): Words => ({
  say: (message, kitchen) => {
    const values = unmarked(message.values)
    return byName(sentence(words.say({ ...message, values }, kitchen), values))
  },
  problem: (key, given, kitchen) => {
    const values = unmarked(given)
    return byName(sentence(words.problem(key, values, kitchen), values))
  },
  line: (call) => byName(words.line(call)),
  onPictures: words.onPictures,
})

/** With the sentences in it that tell nobody where the bot runs. */
const amongPeople = once(
  (language: Language): Language => ({
    ...language,
    problems: { ...language.problems, ...language.problemsInDiscord },
  }),
)

const linesOf = once(namedLines)

/** A language for somebody whose days are those of `zone` (IANA name), and who reads their jars by name. */
export const speechIn = (given: Language, zone: string, byName: JarNames = noJarNames): DiscordLanguage => {
  const language = amongPeople(given)
  const lines = linesOf(language.commands)
  return {
    words: inOwnKitchen(adapted(wordsOf(language, stamped(zone)), lines, byName), language),
    plainWords: inOwnKitchen(adapted(wordsOf(language), lines, byName), language),
    commands: language.commands,
    discord: language.discord,
    more: language.more,
    help: language.help,
    line: lines.line,
  }
}
