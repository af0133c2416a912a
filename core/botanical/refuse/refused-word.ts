import { lazily } from '../../once.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import { undrinkables } from '../spirit/undrinkable.ts'
import { named } from './near-refused.ts'

/** From so many letters on the beginning of a word tells it. */
const LEAST_STEM = 6

const tabled = lazily(() => {
  const pieces = undrinkables.flatMap(({ anywhere, beside }) => `${anywhere} ${beside}`.split(/[\s,]+/))
  return {
    words: new Set([
      ...named.flatMap(({ words, name }) => [...words, ...plainWords(name)]),
      ...pieces.filter((piece) => !piece.includes('*')),
    ]),
    stems: pieces
      .filter((piece) => piece.indexOf('*') >= LEAST_STEM)
      .map((piece) => piece.slice(0, piece.indexOf('*'))),
  }
})

/** Whether a word stands in the name of anything that is refused, a plant or what must not be drunk. */
export const isRefusedWord = (word: string): boolean => {
  const { words, stems } = tabled()
  return [word, ...nameWords(word)].some((each) => words.has(each)) || stems.some((stem) => word.startsWith(stem))
}
