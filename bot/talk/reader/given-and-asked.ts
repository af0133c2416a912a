import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'

const COUNTED = new Set<Bit['kind']>(['bottles', 'bare'])

/** What is left, and until when: what is said of bottles whenever some are given. */
const ANSWERED =
  /^(?:so )?(?:whats|what is|what|how many|how much)\b.*\b(?:left|leave|leaves|remain|remains|have i got now|do i have now)\b.*$|^quant[eaio]\b.*\b(?:rest|riman|avanz)\p{L}*.*$|^(?:until|till) when\b.*\b(?:good|best|keep|keeps|last|lasts)\b.*$|^how long\b.*\b(?:good|keep|keeps|last|lasts)\b.*$/u

const CUT_OFF = /^(?:is|are|was|and|so|i|it|that|e|is it|is that|it is)$/

const ASKS = /^(?:how|what|whats|quant[eaio])$/

/** `… so how many are left`: what is asked begins without a comma. */
const isAsking = (tokens: Sentence['typed']['tokens'], at: number): boolean =>
  /^(?:so|and|then|e|quindi|allora|;|[.])$/.test(tokens[at]!.text) && ASKS.test(tokens[at + 1]?.text ?? '')

/** `I gave two bottles of the sloe away, what's left and until when is it good?`: what was given, which answers the rest; null where something else is asked. */
export function givenAndAsked({ typed, bits, spans }: Sentence): string | null {
  const given = spans.find(({ concept }) => concept === 'gave_away')
  const { tokens } = typed
  const comma = tokens.findIndex(
    ({ text }, at) => given !== undefined && at >= given.to && (text === ',' || isAsking(tokens, at)),
  )
  if (given === undefined || comma === -1) return null
  const isCounted = bits.some(({ kind, to }) => COUNTED.has(kind) && to <= comma)
  const isNamed = bits.some(({ kind, to }) => (kind === 'plant' || kind === 'jar') && to <= comma)
  const isOther = bits.some(({ from }) => from > comma)
  const isWish = spans.some(({ concept, to }) => (concept === 'hypothesis' || concept === 'asking') && to <= comma)
  if (!isCounted || !isNamed || isOther || isWish) return null
  const asked = wordsFrom(typed, comma + 1)
    .split(/ (?:and|,|\?) | \?$/)
    // What was cut off in its first words asks nothing.
    .filter((part) => part !== '' && !CUT_OFF.test(part))
  return asked.length > 0 && asked.every((part) => ANSWERED.test(part)) ? textFrom(typed, 0, comma) : null
}
