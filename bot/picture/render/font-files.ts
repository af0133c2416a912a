import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { type Font, readFont } from '../draw/read-font.ts'
import { type Face, type Typefaces, typefacesOf } from '../draw/typefaces.ts'

/** Named within a folder; condensed, so that a name has room. */
const FILES: Readonly<Record<Face, string>> = {
  name: 'DejaVuSerifCondensed-Bold.ttf',
  bold: 'DejaVuSansCondensed-Bold.ttf',
  plain: 'DejaVuSansCondensed.ttf',
}

/** Where the package of the fonts has them. Throws where it is not installed. */
export function fontFolder(): string {
  // The bundle is a script, which has no address but its file's name.
  const here = createRequire(import.meta.url ?? __filename)
  return join(dirname(here.resolve('dejavu-fonts-ttf/package.json')), 'ttf')
}

export const fontPaths = (folder: string): readonly string[] => Object.values(FILES).map((file) => join(folder, file))

/** Reads what has to be known to set a text. Throws where a file is missing or damaged. */
export async function loadTypefaces(folder: string): Promise<Typefaces> {
  const load = async (face: Face): Promise<Font> => readFont(await readFile(join(folder, FILES[face])))
  const [name, bold, plain] = await Promise.all([load('name'), load('bold'), load('plain')])
  return typefacesOf({ name, bold, plain })
}
