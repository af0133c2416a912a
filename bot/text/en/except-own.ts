import { escaped } from '../../../core/spelling/escaped.ts'

/** What is typed is typed as it is. */
const LINE = '(?:^|(?<=\\s))/[a-z][^\\n]*'

/** With a capital where the word had one whose place it takes. */
export const asCapital = (typed: string, told: string): string =>
  /^\p{Lu}/u.test(typed) ? `${told.charAt(0).toUpperCase()}${told.slice(1)}` : told

/** A text of ours said otherwise, part by part: somebody's own words stay as they are, and so do lines to type. */
export function exceptOwn(text: string, own: readonly string[], said: (part: string) => string): string {
  const kept = own.filter((each) => each !== '' && said(each) !== each).map(escaped)
  const parts = text.split(new RegExp(`(${[...kept, LINE].join('|')})`, 'u'))
  return parts.map((part, at) => (at % 2 === 1 ? part : said(part))).join('')
}
