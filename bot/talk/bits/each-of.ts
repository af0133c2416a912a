import { AMOUNTS, belongs, type Open, type RolesAround, wordsOf } from './attach.ts'
import type { Bit } from './bit.ts'

const EACH = /^(?:each|ciascun[oa]|ognun[oa]|entramb[ei]|both)$/
/** `Six of each`, `40 g di ciascuno`, `200 g each of`. */
const JOINS = /^(?:of|di|d|per|for|the|,|-)$/

/** Where the words that say `of each` end behind an amount; null where none stand there. */
function endOfEach({ typed }: RolesAround, from: number): number | null {
  let at = from
  while (at < from + 2 && JOINS.test(typed.tokens[at]?.text ?? '')) at++
  if (!EACH.test(typed.tokens[at]?.text ?? '')) return null
  return typed.tokens[at + 1]?.text === 'of' ? at + 2 : at + 1
}

/** Whether things are only listed between two of them. */
const isListed = (around: RolesAround, one: Bit, other: Bit): boolean =>
  wordsOf(around, one.to, other.from).every((word) => /^(?:,|and|n|&|\+|e|ed|plus|with|con|half|mezz[oa])$/.test(word))

/** The things of one kind that are listed from a place on, to the left or to the right. */
function listedFrom(around: RolesAround, bits: readonly Bit[], at: number, step: 1 | -1): readonly number[] {
  const first = bits[at]
  if (first === undefined || (first.kind !== 'plant' && first.kind !== 'spirit')) return []
  const places = [at]
  for (let place = at + step; bits[place]?.kind === first.kind; place += step) {
    const [left, right] = step === 1 ? [bits[place - 1]!, bits[place]!] : [bits[place]!, bits[place + 1]!]
    if (!isListed(around, left, right)) break
    places.push(place)
  }
  return places
}

/** `Lemon and lime, six of each`, `200 g each of figs and plums`: so much of every one that is listed beside it. */
export function eachOf(around: RolesAround, bits: readonly Open[]): Open[] {
  const at = bits.findIndex(({ kind, to }) => AMOUNTS.has(kind) && endOfEach(around, to) !== null)
  const amount = bits[at]
  if (amount === undefined) return [...bits]
  const isBehind = around.typed.tokens[endOfEach(around, amount.to)! - 1]?.text === 'of'
  const before = isBehind ? [] : listedFrom(around, bits, at - 1, -1)
  const places = new Set(before.length > 1 ? before : listedFrom(around, bits, at + 1, 1))
  const things = [...places].map((place) => bits[place]!)
  if (things.length < 2) return [...bits]
  const kind = things[0]!.kind
  const poured =
    kind === 'spirit' && amount.kind === 'bare'
      ? { ...amount, kind: 'volume' as const, text: `${amount.text} ml` }
      : amount
  if (!things.every((thing) => belongs(poured, thing.kind))) return [...bits]
  const shared: Open[] = []
  bits.forEach((bit, place) => {
    if (place === at) return
    if (!places.has(place)) shared.push(bit)
    else
      shared.push(
        { ...poured, with: shared.length + 1, role: kind === 'plant' ? 'of_plant' : 'of_spirit' },
        { ...bit, with: shared.length },
      )
  })
  return shared
}
