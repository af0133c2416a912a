import { editDistance } from '../../spelling/edit-distance.ts'
import { undrinkableWords } from '../refuse/refuse-spirit.ts'
import type { DrinkKind } from '../spirit/classify.ts'
import type { DrinkText } from '../spirit/drink-chunks.ts'

const MOST_PIECES = 4
const MOST_LETTERS = 40
/** Letters of an undrinkable word for each slip that is forgiven. */
const LETTERS_PER_SLIP = 4.5
const LEAST_LETTERS = 5

/** Words that join something else to a drink, or say that it is not one: no part of a name. */
const NO_NAME = new Set(
  (
    'with without and or plus in from for by to on at into made using contains containing mixed mix added adding instead not no non like type style imitation ersatz substitute alternative free ' +
    'con senza e ed o per nel nella col al alla fatto fatta mit ohne und aus vom fur oder avec sans et ou pour dans sin y para com sem og med och z ze i bez met en zonder ve ile и с из без для και με ' +
    'home my her his their your someone somebody leftover old used spare'
  ).split(' '),
)

/** Pieces of words that are of chemistry, or of some alcohol that is not known. */
const CHEMICAL =
  /eth[ay]n|eth[yi]l|meth[ay]|prop[ay]n|prop[yi]l|but[ay]n|pentan|hexan|benz|tolu|xyl|aceto?n|acetat|glyc|glic|chlor|clor|phenol|fenol|formal|keton|aldehyd|aldeid|napht|nafta|petrol|keros|paraffin|ammoni|hypo|perox|nitr[oai]|sulph|sulf|cyan|arsen|toxi|tossi|alkohol|alcohol|alcool|alkol|sprit|spiritus|spirt|oinop|ethano|etanol|fuel|clean|solvent|steril|bakter|bacter|sanit|septic|denat|desnat|distil|dest[iy]l|(?:grade|pharma|chem)$|zid|cide$|medi[ck]|farma/

const isLikeUndrinkable = (word: string): boolean =>
  undrinkableWords.some(
    (bad) => bad.length >= LEAST_LETTERS && editDistance(word, bad) <= Math.floor(bad.length / LETTERS_PER_SLIP),
  )

/** Short words in capitals alone are grades and codes oftener than names. */
const isCode = (piece: string): boolean => /^[\p{Lu}\p{N}.-]{2,5}$/u.test(piece) && /\p{Lu}/u.test(piece)

/**
 * The unknown words directly before a drink, as the name on its bottle: `Allotment Pride` of `Allotment Pride dry gin`. Null
 * where they stand elsewhere, are too many, or look like chemistry, a grade or something that must not be drunk.
 */
export function bottleName({ pieces, words }: DrinkText, kinds: readonly DrinkKind[]): string | null {
  const first = kinds.indexOf('unknown')
  const last = kinds.lastIndexOf('unknown')
  const inside = words.slice(first, last + 1)
  const isOneRun = kinds.slice(first, last + 1).every((kind) => kind === 'unknown' || kind === 'filler')
  const isFirst = kinds.slice(0, first).every((kind) => kind === 'filler')
  const after = kinds.slice(last + 1)
  const drink = after.findIndex((kind) => kind === 'drink' || kind === 'sweet')
  const isBefore = drink !== -1 && after.slice(0, drink).every((kind) => kind === 'filler' || kind === 'plant')
  if (!isOneRun || !isFirst || !isBefore) return null
  if (inside.some(({ word }) => NO_NAME.has(word) || CHEMICAL.test(word) || isLikeUndrinkable(word))) return null
  const from = inside[0]!.piece
  const named = pieces.slice(from, inside.at(-1)!.piece + 1)
  if (named.length > MOST_PIECES || named.some(isCode)) return null
  const name = named.join(' ')
  return name.length <= MOST_LETTERS && /\p{L}{3}/u.test(name) ? name : null
}
