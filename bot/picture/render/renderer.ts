import type { Picture } from '../draw/picture.ts'
import { lacksSigns } from '../draw/text-lines.ts'
import { FONT, type Typefaces } from '../draw/typefaces.ts'
import { encodePng } from './encode-png.ts'
import { fontFolder, fontPaths, loadTypefaces } from './font-files.ts'
import { PictureError, type PictureFault } from './picture-error.ts'

export interface Painted extends Pick<Picture, 'width' | 'height' | 'alt'> {
  readonly png: Buffer
}

/** Draws pictures, one at a time, beside everything else. */
export interface Studio {
  /** `make` tells what to draw, once the faces to measure with are there. Rejects with PictureError, nothing else. */
  paint(make: (faces: Typefaces) => Picture): Promise<Painted>
  /** Whether a name holds signs that no picture can show. Rejects with PictureError, nothing else. */
  lacks(name: string): Promise<boolean>
}

/** The renderer's part that is used. */
interface Renderer {
  renderAsync(svg: string, options: object): Promise<{ readonly pixels: Buffer; readonly width: number }>
}

export interface StudioParts {
  /** The folder of the font files. */
  readonly folder: () => string
  /** Loaded when the first picture is asked for: many a day has none. */
  readonly renderer: () => Promise<Renderer>
}

const OWN: StudioParts = { folder: fontFolder, renderer: () => import('@resvg/resvg-js') }

const named = async <Result>(fault: PictureFault, work: () => Promise<Result>): Promise<Result> => {
  try {
    return await work()
  } catch (error) {
    throw error instanceof PictureError ? error : new PictureError(fault, error)
  }
}

interface Opened {
  readonly faces: Typefaces
  readonly render: Renderer['renderAsync']
  readonly options: object
}

async function open({ folder, renderer }: StudioParts): Promise<Opened> {
  const [from, faces] = await named('no_font', async () => [folder(), await loadTypefaces(folder())] as const)
  const { renderAsync } = await named('no_renderer', renderer)
  const font = { loadSystemFonts: false, fontFiles: fontPaths(from), defaultFontFamily: FONT.plain.family }
  return { faces, render: renderAsync, options: { font, logLevel: 'off' } }
}

export function newStudio(parts: StudioParts = OWN): Studio {
  let opened: Promise<Opened> | null = null
  // The renderer and the disk share the same few threads: many pictures at once would keep what is stored waiting.
  let last: Promise<unknown> = Promise.resolve()
  const ready = (): Promise<Opened> => {
    opened ??= open(parts)
    return opened.catch((error) => {
      // What was missing may be there the next time.
      opened = null
      throw error
    })
  }
  const paint = async (make: (faces: Typefaces) => Picture): Promise<Painted> => {
    const { faces, render, options } = await ready()
    return named('not_drawn', async () => {
      const { svg, width, height, alt, dotsPerInch } = make(faces)
      const { pixels: rgba } = await render(svg, options)
      return { png: await encodePng({ rgba, width, height, dotsPerInch }), width, height, alt }
    })
  }
  return {
    paint: (make) => {
      const mine = last.then(() => paint(make))
      last = mine.catch(() => null)
      return mine
    },
    lacks: async (name) => lacksSigns((await ready()).faces, name, 'name'),
  }
}
