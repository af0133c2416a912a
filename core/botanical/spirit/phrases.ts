import { plainWords } from '../../spelling/normalise-name.ts'

/** Where one of the phrases stands among words: from the first of them up to, not including, the last. */
export interface PhraseSpan {
  readonly from: number
  readonly to: number
}

export interface Phrases {
  /** The longest phrase that begins at word `at`; the words in it, 0 where none does. */
  longestAt(words: readonly string[], at: number): number
  /** The first phrase anywhere among the words that touches none of `taken`, else null. */
  firstIn(words: readonly string[], taken?: readonly PhraseSpan[]): PhraseSpan | null
  /** Phrases of one whole word. */
  readonly single: readonly string[]
}

const ANY = '*'

/** Words as they are compared; `*` is kept. */
const patternOf = (phrase: string): readonly string[] =>
  phrase
    .trim()
    .split(/\s+/)
    .flatMap((word) => {
      if (!word.includes(ANY)) return plainWords(word)
      return [
        word
          .split(ANY)
          .map((piece) => plainWords(piece).join(''))
          .join(ANY),
      ]
    })

const fits = (pattern: string, word: string): boolean => {
  const star = pattern.indexOf(ANY)
  if (star === -1) return pattern === word
  if (pattern.startsWith(ANY) && pattern.endsWith(ANY) && pattern.length > 2) return word.includes(pattern.slice(1, -1))
  const [before, after] = [pattern.slice(0, star), pattern.slice(star + 1)]
  return word.length >= before.length + after.length && word.startsWith(before) && word.endsWith(after)
}

/** Phrases joined with commas, ready to be found. */
export const phrases = (list: string): Phrases => {
  const patterns = list
    .split(',')
    .map(patternOf)
    .filter(({ length }) => length > 0)
  const open: (readonly string[])[] = []
  const byFirst = new Map<string, (readonly string[])[]>()
  for (const pattern of patterns) {
    const [first = ''] = pattern
    if (first.startsWith(ANY)) open.push(pattern)
    else {
      const key = first.includes(ANY) ? first.slice(0, 2) : first
      byFirst.set(key, [...(byFirst.get(key) ?? []), pattern])
    }
  }
  const lengthAt = (words: readonly string[], at: number, pattern: readonly string[]): number =>
    at + pattern.length <= words.length && pattern.every((part, place) => fits(part, words[at + place]!))
      ? pattern.length
      : 0
  const longestAt = (words: readonly string[], at: number): number => {
    const word = words[at] ?? ''
    const near = [...(byFirst.get(word) ?? []), ...(byFirst.get(word.slice(0, 2)) ?? []), ...open]
    return Math.max(0, ...near.map((pattern) => lengthAt(words, at, pattern)))
  }
  return {
    longestAt,
    firstIn: (words, taken = []) => {
      for (let at = 0; at < words.length; at++) {
        const length = longestAt(words, at)
        const span = { from: at, to: at + length }
        if (length > 0 && !taken.some(({ from, to }) => span.from < to && from < span.to)) return span
      }
      return null
    },
    single: patterns.flatMap((pattern) => (pattern.length === 1 && !pattern[0]!.includes(ANY) ? pattern : [])),
  }
}
