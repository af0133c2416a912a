import type { Token, TypedText } from '../read/tokens.ts'

/** Longest stretch of a sentence that is read; what stands behind it is not looked at. */
export const MOST_SAID = 4000

/** An English contraction is one word: `what's` is `whats`; an Italian elision is two: `l'ho` is `l`, `ho`. */
const PIECE =
  /(?<number>[.,]?[0-9]+(?:[.,][0-9]+)*)|(?<word>\p{L}[\p{L}\p{M}]*(?:['’‘´`](?:t|s|re|ve|m|ll|d)(?![\p{L}\p{N}]))?)|(?<sign>\S)/gu

const APOSTROPHE = /['’‘´`]/gu

const LOOKALIKES: ReadonlyMap<string, string> = new Map([
  ['−', '-'],
  ['–', '-'],
  ['—', '-'],
  ['‐', '-'],
  ['‑', '-'],
  ['⁄', '/'],
  ['∕', '/'],
  ['º', '°'],
  ['˚', '°'],
  ['×', 'x'],
])

const plain = (piece: string): string =>
  piece.normalize('NFD').replace(/\p{M}/gu, '').replace(APOSTROPHE, '').toLowerCase()

/**
 * The pieces of a sentence of any length, in lower case and without accents, each with where it stands in the text as typed.
 * Never throws. The stop behind a number belongs to the sentence: `reads 71.` holds a 71.
 */
export function saidText(raw: string): TypedText {
  const text = raw.slice(0, MOST_SAID)
  const tokens: Token[] = []
  for (const match of text.matchAll(PIECE)) {
    const { number, word } = match.groups ?? {}
    const kind = number !== undefined ? 'number' : word !== undefined ? 'word' : 'sign'
    const [piece] = match
    const read = kind === 'sign' ? (LOOKALIKES.get(piece) ?? piece) : plain(piece)
    if (read === '' || (kind === 'sign' && piece.search(APOSTROPHE) === 0)) continue
    const to = match.index + piece.length
    // Readers of numbers refuse a stop that touches one.
    const from = kind === 'sign' && '.,;:!?'.includes(read) ? to : match.index
    tokens.push({ kind: read === 'x' && kind === 'sign' ? 'word' : kind, text: read, from, to })
  }
  return { text, tokens, wanted: 'part' }
}
