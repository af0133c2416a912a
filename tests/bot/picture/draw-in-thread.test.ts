import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildSync } from 'esbuild'
import { afterAll, describe, expect, it } from 'vitest'
import { FONT } from '../../../bot/picture/draw/typefaces.ts'
import { drawingHere, type PictureJob } from '../../../bot/picture/render/draw.ts'
import { drawingIn } from '../../../bot/picture/render/draw-in-thread.ts'
import { fontFolder, fontPaths } from '../../../bot/picture/render/font-files.ts'

const root = join(import.meta.dirname, '..', '..', '..')
const folder = mkdtempSync(join(root, 'node_modules', '.larderbell-drawing-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** The thread as the bot starts it, made once. */
const script = join(folder, 'drawing.cjs')
buildSync({
  entryPoints: [join(root, 'bot', 'picture', 'render', 'drawing-thread.ts')],
  outfile: script,
  bundle: true,
  platform: 'node',
  format: 'cjs',
  external: ['@resvg/resvg-js'],
  supported: { 'dynamic-import': false },
})

const fonts = { fontFiles: fontPaths(fontFolder()), defaultFontFamily: FONT.plain.family }
const drawn = (word: string): PictureJob => ({
  svg: `<svg xmlns="http://www.w3.org/2000/svg" width="60" height="40"><rect width="60" height="40" fill="#fff"/><text x="4" y="30">${word}</text></svg>`,
  width: 60,
  height: 40,
  dotsPerInch: 300,
  ...fonts,
})

/** A thread that does as it is told. */
const threadOf = (source: string): string => {
  const path = join(mkdtempSync(join(folder, 'thread-')), 'thread.cjs')
  writeFileSync(path, source)
  return path
}

describe('a thread that draws', () => {
  it('gives the bytes that are drawn here, each picture to whom it belongs', async () => {
    const [draw, here] = [drawingIn(script), drawingHere()]
    const words = ['lemon', 'ginger', 'sloe', 'plum']
    const [theirs, ours] = await Promise.all([
      Promise.all(words.map((word) => draw(drawn(word)))),
      Promise.all(words.map((word) => here(drawn(word)))),
    ])
    for (const [index, png] of theirs.entries()) expect(png.equals(ours[index]!)).toBe(true)
    expect(new Set(theirs.map((png) => png.toString('base64'))).size).toBe(words.length)
  })

  it('says which picture failed, and draws the next', async () => {
    const draw = drawingIn(script)
    const [failed, next] = await Promise.allSettled([draw({ ...drawn('jar'), svg: '<svg' }), draw(drawn('jar'))])
    expect(failed).toMatchObject({ status: 'rejected', reason: { fault: 'not_drawn' } })
    expect(next.status).toBe('fulfilled')
  })

  it('draws here where the script of the thread was cleared away', async () => {
    const png = await drawingIn(join(folder, 'nowhere.cjs'))(drawn('jar'))
    expect(png.equals(await drawingHere()(drawn('jar')))).toBe(true)
  })

  it.each([
    ['ends', threadOf('process.exit(1)')],
    ['throws', threadOf('throw new Error("no memory")')],
  ])('fails as a picture where it %s', async (_what, path) => {
    const draw = drawingIn(path)
    for (const word of ['one', 'two']) await expect(draw(drawn(word))).rejects.toMatchObject({ fault: 'not_drawn' })
  })
})
