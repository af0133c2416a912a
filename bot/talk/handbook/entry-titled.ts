import { once } from '../../../core/once.ts'
import { plainWords } from '../../../core/spelling/normalise-name.ts'
import type { Handbook, HandbookId } from '../../text/messages/handbook.ts'

const nameOf = (text: string): string => plainWords(text).join(' ')

const titles = once(
  (handbook: Handbook) => new Map(Object.entries(handbook).map(([id, { title }]) => [nameOf(title), id as HandbookId])),
)

/** The entry whose title is typed, word for word; null where a text is none. */
export const entryTitled = (text: string, handbook: Handbook): HandbookId | null =>
  titles(handbook).get(nameOf(text)) ?? null
