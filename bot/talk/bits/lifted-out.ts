import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Bit } from './bit.ts'

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

/** `Fished the stick out`: a piece is named, and not of what. */
export function isPieceOut(tokens: readonly Token[]): boolean {
  const lifted = tokens.findIndex(({ text }) => LIFTED.test(text))
  const piece = tokens.findIndex(({ text }, at) => at > lifted && PIECE.test(text))
  const isFollowed = tokens.slice(piece, piece + 3).some(({ text }) => OUT.test(text))
  return lifted !== -1 && piece !== -1 && (isFollowed || /^(?:tolt|levat|tirat|ripescat)/.test(tokens[lifted]!.text))
}
