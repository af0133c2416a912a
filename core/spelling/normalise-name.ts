/** Cyrillic and Greek letters that look like Latin ones. */
const LOOKALIKES: ReadonlyMap<string, string> = new Map(
  [...'аaеeоoрpсcхxуyіiкkмmтtвbнhαaοoρpεeιiκkτtνvυu'].flatMap((letter, at, all) =>
    at % 2 === 0 ? [[letter, all[at + 1] ?? letter] as const] : [],
  ),
)

const JOINING = new Set(
  'of the a an di de del della dei delle degli dello dell d da dal il lo la le i gli l un una uno from'.split(' '),
)

/** Letters that do not come apart as accents do, as they are typed on a keyboard without them. */
const DOUBLE: ReadonlyMap<string, string> = new Map([
  ['ß', 'ss'],
  ['œ', 'oe'],
  ['æ', 'ae'],
  ['ł', 'l'],
  ['ø', 'o'],
  ['ı', 'i'],
  ['đ', 'd'],
  ['ð', 'd'],
  ['þ', 'th'],
])

const ASCII = /^[\t\n\r -~]*$/

/**
 * The words of a text without case, accents, hyphens and marks: `Saint-John's wort` is `saint johns wort`.
 * Only letters and digits are left, so that no text means anything special in a search.
 */
export const plainWords = (text: string): readonly string[] => {
  // Most names are plain already, and thousands are read at the start.
  if (ASCII.test(text))
    return (
      text
        .toLowerCase()
        .replace(/['`]s\b/g, 's')
        .match(/[a-z0-9]+/g) ?? []
    )
  return [
    ...text
      .normalize('NFKD')
      .replace(/[\p{M}\p{Cf}]/gu, '')
      .toLowerCase()
      .replace(/['’‘`´ʼ′]s\b/gu, 's')
      .replace(/[^a-z0-9\s]/gu, (letter) => LOOKALIKES.get(letter) ?? DOUBLE.get(letter) ?? letter)
      .matchAll(/[\p{L}\p{N}]+/gu),
  ].map(([word]) => word)
}

/** An English plural made singular; what is none stays. Both sides of a comparison go through it. */
export const singular = (word: string): string => {
  if (word === 'leaves') return 'leaf'
  if (word.length < 4 || !word.endsWith('s') || /(?:ss|us|is)$/.test(word)) return word
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`
  if (/(?:sses|xes|ches|shes)$/.test(word) || (word.length > 5 && word.endsWith('oes'))) return word.slice(0, -2)
  return word.slice(0, -1)
}

/** The words that names are compared by: singular, without `of`, `from`, `the`, `di`, `la`. */
export const nameWords = (text: string): readonly string[] =>
  plainWords(text)
    .filter((word) => !JOINING.has(word))
    .map(singular)
