/** What Discord takes is 1024. */
const LONGEST_ALT = 1000

const shortenedTo = (text: string, length: number): string =>
  text.length <= length ? text : `${text.slice(0, length - 1).replace(/[\uD800-\uDBFF]$/, '')}…`

/** Sentences one after the other, as many as have room. */
export const altText = (sentences: readonly string[]): string =>
  shortenedTo(sentences.filter((sentence) => sentence !== '').join(' '), LONGEST_ALT)

/** A list told as fully as there is room for, at last as many of its items before the rest is counted. */
export function altList(
  before: string,
  tellings: readonly (readonly string[])[],
  rest: (count: number) => string,
): string {
  const all = tellings.map((items) => `${before} ${items.join('; ')}.`)
  const whole = all.find((text) => text.length <= LONGEST_ALT)
  if (whole !== undefined) return whole
  const items = tellings.at(-1) ?? []
  const end = (count: number): string => `; ${rest(count)}.`
  const room = LONGEST_ALT - before.length - end(items.length).length
  let count = 0
  for (let length = 0; count < items.length; count++) {
    length += (items[count]?.length ?? 0) + 2
    if (length > room) break
  }
  return `${before} ${items.slice(0, count).join('; ')}${end(items.length - count)}`
}
