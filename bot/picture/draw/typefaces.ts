import type { Font } from './read-font.ts'

/** `name`: what something is called, as on a paper label. */
export type Face = 'name' | 'bold' | 'plain'

/** How the renderer asks for each. */
export const FONT: Readonly<Record<Face, { readonly family: string; readonly weight: number }>> = {
  name: { family: 'DejaVu Serif', weight: 700 },
  bold: { family: 'DejaVu Sans', weight: 700 },
  plain: { family: 'DejaVu Sans', weight: 400 },
}

/** Where a face lacks characters, the one that has the most of them is taken for the whole text. */
const INSTEAD: Readonly<Record<Face, readonly Face[]>> = {
  name: ['name', 'bold', 'plain'],
  bold: ['bold', 'plain'],
  plain: ['plain', 'bold'],
}

/** Stands for each sign that no face has. */
const UNDRAWN = '▯'

/** More marks on one letter than this climb out of their line. */
const MOST_MARKS = 3

/** What may belong to the sign before it. */
const COMPOSED = /[\p{M}\p{Default_Ignorable_Code_Point}]/u

/** A mark that stands on no letter, or on one that has no place for it, is drawn beside the text. */
const UNSUPPORTED =
  /^[\p{M}\s\p{Default_Ignorable_Code_Point}]*\p{M}|^[\p{Script=Arabic}\p{Script=Hebrew}].*[\u0300-\u036F]/u

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

export const graphemesOf = (text: string): readonly string[] =>
  [...graphemes.segment(text)].map(({ segment }) => segment)

/** A text as it is drawn: every character of it is in the face. */
export interface Drawn {
  readonly text: string
  readonly face: Face
  /** True where a sign had to be replaced. */
  readonly lacks: boolean
}

export interface Typefaces {
  /** The text with a box for each sign that cannot be drawn. Expects what `clean` leaves. */
  drawn(text: string, wanted: Face): Drawn
  /** Of a text that `drawn` made, in the unit of `size`. Kerning and joined letters make it narrower, seldom wider. */
  widthOf(text: string, face: Face, size: number): number
}

export function typefacesOf(fonts: Readonly<Record<Face, Font>>): Typefaces {
  const inFace = (text: string, face: Face): Drawn & { readonly missing: number } => {
    const drawn = graphemesOf(text).map((grapheme) => asDrawn(grapheme, fonts[face]))
    const missing = drawn.filter((piece) => piece === null).length
    return { text: drawn.map((piece) => piece ?? UNDRAWN).join(''), face, lacks: missing > 0, missing }
  }
  return {
    drawn: (text, wanted) => {
      const plain = text.normalize('NFC').replace(/\s/gu, blank)
      // Nearly every text, and far quicker than looking at its signs one by one.
      if (!COMPOSED.test(plain) && [...plain].every((character) => has(character, fonts[wanted]))) {
        return { text: plain, face: wanted, lacks: false }
      }
      const { missing: _, ...best } = INSTEAD[wanted]
        .map((face) => inFace(plain, face))
        .reduce((one, other) => (other.missing < one.missing ? other : one))
      return best
    },
    widthOf: (text, face, size) => {
      let ems = 0
      for (const character of text) ems += fonts[face].advanceEm(character.codePointAt(0) ?? 0) ?? 0
      return ems * size
    },
  }
}

/** Every blank but the one that keeps a number and its unit together is a plain one. */
const blank = (space: string): string => (space === '\u00a0' ? space : ' ')

/** Null where the font lacks a part of it. What shows nothing, as the joints of an emoji, is left out where it is lacking. */
function asDrawn(grapheme: string, font: Font): string | null {
  const shown = [...grapheme].filter(
    (character) => !/\p{Default_Ignorable_Code_Point}/u.test(character) || has(character, font),
  )
  const marks = shown.filter((character) => /\p{M}/u.test(character))
  if (marks.length > MOST_MARKS || UNSUPPORTED.test(shown.join(''))) return null
  return shown.every((character) => has(character, font)) ? shown.join('') : null
}

const has = (character: string, font: Font): boolean => font.advanceEm(character.codePointAt(0) ?? 0) !== null
