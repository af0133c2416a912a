import { encodePng } from './encode-png.ts'
import { PictureError, type PictureFault } from './picture-error.ts'

/** What is drawn, and with which letters. */
export interface PictureJob {
  readonly svg: string
  readonly width: number
  readonly height: number
  readonly dotsPerInch: number | null
  readonly fontFiles: readonly string[]
  readonly defaultFontFamily: string
}

/** Gives a PNG. Rejects with PictureError, nothing else. */
export type Draw = (drawn: PictureJob) => Promise<Buffer>

/** The renderer's part that is used. */
interface Renderer {
  renderAsync(svg: string, options: object): Promise<{ readonly pixels: Buffer }>
}

export const named = async <Result>(fault: PictureFault, work: () => Promise<Result>): Promise<Result> => {
  try {
    return await work()
  } catch (error) {
    throw error instanceof PictureError ? error : new PictureError(fault, error)
  }
}

/** Draws in this thread. `renderer` is loaded when the first picture is asked for: many a day has none. */
export const drawingHere =
  (renderer: () => Promise<Renderer> = () => import('@resvg/resvg-js')): Draw =>
  async ({ svg, width, height, dotsPerInch, fontFiles, defaultFontFamily }) => {
    const { renderAsync } = await named('no_renderer', renderer)
    return named('not_drawn', async () => {
      const font = { loadSystemFonts: false, fontFiles, defaultFontFamily }
      const { pixels: rgba } = await renderAsync(svg, { font, logLevel: 'off' })
      return encodePng({ rgba, width, height, dotsPerInch })
    })
  }
