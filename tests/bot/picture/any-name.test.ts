import fc from 'fast-check'
import { beforeAll, expect, it } from 'vitest'
import type { Pen } from '../../../bot/picture/draw/picture.ts'
import { textLine } from '../../../bot/picture/draw/text-lines.ts'
import { runs, SEED } from '../../runs.ts'
import { cutAtBoxes, differing, pen as newPen, pixelsOf } from './pixels.ts'

let pen: Pen
beforeAll(async () => {
  pen = await newPen()
})

/** Letters of many scripts, marks, joints, signs of XML, and whatever else there is. */
const pieces = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 6 }),
  fc.string({ unit: 'grapheme', maxLength: 6 }),
  fc.constantFrom(
    '&',
    '<',
    '>',
    '"',
    ']]>',
    '&#0;',
    '\u200D',
    '\uFE0F',
    '\u0323',
    '\u202E',
    '👨‍👩‍👧',
    'ﷺ',
    'Ǻ',
    'fi',
    'لا',
    'W',
    ' ',
  ),
)

it('draws any name, and within its box', () => {
  fc.assert(
    fc.property(fc.array(pieces, { maxLength: 14 }), fc.constantFrom('name', 'bold', 'plain'), (parts, face) => {
      const line = textLine(pen.faces, { x: 20, y: 20, width: 260, size: 36, face, text: parts.join('') })
      const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="420" height="110">${line}</svg>`
      expect(differing(pixelsOf(svg), pixelsOf(cutAtBoxes(svg)))).toBe(0)
    }),
    { seed: SEED, numRuns: runs(30, 3000) },
  )
})
