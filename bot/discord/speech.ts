import type { CommandText } from '../chat/command-text.ts'
import type { DiscordText } from '../text/en/discord.ts'
import type { en } from '../text/en/index.ts'
import type { Words } from '../text/words.ts'
import { wordsOf } from '../text/words-of.ts'
import { stamped, unmarked } from './stamps.ts'

/** One language, as Discord needs it for one person. */
export interface Speech {
  /** Their days are marked, for `escapeText` to show by each reader's clocks. */
  readonly words: Words
  /** For labels, where Discord shows no timestamps. */
  readonly plainWords: Words
  readonly commands: Readonly<Record<string, CommandText>>
  readonly discord: DiscordText
}

const withoutMarks = (words: Words): Words => ({
  say: (message, kitchen) => words.say({ ...message, values: unmarked(message.values) }, kitchen),
  problem: (key, values, kitchen) => words.problem(key, unmarked(values), kitchen),
  onPictures: words.onPictures,
})

/** A language for somebody whose days are those of `zone` (IANA name). */
export const speechIn = (language: typeof en, zone: string): Speech => ({
  words: withoutMarks(wordsOf(language, stamped(zone))),
  plainWords: withoutMarks(wordsOf(language)),
  commands: language.commands,
  discord: language.discord,
})
