import { customaryBottle } from '../../../core/quantity/customary-bottles.ts'
import { wordAt } from '../../../core/quantity/read/tokens.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { type Around, NONE } from './amount-bits.ts'
import { type Bit, bit } from './bit.ts'
import { thingAt } from './things.ts'

const ARTICLE = /^(?:an?|one|un|una|uno)$/
const LONGEST = 3
const LITRE = 1000

const JOINS = /^(?:and|plus|e|ed|with|con|in|[,;&+])$/

/** A spirit that begins within a few words, none of which begins another thing: not `of sloes and gin`. */
function spiritWithin(typed: Around['typed'], from: number, lexicon: Around['lexicon']): boolean {
  for (let at = from; at < from + LONGEST && !JOINS.test(wordAt(typed, at)); at++)
    if (thingAt(typed.tokens, at, lexicon)?.kind === 'spirit') return true
  return false
}

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
  const isOfSpirit = isOf && spiritWithin(typed, next + 1, lexicon)
  const isJar = /jar/.test(words[found.words - 1]!)
  if (isJar ? !isOfSpirit : isOf && !isOfSpirit) return null
  const ml = count.value * found.ml
  if (isOfSpirit && count.value === 1) return bit('volume', at, next, ml, ml >= LITRE ? `${ml / LITRE} l` : `${ml} ml`)
  return bit('bottles', at, next, ml, `${count.text} x ${found.ml} ml`, { count: count.value })
}
