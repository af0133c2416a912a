import type { Picture } from '../draw/picture.ts'
import { lacksSigns } from '../draw/text-lines.ts'
import { FONT, type Typefaces } from '../draw/typefaces.ts'
import { type Draw, drawingHere, named } from './draw.ts'
import { drawingIn } from './draw-in-thread.ts'
import { fontFolder, fontPaths, loadTypefaces } from './font-files.ts'

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

export interface StudioParts {
  /** The folder of the font files. */
  readonly folder: () => string
  readonly draw: Draw
}

/** Put in by the bundle: the script of the thread that draws. */
declare const LARDERBELL_DRAWING: string | undefined

const OWN: StudioParts = {
  folder: fontFolder,
  draw: typeof LARDERBELL_DRAWING === 'undefined' ? drawingHere() : drawingIn(LARDERBELL_DRAWING),
}

interface Opened {
  readonly faces: Typefaces
  readonly fontFiles: readonly string[]
}

const open = (folder: StudioParts['folder']): Promise<Opened> =>
  named('no_font', async () => ({ faces: await loadTypefaces(folder()), fontFiles: fontPaths(folder()) }))

export function newStudio({ folder, draw }: StudioParts = OWN): Studio {
  let opened: Promise<Opened> | null = null
  // The renderer and the disk share the same few threads: many pictures at once would keep what is stored waiting.
  let last: Promise<unknown> = Promise.resolve()
  const ready = (): Promise<Opened> => {
    opened ??= open(folder)
    return opened.catch((error) => {
      // What was missing may be there the next time.
      opened = null
      throw error
    })
  }
  const paint = async (make: (faces: Typefaces) => Picture): Promise<Painted> => {
    const { faces, fontFiles } = await ready()
    return named('not_drawn', async () => {
      const { svg, width, height, alt, dotsPerInch } = make(faces)
      const png = await draw({ svg, width, height, dotsPerInch, fontFiles, defaultFontFamily: FONT.plain.family })
      return { png, width, height, alt }
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
