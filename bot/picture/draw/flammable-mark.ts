import { STRONG_PERCENT } from '../../../core/liquid/flash-point.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Pen } from './picture.ts'
import { BLACK, WHITE } from './printed.ts'
import { moved, path, rect } from './svg.ts'
import { textLine } from './text-lines.ts'

/** What was strained; a jar that steeps is always marked. */
export const isFlammable = ({ value }: Measured): boolean => value >= STRONG_PERCENT

const FLAME =
  'M24 4 C30 16 44 24 44 42 C44 56 35 64 24 64 C13 64 4 56 4 42 C4 32 10 28 13 18 C18 22 19 26 19 30 C25 24 26 14 24 4 Z'
const HEART = 'M24 62 C17 62 14 56 15 51 C16 46 22 43 23 36 C29 42 33 47 33 52 C33 58 30 62 24 62 Z'
const SIZE = 36
const HEIGHT = 68

/** A flame and the word, white on black, `height` dots high, from the point on. */
export function flammableMark(
  { x, y, height = HEIGHT }: { readonly x: number; readonly y: number; readonly height?: number },
  { faces, text }: Pen,
) {
  const word = text.tag.flammable()
  const drawn = faces.drawn(word, 'bold')
  const wide = Math.ceil(faces.widthOf(drawn.text, drawn.face, SIZE)) + 2
  const width = 68 + wide + 16
  const scale = height / HEIGHT
  const svg = [
    rect({ x: 0, y: 0, width, height: HEIGHT }, { rx: 8, fill: BLACK }),
    moved(12, 5, path(FLAME, { fill: WHITE }) + path(HEART, { fill: BLACK }), 0.86),
    textLine(faces, { x: 66, y: 11, width: wide, size: SIZE, face: 'bold', text: word, fill: WHITE }),
  ].join('')
  return { svg: moved(x, y, svg, scale), width: width * scale }
}
