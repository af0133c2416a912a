/**
 * Where Unicode keeps the scripts that are written from right to left: the blocks whose code points are R or AL unless
 * said otherwise (DerivedBidiClass.txt), without what is no character among them.
 */
const BLOCKS = '\\u0590-\\u08FF\\uFB1D-\\uFDCF\\uFDF0-\\uFDFF\\uFE70-\\uFEFE\\u{10800}-\\u{10FFF}\\u{1E800}-\\u{1EFFF}'
const LETTER = `(?=[${BLOCKS}])\\p{L}`

/** Words from right to left, with the signs that join them: no digit, which might belong to what stands beside them. */
const WORDS = new RegExp(
  `${LETTER}(?:${LETTER}|[\\p{M}\\u200C\\u200D]|[ '’\\u05BE\\u05F3\\u05F4-](?=${LETTER}))*`,
  'gu',
)

const [OPEN, CLOSE] = ['\u2068', '\u2069']

/** With words from right to left in isolates (UAX #9), so that they turn nothing round but themselves. */
export const isolated = (text: string): string => text.replace(WORDS, `${OPEN}$&${CLOSE}`)

/** The same where that leaves it within `most` UTF-16 units. */
export const isolatedWithin = (text: string, most: number): string => {
  const all = isolated(text)
  return all.length <= most ? all : text
}

/** Without isolates, as it was before somebody copied it from what is shown. */
export const unisolated = (text: string): string => text.replace(/[\u2068\u2069]/g, '')
