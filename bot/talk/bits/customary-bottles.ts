import { customaryBottle } from '../../../core/quantity/customary-bottles.ts'
import { wordAt } from '../../../core/quantity/read/tokens.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { type Around, NONE } from './amount-bits.ts'
import { type Bit, bit } from './bit.ts'
import { thingAt } from './things.ts'

const ARTICLE = /^(?:an?|one|un|una|uno)$/
const LONGEST = 3
const LITRE = 1000

/** `Two wine bottles`, `a magnum of gin`, `three jam jars of vodka`: as much as such bottles hold; a jar only where it is of spirit. */
export function customaryBottlesAt({ typed, lexicon }: Around, at: number): Bit | null {
  const number = numberSaid(typed, at, NONE)
  const count = number ?? (ARTICLE.test(wordAt(typed, at)) ? { value: 1, text: '1', next: at + 1 } : null)
  if (count === null) return null
  const words = Array.from({ length: LONGEST }, (_, more) => wordAt(typed, count.next + more))
  const found = customaryBottle(words)
  if (found === null) return null
  const next = count.next + found.words
  const isOf = /^(?:of|di)$/.test(wordAt(typed, next))
  const isOfSpirit = isOf && [1, 2, 3].some((more) => thingAt(typed.tokens, next + more, lexicon)?.kind === 'spirit')
  const isJar = /jar/.test(words[found.words - 1]!)
  if (isJar ? !isOfSpirit : isOf && !isOfSpirit) return null
  const ml = count.value * found.ml
  if (isOfSpirit && count.value === 1) return bit('volume', at, next, ml, ml >= LITRE ? `${ml / LITRE} l` : `${ml} ml`)
  return bit('bottles', at, next, ml, `${count.text} x ${found.ml} ml`, { count: count.value })
}
