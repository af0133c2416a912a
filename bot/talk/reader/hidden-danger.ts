import { mistakenIn } from '../../../core/botanical/find/mistaken-in.ts'
import { farRefusedIn, nearRefusedIn, nearRefusedSaid } from '../../../core/botanical/refuse/near-said.ts'
import { expectDrinkable } from '../../../core/botanical/refuse/refuse-spirit.ts'
import { withoutLikeness } from '../../../core/botanical/refuse/refused-words.ts'
import { type DomainError, domainErrorOf } from '../../../core/domain-error.ts'
import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Path } from '../../calls/signatures.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'

/** Where what is said of a spirit ends: `60% from my still, with 10 lemons`. */
const ENDS =
  /^(?:and|with|plus|in|into|to|for|on|at|if|so|what|how|but|i|we|is|are|it|then|con|e|per|se|ma|nel|nella|brought|left|gave|given|bought|sent|lent|dropped|portato|lasciato|regalato|comprato|dato|,|;|[+.?!])$/

/** Who is spoken to, by the last word of all: `a litre of vodka mate`. */
const SPOKEN_TO = /^(?:mate|friend|dad|brother|cousin|uncle|grandma|grandad|nonna|nonno|zia|zio|amico)$/
const WHOSE = /^(?:my|mine|our|your|his|her|their|a|an|the|me|of|by|from|off|mio|mia|un|una|di|da|del|dal)$/

const isSpokenTo = (tokens: Sentence['typed']['tokens'], at: number): boolean => {
  const [before, word, ...behind] = [tokens[at - 1], tokens[at], ...tokens.slice(at + 1)].map(
    (each) => each?.text ?? '',
  )
  return SPOKEN_TO.test(word!) && !WHOSE.test(before!) && behind.every((text) => /^[.,?!]$/.test(text))
}

const isSpirit = ({ kind, role }: Bit): boolean =>
  kind === 'spirit' || (kind === 'strength' && role !== 'want') || (kind === 'volume' && role === 'of_spirit')

/** `Ricetta di zia: 1 litro di alcol`: whose recipe it is, tells nothing of the spirit. The place of the colon; -1 where none is. */
function titleEnd(tokens: Sentence['typed']['tokens']): number {
  const colon = tokens.findIndex(({ text }) => text === ':')
  const isRecipe = tokens.slice(0, Math.max(0, colon)).some(({ text }) => /^(?:recipe|recipes|ricetta)$/.test(text))
  return isRecipe ? colon : -1
}

/** The problem with a spirit that is not for drinking, by the words that stand beside it; null where there is none. */
function dangerBesideSpirit({ typed, bits }: Sentence): DomainError | null {
  const { tokens } = typed
  const isOther = (at: number): boolean =>
    bits.some((bit) => (bit.kind === 'plant' || bit.kind === 'sugar') && bit.from <= at && at < bit.to)
  // `15 heads, a litre of vodka`: of a flower, they are counted.
  const isCounted = (at: number): boolean =>
    tokens[at]?.text === 'heads' && bits.some(({ kind, from, to }) => kind === 'bare' && from < at && at <= to)
  const title = titleEnd(tokens)
  const wordsAt = (at: number): string => `${tokens[at]?.text} ${tokens[at + 1]?.text}`
  const isEnd = (at: number): boolean =>
    at <= title ||
    tokens[at] === undefined ||
    ENDS.test(tokens[at].text) ||
    isOther(at) ||
    isCounted(at) ||
    isSpokenTo(tokens, at)
  for (const bit of bits.filter(isSpirit)) {
    let [from, to] = [bit.from, bit.to]
    while (!isEnd(from - 1)) from--
    // `Raisins on brandy like my gran`: how she does it, tells nothing of the spirit.
    while (!isEnd(to) && !/^(?:like|as) (?:my|our|the|a|his|her)$/.test(wordsAt(to))) to++
    const refusal = domainErrorOf(() => expectDrinkable(textFrom(typed, from, to)))
    if (refusal !== null) return refusal
  }
  return null
}

/** What the words beside a spirit tell of it, and words that nothing knows, in which a slip of a poison may hide. */
export function hiddenDanger(reading: TalkReading, sentence: Sentence): TalkReading {
  if ((reading.kind !== 'call' && reading.kind !== 'question') || !TAKES_PLANTS.has(reading.call.command))
    return reading
  const beside = dangerBesideSpirit(sentence)
  if (beside !== null) return { kind: 'refused', problem: beside }
  // `Foxglove Cottage` is a place.
  const told = withoutLikeness(sentence.typed.text)
  for (const word of reading.leftOut) {
    if (isDenied(word, sentence) || !told.includes(word)) continue
    const problem = nearRefusedSaid(word)
    if (problem !== null) return { kind: 'refused', problem }
  }
  return reading
}

/** `Without foxglove, please`. */
const isDenied = (word: string, { typed }: Sentence): boolean => {
  const at = typed.text.indexOf(word)
  return /\b(?:without|no|not|never|isnt|senza|non|niente)(?: (?:any|the|more))? $/i.test(
    typed.text.slice(0, Math.max(0, at)),
  )
}

const TAKES_PLANTS = new Set<Path>(['plan', 'jar start', 'jar add', 'mix', 'blend', 'dilute', 'again'])

/** Nothing of a plant was understood: the general answer may stand before the question which plant it is. */
const MAY_HIDE: ReadonlySet<TalkReading['kind']> = new Set(['lost', 'topic'])

/**
 * A slip of a poison is named before anything else, whatever the rest was read as. `Laurel leaves, may I use them?`: no general
 * answer stands before the question which laurel it is.
 */
export function hiddenPlant(reading: TalkReading, text: string): TalkReading {
  if (reading.kind === 'refused') return reading
  const problem =
    nearRefusedIn(text) ??
    (MAY_HIDE.has(reading.kind) ? mistakenIn(text, reading.kind === 'lost') : null) ??
    (reading.kind === 'lost' ? farRefusedIn(text) : null)
  return problem === null ? reading : { kind: 'refused', problem }
}
