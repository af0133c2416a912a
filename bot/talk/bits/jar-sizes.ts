import { type Open, type RolesAround, wordsOf } from './attach.ts'
import type { Bit } from './bit.ts'

const JAR = /^(?:jars?|vasett[oi]|barattol[oi]|vas[oi]|kilners?|crock|demijohn)$/
/** What a jar is called between its size and its word: `a 1 l kilner jar`. */
const KIND = /^(?:kilner|mason|ball|jam|honey|glass|preserving|canning|clip|clip top|storage|big|small|old|clean|-)$/
const MOST_KINDS = 2
/** Told of what becomes of a jar that stands there: its size is that of where it goes. */
const MOVED = new Set(['housed', 'stands', 'other_vessel', 'divided', 'strained', 'filtered', 'sweetened'])

/** Whether what is named behind a jar’s word is all that fills it: `a litre jar of vodka`. */
const isOfSpirit = (around: RolesAround, bits: readonly Open[], to: number): boolean =>
  /^(?:of|di)$/.test(around.typed.tokens[to]?.text ?? '') &&
  bits.some(({ kind, from, spirit }) => kind === 'spirit' && spirit === undefined && from >= to && from <= to + 3) &&
  !bits.some(({ kind, from }) => kind === 'plant' && from >= to && from <= to + 3)

/** Words of a jar behind a size: `1 l KILNER JAR`, none in front of `un BARATTOLO DA un litro`; null where none stand there. */
function jarBeside(around: RolesAround, { from, to }: Open): number | null {
  let end = to
  const wordAt = (at: number): string => wordsOf(around, at, at + 1)[0] ?? ''
  // `A 1 l kilner` is one without the word.
  while (end - to < MOST_KINDS && KIND.test(wordAt(end)) && (!JAR.test(wordAt(end)) || JAR.test(wordAt(end + 1)))) end++
  if (JAR.test(wordAt(end))) return end + 1
  const [jar = '', of = ''] = wordsOf(around, from - 2, from)
  return JAR.test(jar) && /^(?:da|di|of)$/.test(of) ? to : null
}

/** `A one litre jar of cherries`: how large a jar is tells how much goes in, and is no amount of anything. */
export function jarSizes(around: RolesAround, bits: Open[]): void {
  if (!bits.some(({ kind }) => kind === 'plant')) return
  const isWithSpirit = bits.some(({ kind, spirit }) => kind === 'spirit' && spirit === undefined)
  if (!isWithSpirit && around.spans.some(({ concept }) => MOVED.has(concept))) return
  for (const bit of bits) {
    const end = bit.kind === 'volume' && bit.role === null && bit.with === undefined ? jarBeside(around, bit) : null
    if (end === null || isOfSpirit(around, bits, end)) continue
    bit.role = 'gone'
    bit.isJarSize = true
  }
}

/** So much of a spirit, or of a drink: neither water, sugar nor the size of a jar. */
export const isLiquidAmount = ({ kind, role, isJarSize }: Bit): boolean =>
  (kind === 'volume' && isJarSize !== true && role !== 'of_water' && role !== 'of_sugar') ||
  (kind === 'bottles' && role === 'of_spirit')
