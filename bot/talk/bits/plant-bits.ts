import { isDescriptor, type PlantFound, plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { type TypedText, textFrom, wordAt } from '../../../core/quantity/read/tokens.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { type Around, NONE } from './amount-bits.ts'
import { type Bit, bit } from './bit.ts'

/** Colours, not fruit: `gone a sad orange`. */
const COLOUR_AFTER =
  /^(?:turned|gone|went|goes|going|is|pale|sad|dull|bright|to|lovely|nice|a|deep|diventato|color|colore)$/

const COLOURS = /^(?:orange|lime|peach|plum|cherry|rose|violet|arancione|rosa|viola|olive)$/

function isColour({ typed, spans }: Around, at: number): boolean {
  if (!COLOURS.test(wordAt(typed, at)) || !COLOUR_AFTER.test(wordAt(typed, at - 1))) return false
  // `3 cloves to orange peel`.
  if (wordAt(typed, at - 1) === 'to' && spans.some(({ concept }) => concept === 'added')) return false
  const before = [at - 1, at - 2, at - 3].map((place) => wordAt(typed, place))
  return (
    before.some((word) => /^(?:turned|gone|went|goes|going|diventato|colou?r|colore|from|to|red|green)$/.test(word)) ||
    spans.some(({ concept, to }) => concept === 'pale' && to > at)
  )
}

export const FILTER = /^(?:filters?|papers?|filterpapers?)$/

/** `Il filtro da caffè`. */
const isOfFilter = (typed: TypedText, at: number): boolean =>
  /^(?:da|del|per|di)$/.test(wordAt(typed, at - 1)) && /^filtr[oi]$/.test(wordAt(typed, at - 2))

/** `Liquore all’alloro`, `liqueur of walnut`: what it is of is a plant, whatever else its name may mean. */
function isLiqueurOf({ tokens }: TypedText, at: number): boolean {
  const before = tokens.slice(Math.max(0, at - 3), at).map(({ text }) => text)
  return /(?:^| )liquor[ei] (?:di|d|al|alla|all|allo|ai|alle|agli|del|della|dell)(?: [’'])?$/.test(before.join(' '))
}

const PIECE = /^(?:leaf|leaves|sprigs?|fogli[ae]|ramett[oi]|mazzett[oi])$/

/** `Alloro 20 foglie`, `bay, 3 leaves`: what pieces are counted of is a plant. */
function isCountedBehind({ typed }: Around, at: number): boolean {
  const from = /^[,:(-]$/.test(wordAt(typed, at)) ? at + 1 : at
  const count = numberSaid(typed, from, NONE)
  return count !== null && PIECE.test(wordAt(typed, count.next))
}

const KIND = /^(?:kinds?|sorts?|types?|variety|ones?|tipo|qualita)$/
const KIND_BEFORE = /^(?:the|il|la|le|i|of)$/

/** `Tea, black`, `oranges (bitter)`, `cherries, the sour kind`: the kind behind the name makes one name with it, where there is such a plant. */
function kindBehind({ typed }: Around, from: number, next: number): (PlantFound & { readonly text: string }) | null {
  const opens = wordAt(typed, next)
  if (opens !== ',' && opens !== '(') return null
  const at = KIND_BEFORE.test(wordAt(typed, next + 1)) ? next + 2 : next + 1
  const kind = typed.tokens[at]
  if (kind?.kind !== 'word') return null
  const name = typed.tokens.slice(from, next)
  const found = plantSaid([kind, ...name], 0, NONE)
  if (found === null || found.next !== name.length + 1) return null
  const word = KIND.test(wordAt(typed, at + 1)) ? at + 2 : at + 1
  // `Sloes, gin and sugar`: without its bracket or the word for a kind it has to end there.
  const isClosed = word > at + 1 || wordAt(typed, word) === ')' || /^[,.;?!]?$/.test(wordAt(typed, word))
  if (!isClosed) return null
  const end = wordAt(typed, word) === ')' ? word + 1 : word
  return { ...found, next: end, text: [kind, ...name].map(({ text }) => text).join(' ') }
}

/** `dried orange peel`: what is said of a plant's form belongs to it, before it and behind it. */
export function plantAt(around: Around, at: number): Bit | null {
  const { typed, lexicon } = around
  const { tokens } = typed
  let from = at
  // `A dry ginger thing` is how sweet it is to be.
  while (isDescriptor(wordAt(typed, from)) && wordAt(typed, from) !== 'dry' && from - at < 2) from++
  // `Un sacco di menta`: what there is too much of is no word of the sentence.
  const isTooMuch = around.spans.some(({ concept, to }) => concept === 'what_can_i_make' && to === from)
  const mayBeAny = isTooMuch || isLiqueurOf(typed, from) || isCountedBehind(around, from + 1)
  const found = plantSaid(tokens, from, mayBeAny ? NONE : wordSet(lexicon.notPlants))
  // `Tea, black`: of some names the kind is needed.
  const behindName = kindBehind(around, from, found?.next ?? from + 1)
  if (found === null && behindName !== null)
    return bit('plant', at, behindName.next, 0, behindName.text, { ids: behindName.ids })
  // `Smells of pear drops`.
  const isSweet = /^drops?$/.test(wordAt(typed, from + 1))
  // `La pesca di beneficenza` is a raffle.
  const isRaffle =
    wordAt(typed, from) === 'pesca' &&
    /^(?:di|del|della)$/.test(wordAt(typed, from + 1)) &&
    /^(?:beneficen\p{L}*|parrocchia|sagra)$/u.test(wordAt(typed, from + 2))
  // `A coffee filter` is what it runs through.
  const isTool = FILTER.test(wordAt(typed, found?.next ?? from)) || isOfFilter(typed, from)
  if (found === null || isSweet || isRaffle || isTool || isColour(around, from)) return null
  if (behindName !== null) return bit('plant', at, behindName.next, 0, behindName.text, { ids: behindName.ids })
  // `ginger, dried`, `coffee beans cracked`.
  const behind = wordAt(typed, found.next) === ',' ? found.next + 1 : found.next
  const to = isDescriptor(wordAt(typed, behind)) ? behind + 1 : found.next
  // `The ginger's out`: the name is all that counts.
  return bit('plant', at, to, 0, textFrom(typed, at, to).replace(/['’‘´`]s$/i, ''), { ids: found.ids })
}
