import { clean } from '../../text/clean.ts'
import { shortened, wrapped } from './fit-text.ts'
import { palette } from './palette.ts'
import { element, escapeXml } from './svg.ts'
import { type Drawn, type Face, FONT, type Typefaces } from './typefaces.ts'

interface TextAt {
  readonly x: number
  /** The top of the line. */
  readonly y: number
  /** What does not fit is shortened. */
  readonly width: number
  readonly size: number
  /** Of one line: it is set smaller, down to this, before it is shortened. */
  readonly leastSize?: number
  readonly face: Face
  readonly text: string
  readonly align?: 'start' | 'middle' | 'end'
  readonly fill?: string
}

const LINE = 1.3
const BASE = 1.0
/** Above and below a line, for marks on capitals and dots under letters. */
const MARKS = 0.16
/** Left and right, for letters that lean out of their own width. */
const LEAN = 0.07

export const lineHeight = (size: number): number => Math.ceil(size * LINE)

/** How wide a text will be, if there is room for it. */
export function textWidth(faces: Typefaces, { text, face, size }: Pick<TextAt, 'text' | 'face' | 'size'>): number {
  const drawn = faces.drawn(clean(text), face)
  return faces.widthOf(drawn.text, drawn.face, size)
}

/** A box of its own for each line, which its letters do not leave. */
function oneLine(text: string, { face }: Drawn, at: TextAt): string {
  const { x, y, width, size, align = 'start', fill = palette.ink } = at
  const [above, beside] = [Math.ceil(size * MARKS), Math.ceil(size * LEAN)]
  const left = Math.floor(x) - beside
  const anchor = { start: 0, middle: width / 2, end: width }[align] + x - left
  const { family, weight } = FONT[face]
  const box = {
    x: left,
    y: y - above,
    width: Math.ceil(width + x - left) + beside,
    height: lineHeight(size) + 2 * above,
    overflow: 'visible',
  }
  const letters = {
    x: anchor,
    y: size * BASE + above,
    'font-family': family,
    'font-weight': weight,
    'font-size': size,
    'text-anchor': align,
    fill,
  }
  return element('svg', box, element('text', letters, escapeXml(text)))
}

/** One line of text. */
export function textLine(faces: Typefaces, at: TextAt): string {
  const drawn = faces.drawn(clean(at.text), at.face)
  const { width, leastSize = at.size } = at
  const wide = faces.widthOf(drawn.text, drawn.face, at.size)
  const size = wide <= width ? at.size : Math.max(leastSize, Math.floor((at.size * width) / wide))
  const text = shortened(drawn, { width, size, face: drawn.face }, faces)
  return text === '' ? '' : oneLine(text, drawn, { ...at, y: at.y + (at.size - size), size })
}

export interface Lines {
  readonly svg: string
  readonly height: number
}

/** At most so many lines under each other. */
export function textLines(faces: Typefaces, at: TextAt, most: number): Lines {
  const drawn = faces.drawn(clean(at.text), at.face)
  const lines = wrapped(drawn, { ...at, face: drawn.face }, most, faces)
  const each = lineHeight(at.size)
  return {
    svg: lines.map((text, index) => oneLine(text, drawn, { ...at, y: at.y + index * each })).join(''),
    height: lines.length * each,
  }
}

/** All of a text in the largest of the sizes in which it fits the height; in the smallest as much of it as does. */
export function textIn(
  faces: Typefaces,
  at: Omit<TextAt, 'size'>,
  height: number,
  sizes: readonly [number, ...number[]],
): Lines {
  for (const size of sizes) {
    const whole = textLines(faces, { ...at, size }, Number.POSITIVE_INFINITY)
    if (whole.height <= height) return whole
  }
  const size = Math.min(...sizes)
  return textLines(faces, { ...at, size }, Math.max(1, Math.floor(height / lineHeight(size))))
}

/** Whether a text holds signs that are drawn as boxes. */
export const lacksSigns = (faces: Typefaces, text: string, face: Face): boolean => faces.drawn(clean(text), face).lacks
