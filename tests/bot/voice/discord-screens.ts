import type { MessagePayload } from '../../../bot/discord/show/message-payload.ts'
import { wrap } from '../../../bot/terminal/show/wrap.ts'
import { textsOf } from '../discord/rendering.ts'

/** Columns of a message in Discord on a phone. From memory, no source. */
export const PHONE_COLUMNS = 40

const LONGEST_DAY = '24 September 2026'

/** Markdown as it is drawn: marks taken out, stamps and commands in the words that stand there. */
const drawn = (markdown: string): string =>
  markdown
    .replace(/^-# /, '')
    .replace(/(?<!\\)\*\*/g, '')
    .replace(/<t:-?\d+:D>/g, LONGEST_DAY)
    .replace(/<t:-?\d+:f>/g, `${LONGEST_DAY} at 09:00`)
    .replace(/<(\/[a-z -]+):\d+>/g, '$1')
    .replace(/\\([^0-9A-Za-z\s])/g, '$1')
    .replace(/[\u2068\u2069]/g, '')

/** A message line by line as a phone shows its text; its buttons stand under it. */
export const drawnLines = (message: MessagePayload): readonly string[] =>
  textsOf(message)
    .flatMap((text) => text.split('\n'))
    .map(drawn)
    .filter((line) => line.trim() !== '')
    .flatMap((line) => wrap(line, PHONE_COLUMNS))
