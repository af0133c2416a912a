import { Resvg } from '@resvg/resvg-js'
import type { Pen } from '../../../bot/picture/draw/picture.ts'
import { FONT } from '../../../bot/picture/draw/typefaces.ts'
import { fontFolder, fontPaths, loadTypefaces } from '../../../bot/picture/render/font-files.ts'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { pictureText } from '../../../bot/text/en/pictures.ts'

const font = {
  loadSystemFonts: false,
  fontFiles: [...fontPaths(fontFolder())],
  defaultFontFamily: FONT.plain.family,
}

/** What the renderer draws, four bytes a pixel. */
export const pixelsOf = (svg: string): Buffer => new Resvg(svg, { font }).render().pixels

/** A layer of its own rounds a colour otherwise. */
const ROUNDING = 4

/** How many pixels differ. */
export function differing(one: Buffer, other: Buffer): number {
  let count = 0
  for (let at = 0; at < one.length; at += 4) {
    if (one.readUInt32LE(at) === other.readUInt32LE(at)) continue
    if ([0, 1, 2].some((channel) => Math.abs(one[at + channel]! - other[at + channel]!) > ROUNDING)) count++
  }
  return count
}

/** The same picture without its letters. */
export const withoutText = (svg: string): string => svg.replace(/<text [^>]*>[^<]*<\/text>/g, '')

/** The same picture, every letter cut off at the edges of its box. */
export const cutAtBoxes = (svg: string): string => svg.replaceAll('overflow="visible"', 'overflow="hidden"')

export const pen = async (): Promise<Pen> => ({
  faces: await loadTypefaces(fontFolder()),
  text: pictureText,
  format: englishFormat('metric'),
})
