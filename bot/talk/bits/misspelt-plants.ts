import { farPlant } from '../../../core/botanical/find/far-plant.ts'
import { fruitSlip } from '../../../core/botanical/find/fruit-slip.ts'
import { plantMisspelt } from '../../../core/botanical/find/plant-said.ts'
import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { type Around, OF } from './amount-bits.ts'
import { type Bit, bit } from './bit.ts'
import { FILTER } from './plant-bits.ts'

/** A plant that is only known by the amount before it, or that has a slip. */
function misspeltAt({ tokens }: TypedText, at: number): Bit | null {
  const found = plantMisspelt(tokens, at)
  if (found === null) {
    const { kind = 'sign', text = '' } = tokens[at] ?? {}
    const far = kind === 'word' ? farPlant(text) : null
    return far === null ? null : bit('plant', at, at + 1, 0, far.name, { ids: far.ids })
  }
  return FILTER.test(tokens[found.next]?.text ?? '')
    ? null
    : bit(
        'plant',
        at,
        found.next,
        0,
        tokens
          .slice(at, found.next)
          .map(({ text }) => text)
          .join(' '),
        { ids: found.ids },
      )
}

/** The part that harms where the fruit does not: `10 peech stones`. */
const PART =
  /^(?:stones?|pits?|kernels?|lea(?:f|ves)|seeds?|pips?|wood|bark|roots?|stems?|stalks?|noccioli|nocciolo|semi|foglie?|radic[ei])$/

/** A common fruit with one slip in its name; asked right behind an amount. */
function slippedFruitAt(typed: TypedText, at: number): Bit | null {
  const slip = PART.test(wordAt(typed, at + 1)) ? null : fruitSlip(wordAt(typed, at))
  return slip === null ? null : bit('plant', at, at + 1, 0, slip.name, { ids: slip.ids })
}

/** What a plant is counted or weighed by. */
const COUNTED: ReadonlySet<Bit['kind']> = new Set(['mass', 'bare'])

/** Plants with a slip in words that are nothing else. */
export function withMisspelt(
  { typed, spans, lexicon }: Pick<Around, 'typed' | 'spans' | 'lexicon'>,
  read: readonly Bit[],
): readonly Bit[] {
  const isTaken = (at: number): boolean =>
    read.some(({ from, to }) => from <= at && at < to) || spans.some(({ from, to }) => from <= at && at < to)
  // `10 lemmons`, `200 g of peeches`.
  const isOfAmount = (at: number): boolean => {
    const end = OF.has(wordAt(typed, at - 1)) ? at - 1 : at
    return read.some(({ kind, to }) => to === end && COUNTED.has(kind)) || typed.tokens[at - 1]?.kind === 'number'
  }
  const [fillers, others] = [wordSet(lexicon.fillers), wordSet(lexicon.notPlants)]
  let next = 0
  const more = typed.tokens.flatMap(({ kind, text }, at) => {
    const isName = kind === 'word' && at >= next && !isTaken(at) && !fillers.has(text) && !others.has(text)
    const found = isName ? (misspeltAt(typed, at) ?? (isOfAmount(at) ? slippedFruitAt(typed, at) : null)) : null
    const isFree =
      found !== null &&
      Array.from({ length: found.to - found.from }, (_, more) => at + more).every((each) => !isTaken(each))
    if (found === null || !isFree) return []
    next = found.to
    return [found]
  })
  return [...read, ...more].toSorted((one, other) => one.from - other.from)
}
