import { en } from '../../bot/text/en/index.ts'
import type { Language } from '../../bot/text/language.ts'
import type { Settings } from '../../store/person.ts'

/** Every sentence begins with it. */
export const MARK = '~'

const marked = (said: unknown): unknown => {
  if (typeof said === 'string') return `${MARK}${said}`
  return Array.isArray(said) ? said.map(marked) : said
}

const inOtherWords = (text: unknown): unknown => {
  if (typeof text === 'function') return (...values: readonly unknown[]) => marked(text(...values))
  if (typeof text !== 'object' || text === null || Array.isArray(text)) return text
  return Object.fromEntries(Object.entries(text).map(([key, each]) => [key, inOtherWords(each)]))
}

/** A language of its own, as far as nobody can take it for English. */
export const other = {
  ...(inOtherWords(en) as Language),
  format: en.format,
  american: en.american,
  commands: en.commands,
}

/** Whoever lives in Italy is answered in it. */
export const spokenByCountry = {
  language: en as Language,
  languageOf: ({ country }: Settings): Language => (country === 'IT' ? other : en),
}
