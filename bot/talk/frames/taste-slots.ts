import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { onlyBit } from './amount-slots.ts'
import type { Fill, SlotFilled } from './plant-slots.ts'

const ratingOf = ({ bits }: Pick<Sentence, 'bits'>): SlotFilled | null => {
  const said = bits.find(({ kind }) => kind === 'rating')
  if (said !== undefined) return onlyBit(said)
  const fits = bits.filter(({ kind, value }) => kind === 'bare' && Number.isInteger(value) && value >= 1 && value <= 5)
  const bare = fits.find(({ with: place }) => place === undefined) ?? fits[0]
  return onlyBit(bare)
}

/** What is said behind a rating, as it was typed. */
const note: Fill = ({ typed, bits }) => {
  const rating = ratingOf({ bits })?.bits[0]
  if (rating === undefined) return null
  const from = typed.tokens[rating.to]?.from
  const rest =
    from === undefined
      ? ''
      : typed.text
          .slice(from)
          .replace(/^[\s,.;:!-]+/, '')
          .trim()
  return rest === '' || rest.length < 3 ? null : { text: rest, bits: bits.filter((bit) => bit.from >= rating.to) }
}

const isName = ({ kind }: Bit): boolean => kind === 'jar' || kind === 'plant'

/** The places of the words between commas. */
function piecesOf({ typed }: Sentence): readonly (readonly number[])[] {
  const pieces: number[][] = [[]]
  for (const [at, { kind, text }] of typed.tokens.entries()) {
    if (kind === 'sign' && /^[,;:.!–—-]$/.test(text)) pieces.push([])
    else pieces.at(-1)!.push(at)
  }
  return pieces.filter((piece) => piece.length > 0)
}

/** Before what is said of it: `the sloe is a bit thin`. */
const BEFORE_NOTE = /^(?:the|my|our|it|its|this|that|and|but|is|are|was|s|tastes?|il|lo|la|l|è|e|era|ma)$/

/** `Sloe a bit thin, 3 out of 5`: what is said beside a rating, without the name of its jar. */
function besideRating(sentence: Sentence): SlotFilled | null {
  const { typed, bits, spans } = sentence
  if (typed.text.includes('?')) return null
  const bitAt = (at: number): Bit | undefined => bits.find(({ from, to }) => from <= at && at < to)
  const isSaid = (at: number, is: (concept: Concept) => boolean): boolean =>
    spans.some(({ concept, from, to }) => is(concept) && from <= at && at < to)
  const texts = piecesOf(sentence).flatMap((piece) => {
    const names = piece.filter((at) => bitAt(at) !== undefined)
    const isOther = piece.some((at) => isSaid(at, (concept) => DEEDS.has(concept)))
    if (isOther || names.some((at) => !isName(bitAt(at)!))) return []
    const from = piece.slice(names.length === 0 ? 0 : piece.indexOf(names.at(-1)!) + 1)
    const begin = from.findIndex((at) => !BEFORE_NOTE.test(typed.tokens[at]!.text))
    const own = begin === -1 ? [] : from.slice(begin)
    if (own.every((at) => isSaid(at, (concept) => concept === 'greeting'))) return []
    return [textFrom(typed, own[0]!, own.at(-1)! + 1).trim()]
  })
  const text = texts.join(', ')
  return text.length < 3 ? null : { text, bits: [] }
}

/** `, sharp,`: what stands between commas behind a tasting, where nothing in it is of another kind. */
const tasteNote: Fill = (sentence, command) => {
  const behind = note(sentence, command)
  if (behind !== null && !behind.bits.some((bit) => isName(bit) || bit.kind === 'date')) return behind
  if (ratingOf(sentence) !== null) return besideRating(sentence) ?? behind
  const { typed, bits, spans } = sentence
  const told = spans.find(({ concept }) => concept === 'tasted')
  if (told === undefined || typed.text.includes('?')) return null
  const isOther = (at: number): boolean =>
    bits.some(({ from, to }) => from <= at && at < to) ||
    spans.some(({ concept, from, to }) => concept !== 'tasted' && DEEDS.has(concept) && from <= at && at < to)
  const said = piecesOf(sentence)
    .slice(1)
    .filter((piece) => piece.length > 0 && piece[0]! >= told.to && !piece.some(isOther))
  const text = said.map((piece) => textFrom(typed, piece[0]!, piece.at(-1)! + 1).trim()).join(', ')
  return text.length < 3 || said.length === 0 ? null : { text, bits: [] }
}

export const tasteFills = { rating: ratingOf, note, taste_note: tasteNote } satisfies Record<string, Fill>
