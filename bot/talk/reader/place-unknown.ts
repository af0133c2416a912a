import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'

const MOST_WORDS = 3

/** `In`, `near` and their like before a place. */
const BEFORE = /^(?:in|near|at|outside|a|ad|vicino|di|da|the)$/i

/** A place by its capital letters: `I live in Milan`, `sto a San Remo`; `I’m in the shed` is none. */
const PLACE = /^\p{Lu}[\p{L}’'-]+(?:\s\p{Lu}[\p{L}’'-]+)*$/u

/** Where somebody lives whose time zone has no name of its own: the zone is asked for. Null where no place is told. */
export function placeUnknown({ typed, spans, bits, has }: Sentence): TalkReading | null {
  if (!has('i_live') || has('asking', 'gardening') || bits.length > 0) return null
  for (const { concept, to } of spans) {
    if (concept !== 'i_live') continue
    let from = to
    while (BEFORE.test(typed.tokens[from]?.text ?? '') && from - to < 2) from++
    for (let end = Math.min(typed.tokens.length, from + MOST_WORDS); end > from; end--) {
      const place = textFrom(typed, from, end)
      const isAll = typed.tokens.slice(end).every(({ kind }) => kind === 'sign')
      if (!isAll || !PLACE.test(place)) continue
      const call = { command: 'settings', options: {} } as const
      return { kind: 'question', call, about: { kind: 'zone_of', place }, choices: [], leftOut: [] }
    }
  }
  return null
}
