import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { measureSaid } from '../../../core/quantity/said/measure-said.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { type ConceptSpan, wordSet } from '../lexicon/concepts.ts'
import { type Around, OF } from './amount-bits.ts'
import { type Bit, bit, type TalkJar } from './bit.ts'
import { type FluidSize, fluidSizeAt } from './fluid-size.ts'
import { countable } from './things.ts'

const ARTICLE = /^(?:a|an|one|another|un|una|uno)$/

/** Between how many there are and how large they are: `three of the small 200 ml ones`. */
const BETWEEN =
  /^(?:of|ones?|the|pieces?|pcs?|pz|pezzi|littl(?:ies|es|uns)|bigg(?:ies|uns)|minis?|tinies|babies|x|×|wee|small|smaller|little|tiny|big|bigger|large|larger|tall|nice|more|at|quelle|quelli|piccol[aei]|grand[ei]|di|da|del|delle|dei|d)$/

const PIECE = /^(?:ones?|each|apiece|ciascun[oa]|l|una)$/

/** How large a bottle is, ml; nothing is smaller or larger. */
const SIZE = { least: 20, most: 5000 } as const

/** Joins one size to the next: `three 50s and a 20`. */
const JOINS = /^(?:and|plus|,|&|\+|e|ed|piu|with|con)$/

/** The unit of the sizes before, where one without a unit follows: `six of 35cl and one of 20`. */
function unitBefore({ tokens }: TypedText, at: number): string | null {
  const before = tokens.slice(0, at).findLast(({ text }) => /^(?:cl|ml|dl)$/.test(text))
  return before?.text ?? null
}

function sizeAt({ typed, lexicon }: Around, at: number, mayBeBare: boolean): FluidSize | null {
  const size = fluidSizeAt(typed, at, countable(lexicon))
  if (size !== null) return size
  const bare = measureSaid(typed, at, countable(lexicon)) === null ? numberSaid(typed, at, new Set()) : null
  const isPlural = bare !== null && wordAt(typed, bare.next) === 's'
  if (bare === null || bare.isWord || !(isPlural || mayBeBare)) return null
  const unit = bare.value < 100 ? (unitBefore(typed, at) ?? (isPlural ? 'cl' : null)) : 'ml'
  if (unit === null) return null
  const ml = bare.value * (unit === 'cl' ? 10 : unit === 'dl' ? 100 : 1)
  return { text: `${bare.text} ${unit}`, ml, next: isPlural ? bare.next + 1 : bare.next }
}

const LARGE =
  /^(?:ones?|pieces?|pcs?|pz|pezzi|littl(?:ies|es|uns)|bigg(?:ies|uns)|minis?|tinies|babies|wee|small|smaller|little|tiny|big|bigger|large|larger|tall|piccol[aei]|grand[ei])$/

/** No bottle that is told by its bare size is smaller, ml. */
const LEAST_BARE_ML = 50

const MOST_FILLED = 60

const ENDS = /^(?:[.,;!)]|and|today|yesterday|now|so|e|oggi|ieri|)$/

/** `Bottled x4`, `bottled, four of them`, `imbottigliato: 5`: so many of which no size is told; null where none are. */
function countedAt({ typed }: Around, at: number): Bit | null {
  const number = numberSaid(typed, at, new Set())
  if (number === null || !Number.isInteger(number.value) || number.value < 1 || number.value > MOST_FILLED) return null
  const before = wordAt(typed, at - 1)
  const isTimes = /^x$/.test(before) && typed.tokens[at - 2]?.kind !== 'number'
  const isOfThem = wordAt(typed, number.next) === 'of' && /^(?:them|em|those|it)$/.test(wordAt(typed, number.next + 1))
  const next = isOfThem ? number.next + 2 : number.next
  const isAlone = /^(?:[,:.;(]|bottled|imbottigliat[oa])$/.test(before) && ENDS.test(wordAt(typed, next))
  if (!isTimes && !isAlone) return null
  return bit('bottles', at, next, number.value, String(number.value), { count: number.value, isSizeAssumed: true })
}

/**
 * Where bottles were filled or given away: how many of what size, without their own word: `five 500s`, `3 of 70cl`, `a wee 200 ml one`,
 * `4 da mezzo litro`; null where none begin.
 */
export function filledAt(around: Around, at: number): Bit | null {
  const { typed, lexicon, spans } = around
  if (!spans.some(({ concept }) => concept === 'bottled' || concept === 'gave_away')) return null
  const words = wordSet(lexicon.bottles)
  const number = numberSaid(typed, at, new Set())
  const isArticle = (number === null || number.value === 1) && ARTICLE.test(wordAt(typed, at))
  const counted = isArticle ? { value: 1, text: '1', next: at + 1 } : number
  if (counted === null || !Number.isInteger(counted.value) || counted.value < 1) return null
  let next = counted.next
  while (BETWEEN.test(wordAt(typed, next)) || (next > counted.next && words.has(wordAt(typed, next)))) next++
  const isOf = OF.has(wordAt(typed, next - 1)) && next > counted.next
  const isJoined = JOINS.test(wordAt(typed, at - 1))
  const isLarge =
    next > counted.next && LARGE.test(wordAt(typed, next - 1)) && Number(wordAt(typed, next)) >= LEAST_BARE_ML
  const size = sizeAt(around, next, isOf || isLarge || (isArticle && isJoined))
  if (size === null && spans.some(({ concept }) => concept === 'bottled')) return countedAt(around, at)
  if (size === null || size.ml < SIZE.least || size.ml > SIZE.most) return null
  // `A litre of it in bottles` is how much there was.
  const end = words.has(wordAt(typed, size.next)) || PIECE.test(wordAt(typed, size.next)) ? size.next + 1 : size.next
  if (isArticle && !isJoined && end === size.next) return null
  return bit('bottles', at, end, counted.value * size.ml, `${counted.text} x ${size.text}`, { count: counted.value })
}

const FILLS = /^(?:in|into|as)$/

/** `Got the lemon in four 500s`: so many of a bare size are bottles that a jar went into, whatever verb tells it. */
export function filledInto(spans: readonly ConceptSpan[], typed: TypedText, jars: readonly TalkJar[]) {
  const isLiquid = jars.some(({ stage }) => stage === 'strained' || stage === 'sweetened')
  if (!isLiquid || spans.some(({ concept }) => concept === 'bottled' || concept === 'asking')) return spans
  const at = typed.tokens.findIndex(({ text }, place) => {
    const count = FILLS.test(text) ? numberSaid(typed, place + 1, new Set()) : null
    const size = count === null || count.value > MOST_FILLED ? null : numberSaid(typed, count.next, new Set())
    return size !== null && size.value >= SIZE.least && wordAt(typed, size.next) === 's'
  })
  return at === -1 ? spans : [...spans, { concept: 'bottled' as const, from: at, to: at + 1 }]
}
