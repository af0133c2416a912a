const PIECE = /(?<!\p{L})(?:strips?|twists?|curls?|ribbons?|shavings?|slivers?|scraps?)(?!\p{L})/iu
const COUNT = '\\d{1,2}|an?|one|two|three|four|five|six|seven|eight|nine|ten|a few|some|several'
const SIZE = '(?:(?:big|large|thin|wide|long|short|small|generous) )*'
/** `4 orange peel strips`: so many pieces, whose name stands behind the peel that they are of. */
const BEHIND = new RegExp(
  `(?<!\\p{L})(?<count>${COUNT}) (?<size>${SIZE})(?<of>(?:\\p{L}+ ){1,2}(?:peel|zest|rind|skin)) (?<piece>strips?|twists?|curls?|ribbons?|shavings?|slivers?|scraps?)(?!\\p{L}| of )`,
  'giu',
)

/** A sentence with the pieces of peel that it counts named before the peel, `4 strips of orange peel`: no peel of four fruit. */
export const piecesBefore = (text: string): string =>
  PIECE.test(text) ? text.replace(BEHIND, '$<count> $<size>$<piece> of $<of>') : text
