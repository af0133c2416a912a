import { wordAt } from '../../../core/quantity/read/tokens.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { type Around, NONE } from './amount-bits.ts'
import { type Bit, bit } from './bit.ts'
import { plantAt } from './plant-bits.ts'

const ARTICLE = /^(?:an?|one|un|una|uno|the)$/
const SOME = /^(?:some|few|little|several|qualche|alcun[ei])$/
const SIZE =
  /^(?:good|nice|big|large|thick|wide|long|short|small|little|tiny|thin|generous|piccol[oaie]|sottil[ei]|bel|bella)$/

/** Pieces of a plant that are counted, and bits of it that tell nobody how much. */
const PIECE =
  /^(?:strips?|twists?|curls?|ribbons?|slices?|coins?|rounds?|pieces?|bits?|scraps?|shavings?|chunks?|lumps?|knobs?|wedges?|blades?|sprigs?|leaf|leaves|pinch|pinches|striscia|strisce|fett(?:a|e|ina|ine)|rondell[ae]|pezz(?:o|i|etto|etti|ettino|ettini)|pizzic(?:o|hi)|ramett[oi]|fogli[ae])$/
const OF = /^(?:of|di|d)$/

/** How many: the text of it and what follows; null where nothing counts. */
function countAt(
  { typed }: Around,
  at: number,
): { readonly text: string; readonly value: number; readonly next: number } | null {
  const number = numberSaid(typed, at, NONE)
  if (number !== null) return number
  const word = wordAt(typed, at)
  const next = wordAt(typed, at + 1)
  if (ARTICLE.test(word) && !SOME.test(next)) return { text: '1', value: 1, next: at + 1 }
  const some = SOME.test(word) ? at : ARTICLE.test(word) ? at + 1 : null
  // `A little bit of` is one.
  if (some !== null && wordAt(typed, some) === 'little') return { text: '1', value: 1, next: some }
  if (some !== null) return { text: wordAt(typed, some), value: 1, next: some + 1 }
  return null
}

/** `A strip of`, `2 thin slices of`, `a bit of`, `a few leaves of`, directly before a plant: its text tells the piece. */
export function smallPieceAt(around: Around, at: number): Bit | null {
  const { typed } = around
  const count = countAt(around, at)
  if (count === null) return null
  let piece = count.next
  while (SIZE.test(wordAt(typed, piece)) && piece - count.next < 2) piece++
  if (!PIECE.test(wordAt(typed, piece)) || !OF.test(wordAt(typed, piece + 1))) return null
  const from = /^['’]$/.test(wordAt(typed, piece + 2)) ? piece + 3 : piece + 2
  if (plantAt(around, /^(?:the|my)$/.test(wordAt(typed, from)) ? from + 1 : from) === null) return null
  const words = typed.tokens
    .slice(count.next, piece + 1)
    .map(({ from, to }) => typed.text.slice(from, to).toLowerCase())
  const of = wordAt(typed, piece + 1) === 'of' ? 'of' : 'di'
  return bit('bare', at, from, count.value, [count.text, ...words, of].join(' '))
}
