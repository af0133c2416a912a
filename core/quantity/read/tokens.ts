import { DomainError } from '../../domain-error.ts'
import type { Wanted } from '../problems.ts'

export interface Token {
  readonly kind: 'number' | 'word' | 'sign'
  /** In lower case. */
  readonly text: string
  /** Where it stands in the text: from the first character up to, not including, the last. */
  readonly from: number
  readonly to: number
  /** A slip in it was mended: `text` is not what stands in the text. */
  readonly isMended?: true
}

/** A text that is clean enough to be read, and its pieces. */
export interface TypedText {
  readonly text: string
  readonly tokens: readonly Token[]
  readonly wanted: Wanted
}

const MAX_CHARACTERS = 200
const MAX_SHOWN_CHARACTERS = 40

const HIDDEN = /[\p{C}\p{Zl}\p{Zp}]/u
const FOREIGN_DIGIT = /(?![0-9])\p{Nd}/u

const LOOKALIKES: ReadonlyMap<string, string> = new Map([
  ['−', '-'],
  ['–', '-'],
  ['‐', '-'],
  ['‑', '-'],
  ['⁄', '/'],
  ['∕', '/'],
  ['º', '°'], // the ordinal sign of an Italian keyboard
  ['˚', '°'],
  ['℃', '°C'],
  ['℉', '°F'],
])

/** `text` fit to be shown in a sentence: no invisible characters, spaces made plain, at most 40 characters. */
export const shown = (text: string): string => {
  // Far more than 40 is cut off first, so that a book costs no more than a line.
  const characters = [
    ...text
      .slice(0, 4 * MAX_CHARACTERS)
      .replace(/\p{Z}/gu, ' ')
      .replace(/\p{C}/gu, '')
      .trim(),
  ]
  return characters.length <= MAX_SHOWN_CHARACTERS
    ? characters.join('')
    : `${characters.slice(0, MAX_SHOWN_CHARACTERS - 1).join('')}…`
}

// Each branch starts with other characters than the ones before it, so nothing is tried twice.
const PIECE = /(?<number>[.,]?[0-9]+(?:[.,][0-9]+)*)|(?<word>\p{L}[\p{L}\p{M}]*)|(?<sign>\+\/?-|\S)/gu

const tokensOf = (text: string): Token[] => {
  const tokens: Token[] = []
  for (const match of text.matchAll(PIECE)) {
    const { number, word } = match.groups ?? {}
    const kind = number !== undefined ? 'number' : word !== undefined ? 'word' : 'sign'
    const previous = tokens.at(-1)
    const [piece] = match
    // `fl. oz.`: the dot belongs to the abbreviation.
    if (piece === '.' && previous?.kind === 'word' && previous.to === match.index) continue
    const isPlusMinus = kind === 'sign' && piece.length > 1 && piece.startsWith('+')
    tokens.push({
      kind,
      text: isPlusMinus ? '±' : piece.toLowerCase(),
      from: match.index,
      to: match.index + piece.length,
    })
  }
  return tokens
}

/** A phone writes `“30%”`. */
const unquoted = (raw: string): string => /^\s*[“„”«]([^“„”«»]*)[“”»]\s*$/u.exec(raw)?.[1] ?? raw

/**
 * The pieces of a text of at most 200 characters, every kind of space read as a space; linear in its length.
 * Throws `text_too_long`, `hidden_characters` (also direction marks), `foreign_digits` or `empty_text`.
 */
export const readText = (raw: string, wanted: Wanted): TypedText => {
  const typed = shown(raw)
  if (raw.length > MAX_CHARACTERS) {
    throw new DomainError('bad_value', 'text_too_long', { typed, maxCharacters: MAX_CHARACTERS })
  }
  if (HIDDEN.test(raw)) throw new DomainError('bad_value', 'hidden_characters', { typed })
  if (FOREIGN_DIGIT.test(raw)) throw new DomainError('bad_value', 'foreign_digits', { typed })
  const plain = unquoted(raw)
    .replace(/\p{Zs}/gu, ' ')
    .replace(/[−–‐‑⁄∕º˚℃℉]/gu, (sign) => LOOKALIKES.get(sign) ?? sign)
  const text = plain.trim()
  const tokens = tokensOf(text)
  if (tokens.length === 0) throw new DomainError('bad_value', 'empty_text', { wanted })
  return { text, tokens, wanted }
}

/** What stands from piece `at` on, as it was typed. */
export const textFrom = ({ text, tokens }: TypedText, at: number, until = tokens.length): string => {
  const first = tokens[at]
  const last = tokens[until - 1]
  return first === undefined || last === undefined ? '' : text.slice(first.from, last.to)
}

/** As `textFrom`, with slips mended: what an option takes. */
export const mendedFrom = (typed: TypedText, at: number, until: number): string => {
  const pieces = typed.tokens.slice(at, until)
  return pieces.some(({ isMended }) => isMended === true) ? wordsFrom({ tokens: pieces }) : textFrom(typed, at, until)
}

/** The same as it is compared, a blank between the pieces. */
export const wordsFrom = ({ tokens }: Pick<TypedText, 'tokens'>, at = 0, until = tokens.length): string =>
  tokens
    .slice(at, until)
    .map(({ text }) => text)
    .join(' ')

/** The words and numbers, without signs. */
export const wordsAlone = ({ tokens }: Pick<TypedText, 'tokens'>): string =>
  tokens.flatMap(({ kind, text }) => (kind === 'sign' ? [] : [text])).join(' ')

/** The piece at a place, as it is compared; empty where there is none. */
export const wordAt = ({ tokens }: TypedText, at: number): string => tokens[at]?.text ?? ''

/** Throws `unexpected_text` unless every piece before `at` was the last one. */
export const expectEnd = (typed: TypedText, at: number): void => {
  if (at < typed.tokens.length) {
    const extra = shown(textFrom(typed, at))
    throw new DomainError('bad_value', 'unexpected_text', { typed: shown(typed.text), extra, wanted: typed.wanted })
  }
}
