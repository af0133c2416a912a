/** What is known of a font: how far each character moves the pen. */
export interface Font {
  /** In ems; null where the font has no such character. */
  advanceEm(codePoint: number): number | null
}

/** Microsoft's and Unicode's tables of characters, the whole of Unicode before its first plane. */
const FORMATS = [12, 4]

/**
 * Reads a TrueType font. Throws RangeError where the bytes are none.
 * Source: OpenType specification 1.9, `cmap` formats 4 and 12, `head`, `hhea`, `hmtx` (from memory; the tests compare
 * the widths with what is drawn).
 */
export function readFont(bytes: Uint8Array): Font {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tables = tablesOf(view)
  const unitsPerEm = view.getUint16(tables('head') + 18)
  const metrics = { at: tables('hmtx'), count: view.getUint16(tables('hhea') + 34) }
  const glyphs = glyphsOf(view, tables('cmap'))
  return {
    advanceEm: (codePoint) => {
      const glyph = glyphs.get(codePoint)
      // Glyphs after the last width share it.
      return glyph === undefined
        ? null
        : view.getUint16(metrics.at + 4 * Math.min(glyph, metrics.count - 1)) / unitsPerEm
    },
  }
}

function tablesOf(view: DataView): (tag: string) => number {
  const found = new Map<string, number>()
  for (let at = 12; at < 12 + 16 * view.getUint16(4); at += 16) {
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((byte) => view.getUint8(at + byte)))
    found.set(tag, view.getUint32(at + 8))
  }
  return (tag) => {
    const at = found.get(tag)
    if (at === undefined) throw new RangeError(`no table ${tag} in the font`)
    return at
  }
}

/** The glyph of each character. */
function glyphsOf(view: DataView, cmap: number): ReadonlyMap<number, number> {
  const subtables = Array.from({ length: view.getUint16(cmap + 2) }, (_, index) => {
    const at = cmap + view.getUint32(cmap + 4 + 8 * index + 4)
    return { at, format: view.getUint16(at) }
  })
  for (const wanted of FORMATS) {
    const found = subtables.find(({ format }) => format === wanted)
    if (found !== undefined) return wanted === 12 ? readGroups(view, found.at) : readSegments(view, found.at)
  }
  throw new RangeError('no table of characters in the font')
}

/** Format 12. */
function readGroups(view: DataView, table: number): ReadonlyMap<number, number> {
  const glyphs = new Map<number, number>()
  for (let index = 0; index < view.getUint32(table + 12); index++) {
    const at = table + 16 + 12 * index
    const [first, last, glyph] = [view.getUint32(at), view.getUint32(at + 4), view.getUint32(at + 8)]
    for (let codePoint = first; codePoint <= last; codePoint++) glyphs.set(codePoint, glyph + codePoint - first)
  }
  return glyphs
}

/** Format 4. */
function readSegments(view: DataView, table: number): ReadonlyMap<number, number> {
  const glyphs = new Map<number, number>()
  const length = view.getUint16(table + 6)
  const [ends, starts] = [table + 14, table + 16 + length]
  for (let at = 0; at < length; at += 2) {
    const [first, last] = [view.getUint16(starts + at), view.getUint16(ends + at)]
    const delta = view.getUint16(starts + length + at)
    const rangeAt = starts + 2 * length + at
    const range = view.getUint16(rangeAt)
    for (let codePoint = first; codePoint <= last && codePoint < 0xffff; codePoint++) {
      const named = range === 0 ? codePoint : view.getUint16(rangeAt + range + 2 * (codePoint - first))
      const glyph = named === 0 ? 0 : (named + delta) & 0xffff
      if (glyph !== 0) glyphs.set(codePoint, glyph)
    }
  }
  return glyphs
}
