import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { crc32, inflateSync } from 'node:zlib'
import { afterAll, describe, expect, it } from 'vitest'
import type { Picture } from '../../../bot/picture/draw/picture.ts'
import { drawingHere } from '../../../bot/picture/render/draw.ts'
import { encodePng } from '../../../bot/picture/render/encode-png.ts'
import { fontFolder, fontPaths } from '../../../bot/picture/render/font-files.ts'
import { PictureError } from '../../../bot/picture/render/picture-error.ts'
import { newStudio, type StudioParts } from '../../../bot/picture/render/renderer.ts'
import { differing, pixelsOf } from './pixels.ts'

const folder = mkdtempSync(join(tmpdir(), 'larderbell-fonts-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const picture = (svg: string, dotsPerInch: number | null = null): Picture => ({
  svg: `<svg xmlns="http://www.w3.org/2000/svg" width="60" height="40"><rect width="60" height="40" fill="#fff"/>${svg}</svg>`,
  width: 60,
  height: 40,
  alt: 'a word',
  dotsPerInch,
})

const WORD = picture('<text x="4" y="30" font-size="24" font-family="DejaVu Sans">jar</text>')

const own: StudioParts = { folder: fontFolder, draw: drawingHere() }

const faultOf = async (parts: Partial<StudioParts>, made: () => Picture = () => WORD): Promise<unknown> => {
  const error = await newStudio({ ...own, ...parts })
    .paint(made)
    .then(
      () => null,
      (error: unknown) => error,
    )
  expect(error).toBeInstanceOf(PictureError)
  return (error as PictureError).fault
}

/** The chunks of a PNG, their sums checked. */
function chunksOf(png: Buffer): readonly { type: string; data: Buffer }[] {
  expect(png.subarray(0, 8)).toEqual(Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]))
  const chunks: { type: string; data: Buffer }[] = []
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at)
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(png.subarray(at + 4, at + 8 + length)))
    chunks.push({ type: png.toString('latin1', at + 4, at + 8), data: png.subarray(at + 8, at + 8 + length) })
    at += 12 + length
  }
  return chunks
}

describe('a studio', () => {
  it('paints what the renderer draws, letters and all', async () => {
    const { png, width, height, alt } = await newStudio().paint(() => WORD)
    expect([width, height, alt]).toEqual([60, 40, 'a word'])
    const data = png.toString('base64')
    const shown = `<svg xmlns="http://www.w3.org/2000/svg" width="60" height="40"><image width="60" height="40" href="data:image/png;base64,${data}"/></svg>`
    expect(differing(pixelsOf(shown), pixelsOf(WORD.svg))).toBe(0)
    expect(differing(pixelsOf(WORD.svg), pixelsOf(picture('').svg))).toBeGreaterThan(100)
  })

  it('paints the same bytes again, and one picture after the other', async () => {
    let [running, most] = [0, 0]
    const studio = newStudio({
      ...own,
      draw: async (drawn) => {
        running++
        most = Math.max(most, running)
        const png = await own.draw(drawn)
        running--
        return png
      },
    })
    const painted = await Promise.all(Array.from({ length: 6 }, () => studio.paint(() => WORD)))
    for (const { png } of painted) expect(png.equals(painted[0]!.png)).toBe(true)
    expect(most).toBe(1)
  })

  it('fails as a picture where a font is missing or damaged', async () => {
    expect(await faultOf({ folder: () => join(folder, 'nowhere') })).toBe('no_font')
    expect(
      await faultOf({
        folder: () => {
          throw new Error('not installed')
        },
      }),
    ).toBe('no_font')
    const damaged = join(folder, 'damaged')
    cpSync(fontFolder(), damaged, { recursive: true })
    writeFileSync(fontPaths(damaged)[0]!, 'no font')
    expect(await faultOf({ folder: () => damaged })).toBe('no_font')
  })

  it('fails as a picture where the renderer is missing or gives up', async () => {
    expect(await faultOf({ draw: drawingHere(() => Promise.reject(new Error('no binary for this machine'))) })).toBe(
      'no_renderer',
    )
    expect(await faultOf({}, () => ({ ...WORD, svg: '<svg' }))).toBe('not_drawn')
    expect(
      await faultOf({}, () => {
        throw new TypeError('a fault of ours')
      }),
    ).toBe('not_drawn')
  })

  it('paints again after a failure', async () => {
    let isThere = false
    const studio = newStudio({ ...own, folder: () => (isThere ? fontFolder() : join(folder, 'nowhere')) })
    await expect(studio.paint(() => WORD)).rejects.toBeInstanceOf(PictureError)
    isThere = true
    await expect(studio.paint(() => ({ ...WORD, svg: '<svg' }))).rejects.toBeInstanceOf(PictureError)
    expect((await studio.paint(() => WORD)).png.length).toBeGreaterThan(100)
  })
})

describe('a PNG', () => {
  it('holds the pixels it was given', async () => {
    const [width, height] = [7, 600]
    const rgba = Buffer.from(
      Array.from({ length: 4 * width * height }, (_, at) => (at % 4 === 3 ? 255 : (at * 37) % 251)),
    )
    const chunks = chunksOf(await encodePng({ rgba, width, height, dotsPerInch: null }))
    expect(chunks.map(({ type }) => type)).toEqual(['IHDR', 'IDAT', 'IEND'])
    const rows = inflateSync(chunks[1]!.data)
    expect(rows).toHaveLength(height * (1 + 4 * width))
    for (let row = 0; row < height; row++) {
      const at = row * (1 + 4 * width)
      expect(rows[at]).toBe(0)
      expect(rows.subarray(at + 1, at + 1 + 4 * width)).toEqual(rgba.subarray(4 * row * width, 4 * (row + 1) * width))
    }
  })

  it('says how large it is on paper', async () => {
    const rgba = Buffer.alloc(16, 255)
    const chunks = chunksOf(await encodePng({ rgba, width: 2, height: 2, dotsPerInch: 300 }))
    const physical = chunks.find(({ type }) => type === 'pHYs')!.data
    // 300 / 0.0254 to the metre, the unit of which is 1.
    expect([physical.readUInt32BE(0), physical.readUInt32BE(4), physical[8]]).toEqual([11_811, 11_811, 1])
  })
})
