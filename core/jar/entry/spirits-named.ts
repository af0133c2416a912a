import { unlessRefused } from '../../domain-error.ts'
import { once } from '../../once.ts'
import type { Origin } from '../../recipe/batch.ts'
import { decodeBatch } from '../../recipe/code/batch-code.ts'
import { drinksIn as readDrinks } from '../../recipe/drinks-in.ts'
import type { NamedPortion, Portion } from '../../recipe/portion.ts'
import type { Entry } from './entry.ts'

interface Poured extends Pick<Entry, 'typed'> {
  readonly spirits: readonly Portion[]
  readonly origin?: Origin | null
}

/** What each spirit was called; empty where that is read no more, or nobody said. */
function drinksIn({ typed, origin = null }: Poured): readonly (string | null)[] {
  const text = typed.findLast(([option]) => option === 'spirit')?.[1]
  const drinks = unlessRefused(() => {
    if (text !== undefined) return readDrinks(text, { blends: false }).map(({ drink }) => drink)
    return origin === null ? [] : decodeBatch(origin.code).spirits.map(({ drink = null }) => drink)
  })
  return drinks ?? []
}

/** The spirits of an entry with what its maker called each, where what was typed, or its code, tells of as many. */
export const spiritsNamed = once((entry: Poured): readonly NamedPortion[] => {
  const { spirits } = entry
  const drinks = drinksIn(entry)
  return drinks.length === spirits.length ? spirits.map((each, at) => ({ ...each, drink: drinks[at]! })) : spirits
})
