import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
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

/** `, sharp,`: what stands between commas behind a tasting, where nothing in it is of another kind. */
const tasteNote: Fill = (sentence, command) => {
  const behind = note(sentence, command)
  if (behind !== null) return behind
  const { typed, bits, spans } = sentence
  const told = spans.find(({ concept }) => concept === 'tasted')
  if (told === undefined || typed.text.includes('?')) return null
  const isOther = (at: number): boolean =>
    bits.some(({ from, to }) => from <= at && at < to) ||
    spans.some(({ concept, from, to }) => concept !== 'tasted' && DEEDS.has(concept) && from <= at && at < to)
  const pieces: number[][] = [[]]
  for (const [at, { kind, text }] of typed.tokens.entries()) {
    if (kind === 'sign' && /^[,;:.!–—-]$/.test(text)) pieces.push([])
    else pieces.at(-1)!.push(at)
  }
  const said = pieces.slice(1).filter((piece) => piece.length > 0 && piece[0]! >= told.to && !piece.some(isOther))
  const text = said.map((piece) => textFrom(typed, piece[0]!, piece.at(-1)! + 1).trim()).join(', ')
  return text.length < 3 || said.length === 0 ? null : { text, bits: [] }
}

export const tasteFills = { rating: ratingOf, note, taste_note: tasteNote } satisfies Record<string, Fill>
