import type { PieceKind } from '../../botanical/botanical.ts'

/** Pieces beyond those that `parseCount` knows; only with `of`, for `star anise` is no star of anise. */
export const PIECE_OF =
  /^(?:(thumbs?)|(fingers?)|(heads?|capolin[oi])|(stars?|stell[ae])|(stalks?|gamb[oi])|(pinch(?:es)?|pizzic(?:o|hi))|(cones?|pign[ae])|(nuts?|noc[ei])|(strips?|twists?|curls?|ribbons?|strisc(?:ia|e|iolin[ae])|scorzett[ae])|(slices?|coins?|rounds?|fett(?:a|e|ina|ine)|rondell[ae]))\s+(?:of|di)\s+/i
export const COUNTED_WITH_OF: readonly PieceKind[] = [
  'thumb',
  'finger',
  'head',
  'star',
  'stalk',
  'pinch',
  'cone',
  'nut',
  'strip',
  'slice',
]

/** How large a piece is, before its word. */
const SIZE =
  '(?:(?:good|nice|big|large|thick|wide|long|short|small|little|tiny|thin|thinnish|generous|piccol[oaie]|sottil[ei]|bell[ao]|bel)\\s+)'

/** Measures that tell nobody how much. */
export const MEASURE_OF = new RegExp(
  `^${SIZE}*(?:handfuls?|manciat[ae]|bits?|little\\s+bits?|knobs?|chunks?|lumps?|scraps?|shavings?|wedges?|hints?|touch(?:es)?|dash(?:es)?|drops?|gocc[ei]a?|jars?|tins?|cans?|box(?:es)?|punnets?|baskets?|bags?|packets?|packs?|sachets?|glass(?:es)?|inch(?:es)?|blades?|bustin[ae]|scatol[ae]|vasett[oi]|cestin[oi]|tazz[ae]|bicchier[ei]|pezzett[oi]|pezzettin[oi]|(?:few|some)\\s+\\S+|${SIZE}+pieces?)\\s+(?:of|di)\\s+`,
  'i',
)

/** Before the word for a piece it changes little. */
const SIZED_PIECE = new RegExp(
  `^${SIZE}+(?=(?:slices?|strips?|twists?|curls?|ribbons?|sprigs?|leaf|leaves|sticks?|pods?|pinch(?:es)?|fett(?:a|e|ina|ine)|rondell[ae]|strisc(?:ia|e)|ramett[oi]|fogli[ae]|bastoncin[oi]|pizzic(?:o|hi))\\b)`,
  'i',
)

/** `A piece of lemon peel`: a strip of it. */
const PIECE_OF_PEEL =
  /^(?:small\s+|little\s+|long\s+|thin\s+|large\s+|big\s+)*(?:pieces?|bits?|slices?|pezz[oi]|pezzett[oi]|fettin[ae])\s+(?=(?:of|di)\s+.*\b(?:peel|zest|rind|skin|scorz[ae]|bucc(?:ia|e))\b)/i

/** What is counted, without its size, a piece of peel being a strip. */
export const withoutSize = (counted: string): string =>
  counted.replace(PIECE_OF_PEEL, 'strip ').replace(SIZED_PIECE, '')
