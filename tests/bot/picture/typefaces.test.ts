import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { shortened, wrapped } from '../../../bot/picture/draw/fit-text.ts'
import { readFont } from '../../../bot/picture/draw/read-font.ts'
import { type Face, FONT, graphemesOf, type Typefaces } from '../../../bot/picture/draw/typefaces.ts'
import { fontFolder, loadTypefaces } from '../../../bot/picture/render/font-files.ts'
import { NAMES } from './batches.ts'
import { pixelsOf } from './pixels.ts'

let faces: Typefaces
beforeAll(async () => {
  faces = await loadTypefaces(fontFolder())
})

const SIZE = 40
const WIDTH = 1200

/** Columns from the first to the last with ink, as the renderer draws it. */
function inkWidth(text: string, face: Face): number {
  const { family, weight } = FONT[face]
  const pixels = pixelsOf(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="80"><text x="20" y="50" font-family="${family}" ` +
      `font-weight="${weight}" font-size="${SIZE}">${text}</text></svg>`,
  )
  const columns = Array.from(pixels.keys())
    .filter((at) => at % 4 === 3 && pixels[at]! > 0)
    .map((at) => ((at - 3) / 4) % WIDTH)
  return (
    columns.reduce((one, other) => Math.max(one, other), 0) -
    columns.reduce((one, other) => Math.min(one, other), WIDTH)
  )
}

describe('widths', () => {
  it.each(['name', 'bold', 'plain'] as const)('are as the renderer has them: %s', (face) => {
    for (const letters of ['nnnnnnnn', 'OOOOOOO', '12345678', 'ЖЖЖЖ', 'ΩΩΩΩ']) {
      const measured = faces.widthOf(letters, face, SIZE)
      // Between the same two letters the bearings cancel out.
      const drawn = inkWidth(`H${letters}H`, face) - inkWidth('HH', face)
      expect(Math.abs(drawn - measured), letters).toBeLessThan(2.5)
    }
  })

  it.each(Object.keys(NAMES) as (keyof typeof NAMES)[])('are never less than what is drawn: %s', (key) => {
    if (key === 'hostile') return
    for (const wanted of ['name', 'bold', 'plain'] as const) {
      const { text, face } = faces.drawn(NAMES[key].slice(0, 24).replace('&', '+'), wanted)
      // Two pixels of rounding, and a letter that leans out of its own width.
      expect(inkWidth(text, face)).toBeLessThan(faces.widthOf(text, face, SIZE) + 2 + SIZE * 0.14)
    }
  })

  it('are the same in both tables of characters', async () => {
    const bytes = await readFile(join(fontFolder(), 'DejaVuSansCondensed.ttf'))
    const older = new Uint8Array(bytes)
    const view = new DataView(older.buffer)
    let cmap = 0
    for (let at = 12; at < 12 + 16 * view.getUint16(4); at += 16) {
      if (String.fromCharCode(...older.subarray(at, at + 4)) === 'cmap') cmap = view.getUint32(at + 8)
    }
    let hidden = 0
    for (let index = 0; index < view.getUint16(cmap + 2); index++) {
      const at = cmap + view.getUint32(cmap + 4 + 8 * index + 4)
      if (view.getUint16(at) !== 12) continue
      view.setUint16(at, 99)
      hidden++
    }
    expect(hidden).toBeGreaterThan(0)
    const [all, basic] = [readFont(bytes), readFont(older)]
    let seen = 0
    for (let codePoint = 32; codePoint < 0xffff; codePoint++) {
      expect(basic.advanceEm(codePoint)).toBe(all.advanceEm(codePoint))
      if (all.advanceEm(codePoint) !== null) seen++
    }
    // Of the file's own list of what it covers: 5343 glyphs; the plane holds most of them.
    expect(seen).toBeGreaterThan(4000)
    expect(all.advanceEm(0x1f600)).not.toBeNull()
    expect(basic.advanceEm(0x1f600)).toBeNull()
  })

  it('are not read from what is no font', () => {
    expect(() => readFont(new Uint8Array(0))).toThrow(RangeError)
    expect(() => readFont(new Uint8Array(2000).fill(7))).toThrow(RangeError)
  })
})

describe('a text that is too long', () => {
  const room = (width: number) => ({ width, size: SIZE, face: 'bold' as const })

  it('is shortened between whole signs, and fits', () => {
    for (const name of Object.values(NAMES)) {
      const drawn = faces.drawn(name, 'bold')
      const pieces = graphemesOf(drawn.text)
      for (const width of [90, 200, 500]) {
        const text = shortened(drawn, { ...room(width), face: drawn.face }, faces)
        expect(faces.widthOf(text, drawn.face, SIZE)).toBeLessThanOrEqual(width)
        if (text === drawn.text) continue
        expect(text.endsWith('…')).toBe(true)
        const kept = graphemesOf(text.slice(0, -1))
        expect(kept).toEqual(pieces.slice(0, kept.length))
      }
    }
  })

  it('is broken between words, and a long word within', () => {
    const lines = wrapped(faces.drawn('Midwinter lemon for the fair', 'bold'), room(300), 3, faces)
    expect(lines.join(' ')).toBe('Midwinter lemon for the fair')
    expect(lines.length).toBeGreaterThan(1)
    const letters = wrapped(faces.drawn('W'.repeat(20), 'bold'), room(300), 9, faces)
    expect(letters.join('')).toBe('W'.repeat(20))
    expect(wrapped(faces.drawn('', 'bold'), room(300), 2, faces)).toEqual([])
  })
})

describe('a sign that no face has', () => {
  it('is a box, one for what a person sees as one', () => {
    expect(faces.drawn('梅 👩‍👩‍👧‍👦 é', 'name')).toEqual({ text: '▯ ▯ é', face: 'name', lacks: true })
    expect(faces.drawn('e\u0301', 'bold').text).toBe('é')
    expect(faces.drawn('\uFFFE\uFFFF', 'plain').text).toBe('▯▯')
  })

  it('changes the face before it is a box', () => {
    expect(faces.drawn('شراب', 'name')).toEqual({ text: 'شراب', face: 'bold', lacks: false })
    expect(faces.drawn('Mint', 'name').face).toBe('name')
  })
})
