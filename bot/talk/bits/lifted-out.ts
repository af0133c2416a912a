import type { Botanical } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import { type Bit, bit, type TalkJar } from './bit.ts'
import { jarsNamed, runningAmong } from './jars-of.ts'

const LIFTED =
  /^(?:took|taken|take|fished|pulled|picked|lifted|scooped|whipped|dug|hoicked|plucked|hooked|teased|got|had|tolt[oaie]|levat[oaie]|tirat[oaie]|ripescat[oaie])$/
const OUT = /^(?:out|fuori|via)$/
const IS = /^(?:is|are|has|have|come|came|been|now|all|just|stick|sticks|pods?|e|sono|ora|gia)$/
const STAYS = /^(?:stays?|stayed|still|left|remains?|resta|restano|rimane|rimangono|ancora|dentro|not|no|non)$/
const PIECE =
  /^(?:sticks?|pods?|cloves?|leaf|leaves|sprigs?|stars?|bags?|teabags?|stecc(?:a|he)|baccell[oi]|chiod[oi]|fogli[ae]|ramett[oi])$/

const wordsBetween = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).every(({ kind }) => kind === 'word')

/** `Took both the cinnamon and the chilli out`, `the cinnamon's out`, `cannella fuori`: a plant between a word of lifting and `out`, or before it. */
export function liftedOut(tokens: readonly Token[], bits: readonly Bit[]): readonly ConceptSpan[] {
  return bits.flatMap(({ kind, from, to }) => {
    if (kind !== 'plant') return []
    let at = to
    while (IS.test(tokens[at]?.text ?? '')) at++
    if (OUT.test(tokens[at]?.text ?? '') && tokens[at + 1]?.text !== 'of')
      return [{ concept: 'took_out', from: at, to: at + 1 } as const]
    const out = tokens.findIndex(({ text }, place) => place >= to && OUT.test(text))
    const lifted = tokens.findLastIndex(({ text }, place) => place < from && LIFTED.test(text))
    const isBetween = out !== -1 && lifted !== -1 && wordsBetween(tokens, lifted, out)
    return isBetween ? [{ concept: 'took_out', from: lifted, to: lifted + 1 } as const] : []
  })
}

/** Said of a plant that is left where it is: `the pears are still in`. */
export function staysIn(tokens: readonly Token[], { to }: Bit): boolean {
  let at = to
  while (/^(?:are|is|have|has|s|e|sono|le|la|il|lo)$/.test(tokens[at]?.text ?? '')) at++
  return STAYS.test(tokens[at]?.text ?? '')
}

/** Where a piece is named that came out; -1 where none is. */
function pieceAt(tokens: readonly Token[]): number {
  const lifted = tokens.findIndex(({ text }) => LIFTED.test(text))
  const piece = tokens.findIndex(({ text }, at) => at > lifted && PIECE.test(text))
  if (lifted === -1 || piece === -1) return -1
  const isFollowed = tokens.slice(piece, piece + 3).some(({ text }) => OUT.test(text))
  const isBefore = OUT.test(tokens[lifted + 1]?.text ?? '')
  return isFollowed || isBefore || /^(?:tolt|levat|tirat|ripescat)/.test(tokens[lifted]!.text) ? piece : -1
}

/** `Fished the stick out`: a piece is named, and not of what. */
export function isPieceOut(tokens: readonly Token[], bits: readonly Bit[]): boolean {
  const at = pieceAt(tokens)
  return at !== -1 && !bits.some(({ kind, from, to }) => kind === 'plant' && from <= at && at < to)
}

const single = (word: string): string => word.replace(/^leaves$/, 'leaf').replace(/(?<=[^s])s$/, '')

/** Whether a name of it has the piece: `cinnamon stick`, `baccello di vaniglia`. */
const isCalled = ({ names }: Botanical, piece: string): boolean =>
  [...names.en, ...names.it].some((name) => name.toLowerCase().split(' ').map(single).includes(piece))

/** The plant that a piece is of, by the names of what steeps: the stick is cinnamon, the pod vanilla. Null where it may be several, or none. */
function pieceOf(tokens: readonly Token[], bits: readonly Bit[], jars: readonly TalkJar[]): Bit | null {
  const at = pieceAt(tokens)
  if (at === -1 || bits.some(({ from, to }) => from <= at && at < to)) return null
  const running = runningAmong(jars)
  const named = jarsNamed(bits, running).map(({ jar }) => jar)
  if (named.length === 0 && bits.some(({ kind }) => kind === 'plant')) return null
  const piece = single(tokens[at]!.text)
  const inside = (of: readonly TalkJar[]) => [
    ...new Set(of.flatMap(({ stage, plants }) => (stage === 'steeping' ? plants : []))),
  ]
  const called = (ids: readonly string[]) => ids.map(botanicalById).filter((each) => isCalled(each, piece))
  const ofNamed = called(inside(named))
  const found = ofNamed.length > 0 ? ofNamed : called(inside(running))
  const [only, another] = found
  if (only === undefined || another !== undefined) return null
  return bit('plant', at, at + 1, 0, only.names.en[0]!.toLowerCase(), { ids: [only.id] })
}

/** With that plant, where its piece stands. */
export function withPiece(tokens: readonly Token[], bits: readonly Bit[], jars: readonly TalkJar[]): readonly Bit[] {
  const piece = pieceOf(tokens, bits, jars)
  return piece === null ? bits : [...bits, piece].toSorted((one, other) => one.from - other.from)
}
