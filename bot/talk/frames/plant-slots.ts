import { CUP_ML } from '../../../core/quantity/customary.ts'
import type { Bit, Sentence } from '../bits/bit.ts'

/** What fills an option: its text and the bits of it; or several answers that are to be chosen from. */
export interface SlotFilled {
  readonly text: string
  readonly bits: readonly Bit[]
  readonly choices?: readonly string[]
  /** Assumed, not said. */
  readonly isAssumed?: true
}

export type Fill = (sentence: Sentence, command: string) => SlotFilled | null

export const isPlant = ({ kind, role }: Bit): boolean => kind === 'plant' && role !== 'left_out' && role !== 'gone'

/** A quart of fruit by its cups, which are weighed by what is known of them: `8 cups` for two quarts. */
const inCups = ({ kind, value, text }: Bit): string =>
  kind === 'volume' && /\bquarts?$/i.test(text) ? `${Number((value / CUP_ML).toFixed(2))} cups` : text

/** A plant as it is planned: its amount, a piece that is counted, its name; where it is put in, no punnet is dropped. */
export function plantText(bits: readonly Bit[], plant: Bit, typed: Sentence['typed'], isPutIn = false): string {
  const amount = plant.with === undefined ? undefined : bits[plant.with]
  if (amount === undefined || amount.role === 'gone') return plant.text.toLowerCase()
  const measure = amount.kind === 'bottles' ? null : inCups(amount)
  if (amount.from > plant.from && amount.kind === 'bare' && plant.loose !== undefined) {
    const [piece = '', form] = plant.loose.split(' ')
    const isWholeFlower = FLOWER.test(piece) && !/flower|elder|sambuc/.test(plant.text.toLowerCase())
    if (PIECES.test(piece) && !isWholeFlower) return `${measure} ${pieceOf(piece, form, plant.text.toLowerCase())}`
  }
  if (amount.from > plant.from || measure === null)
    return [measure, plant.text.toLowerCase()].filter((part) => part !== null).join(' ')
  const between = typed.tokens.slice(amount.to, plant.from).map(({ text }) => text)
  const piece = plant.loose !== undefined && PIECES.test(plant.loose) ? plant.loose : null
  // A punnet tells nobody how much.
  if (plant.loose !== undefined && piece === null && amount.kind === 'bare')
    return isPutIn ? `${measure} ${plant.loose} of ${plant.text.toLowerCase()}` : plant.text.toLowerCase()
  const joined = between.find((word) => word === 'of' || word === 'di')
  const of = piece !== null && joined !== undefined ? `${piece} ${joined}` : piece
  return [measure, of, plant.text.toLowerCase()].filter((part) => part !== null && part !== undefined).join(' ')
}

const ITALIAN_PIECE =
  /^(?:fogli[ae]|rametto|rametti|ba(?:c|cc)ell[oi]|stecc(?:a|he)|fior[ei]|infiorescenz[ae]|fett[ae]|pezz[oi])$/

/** A whole flower, by whatever name it is counted. */
const FLOWER = /^(?:flowers?|blooms?|umbels?|infiorescenz[ae])$/

/** `leaves of basil`, `foglie fresche di salvia`: a piece of a plant that was named before it. */
function pieceOf(piece: string, form: string | undefined, name: string): string {
  if (ITALIAN_PIECE.test(piece)) {
    const counted = FLOWER.test(piece) ? 'fiori' : piece
    return [counted, form, 'di', name].filter((part) => part !== undefined).join(' ')
  }
  const counted = FLOWER.test(piece) && /flower/.test(name) ? 'heads' : piece
  return [counted, 'of', form, name].filter((part) => part !== undefined).join(' ')
}

/** Pieces that are weighed by what is known of them; loose measures are not. */
export const PIECES =
  /^(?:sticks?|pods?|sprigs?|cloves?|leaf|leaves|thumbs?|pieces?|slices?|heads?|bunch|bunches|stalks?|pinch|pinches|cones?|stars?|beans?|flowers?|blooms?|umbels?|fogli[ae]|fior[ei]|infiorescenz[ae]|stecc(?:a|he)|bastoncin[oi]|bacell[oi]|baccell[oi]|rametto|rametti|fett[ae]|pezz[oi]|mazz[oi]|mazzett[oi]|peels?|zests?|bucc[ei]a?|bucce|scorz[ae])$/

export const isSame = (one: Bit, other: Bit): boolean => one.ids?.[0] !== undefined && one.ids[0] === other.ids?.[0]

const TITLE =
  /^(?:liqueurs?|cordials?|ratafia|bounce|brandy|vodka|gin|rum|whiske?y|bourbon|grappa|shrub|recipe|ricetta|rosolio|:)$/

const stemOf = (word: string): string =>
  word
    .toLowerCase()
    .replace(/(?:ies|y)$/, 'i')
    .replace(/(?:es|s)$/, '')

/** `Cherry cordial: 2 lb sour cherries`: the name of what is made, of which a kind is told with its amount. */
const isTitle = (plant: Bit, all: readonly Bit[], { tokens }: Sentence['typed']): boolean =>
  plant.with === undefined &&
  TITLE.test(tokens[plant.to]?.text ?? '') &&
  all.some(
    (other) =>
      other.from > plant.to &&
      other.with !== undefined &&
      stemOf(other.text.split(/\s+/).at(-1) ?? '') === stemOf(plant.text),
  )

const wordsIn = (text: string): readonly string[] => text.split(/\s+/).map(stemOf)

/**
 * `Nocino: 24 noci`, `cherry brandy, 1 kg morello cherries`: of a drink whose plant is told once more with its amount, the name that says
 * more is taken.
 */
function withoutDrinks(all: readonly Bit[]): readonly Bit[] {
  const drink = all.find(({ spirit, with: place }) => spirit !== undefined && place === undefined)
  const told = all.find(
    (other) =>
      drink !== undefined &&
      other.with !== undefined &&
      (wordsIn(other.text).every((word) => wordsIn(drink.text).includes(word)) ||
        wordsIn(drink.text).every((word) => wordsIn(other.text).includes(word))),
  )
  if (drink === undefined || told === undefined) return all
  const isLonger = wordsIn(drink.text).length > wordsIn(told.text).length
  const named = isLonger ? { ...told, text: drink.text, ...(drink.ids !== undefined && { ids: drink.ids }) } : told
  return all.filter((each) => each !== drink).map((each) => (each === told ? named : each))
}

const ARTICLE = /^(?:an?|un|uno|una)$/
const ADJECTIVE = /^(?:big|large|small|little|nice|whole|fat|grand[ei]|bell[aoe]?|piccol[oa])$/

/** `300 g of ginger and a lemon`: one of it, beside what is counted or weighed; null where none is said. */
function oneOf(plant: Bit, all: readonly Bit[], { tokens }: Sentence['typed']): string | null {
  const isBeside = all.some((other) => other !== plant && other.with !== undefined)
  if (plant.with !== undefined || plant.loose !== undefined || plant.spirit !== undefined || !isBeside) return null
  const from = ADJECTIVE.test(tokens[plant.from - 1]?.text ?? '') ? plant.from - 2 : plant.from - 1
  const isOne =
    ARTICLE.test(tokens[from]?.text ?? '') || (tokens[from]?.text === '’' && tokens[from - 1]?.text === 'un')
  return isOne && !TITLE.test(tokens[plant.to]?.text ?? '') ? `1 ${plant.text.toLowerCase()}` : null
}

export const plants: Fill = ({ bits, typed }) => {
  const all = bits.filter(isPlant)
  // `limoncello with 8 lemons`: named twice, it is the one that has an amount.
  const found = all.filter(
    (each, at) =>
      !all.some(
        (other, place) =>
          other !== each &&
          isSame(each, other) &&
          (other.with !== undefined || (place < at && each.with === undefined)),
      ),
  )
  const held = withoutDrinks(found.filter((each) => !isTitle(each, found, typed)))
  if (held.length === 0) return null
  const amounts = held.flatMap(({ with: place }) => (place === undefined ? [] : [bits[place]!]))
  return {
    text: held.map((each) => oneOf(each, held, typed) ?? plantText(bits, each, typed)).join(' + '),
    bits: [...all, ...amounts],
  }
}

export const PEEL = 'lemon peel'

export const plant: Fill = (sentence) => {
  const { bits, has } = sentence
  const found = bits.find((bit) => isPlant(bit) && (bit.ids?.length ?? 0) > 0)
  if (found !== undefined)
    return { text: found.text.toLowerCase(), bits: [found, ...(found.with === undefined ? [] : [bits[found.with]!])] }
  return has('peel') ? { text: PEEL, bits: [], isAssumed: true } : null
}
