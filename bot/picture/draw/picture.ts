import type { Format } from '../../text/format.ts'
import type { PictureText } from '../../text/picture-text.ts'
import type { Typefaces } from './typefaces.ts'

/** A picture that is yet to be drawn. */
export interface Picture {
  readonly svg: string
  /** Pixels. */
  readonly width: number
  readonly height: number
  /** Says the same as the picture, in at most 1000 characters. */
  readonly alt: string
  /** Pixels in an inch of paper; null for a screen. */
  readonly dotsPerInch: number | null
}

/** What pictures are made with. */
export interface Pen {
  readonly faces: Typefaces
  readonly text: PictureText
  readonly format: Format
}
