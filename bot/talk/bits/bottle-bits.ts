import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { anyUnitAt } from '../../../core/quantity/read/unit-at.ts'
import { measureSaid } from '../../../core/quantity/said/measure-said.ts'
import { moreAt } from '../../../core/quantity/said/more-said.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { type Around, OF } from './amount-bits.ts'
import { type Bit, bit } from './bit.ts'
import { areJarsOfDrink, type FluidSize, fluidSizeAt } from './fluid-size.ts'
import { countable, thingAt } from './things.ts'

const LARGE =
  /^(?:gift|present|presents|keepsake|favou?r|christmas|xmas|fancy|pretty|wee|small|little|lil|tiny|teeny|dinky|cute|mini|baby|big|large|tall|nice|half|clear|round|square|glass|swingtop|piccol[ae]|grand[ei]|carin[ae]|bell[ae])$/
const EACH = /^(?:each|apiece|ciascuna|l'una)$/
/** What is filled or given away holds no more, ml; common practice, no source. */
export const MOST_BOTTLE_ML = 1500

/** A size of bottles that are counted before it, of nothing else: `, 200 ml each`. */
function isSize(typed: TypedText, at: number, words: ReadonlySet<string>): boolean {
  const size = fluidSizeAt(typed, at, new Set())
  if (size === null || size.ml > MOST_BOTTLE_ML) return false
  const behind = wordAt(typed, size.next)
  return EACH.test(behind) || words.has(behind) || /^(?:[,.;)]|of|di|)$/.test(behind)
}

/** `6 bottles`, `5 x 500 ml`, `3 bottles of 500`; null where none begin. */
export function bottlesAt(around: Around, at: number): Bit | null {
  const { typed, lexicon } = around
  const things = countable(lexicon)
  const words = wordSet(lexicon.bottles)
  const count = numberSaid(typed, at, things)
  if (count === null) return bottleAlone(around, at)
  const litres = litreBottles(around, at)
  if (litres !== null) return litres
  const isTimes = wordAt(typed, count.next) === 'x'
  // `Twelve little bottles`.
  let word = count.next
  while (LARGE.test(wordAt(typed, word))) word++
  if (!isTimes && !words.has(wordAt(typed, word))) return ofThose(around, at) ?? sizeFirst(around, at)
  let next = isTimes ? count.next + 1 : word + 1
  if (isTimes && count.isWord) return null
  // `Six bottles at 350 ml`, `six bottles each 350 ml`.
  const isAt = /^(?:at|each|per)$/.test(wordAt(typed, next)) && fluidSizeAt(typed, next + 1, things) !== null
  if (!isTimes && isAt) next++
  // `Twelve bottles, 200 ml each`, `40 minis, 50 ml`.
  const isSeveral = !isTimes && count.value > 1 && wordAt(typed, next) === ','
  const from = OF.has(wordAt(typed, next)) || (isSeveral && isSize(typed, next + 1, words)) ? next + 1 : next
  const size = fluidSizeAt(typed, from, things)
  if (size !== null) {
    next = words.has(wordAt(typed, size.next)) || EACH.test(wordAt(typed, size.next)) ? size.next + 1 : size.next
    return bit('bottles', at, next, count.value * size.ml, `${count.text} x ${size.text}`, { count: count.value })
  }
  const bare = bareSize(around, from, from > next || isTimes, isSeveral)
  if (bare !== null)
    return bit('bottles', at, bare.next, count.value * bare.ml, `${count.text} x ${bare.text}`, { count: count.value })
  // How much a miniature holds has to be said.
  if (isTimes || /^minis?$/.test(wordAt(typed, word))) return null
  // `A bottle and a half`, `one and a half bottles`.
  const more = Number.isInteger(count.value) ? moreAt(typed, next) : null
  const value = count.value + (more?.share ?? 0)
  const text = Number.isInteger(value) ? count.text : `1 x ${value * around.spiritBottleMl} ml`
  return bit('bottles', at, more?.next ?? next, value, text, {
    count: value,
    isSizeAssumed: true,
    assumedMl: around.spiritBottleMl,
  })
}

/** Sizes that nobody counts in ml, cl: `da 75`; those of a third and a half only where cl are usual. */
const IN_CL = { it: [20, 25, 33, 35, 37, 50, 70, 75], en: [70, 75] } as const

/** `3 bottles of 500`, `bottiglie da 75`, `6 bottles, 500s`: a size without its unit. */
function bareSize(around: Around, from: number, isBeside: boolean, isSeveral: boolean): FluidSize | null {
  const { typed, lexicon } = around
  const comma = !isBeside && isSeveral ? from + 1 : from
  const bare = isBeside || comma > from ? numberSaid(typed, comma, countable(lexicon)) : null
  if (bare === null || bare.isWord || isStrength(around, bare)) return null
  const isPlural = wordAt(typed, bare.next) === 's'
  const next = isPlural ? bare.next + 1 : bare.next
  if (!isBeside && !isPlural) return null
  const isCl = IN_CL[lexicon.id].some((size) => size === bare.value)
  if (isCl) return { text: `${bare.text} cl`, ml: 10 * bare.value, next }
  return bare.value < 50 ? null : { text: `${bare.text} ml`, ml: bare.value, next }
}

/** `A bottle of 100 proof gin`, `a bottle of 151 rum`: what stands on its label is no size. */
const isStrength = ({ typed, lexicon }: Around, { value, next }: { readonly value: number; readonly next: number }) =>
  /^(?:proof|prf|%|percent|gradi|degrees)$/.test(wordAt(typed, next)) ||
  (value <= MOST_PROOF && thingAt(typed.tokens, next, lexicon)?.kind === 'spirit')

/** US proof of neutral spirit, as strong as it is sold. */
const MOST_PROOF = 192

/** `Bottle of gin 41`: one, of a spirit; not `per bottle of gin`. */
function bottleAlone({ typed, lexicon, spiritBottleMl }: Around, at: number): Bit | null {
  if (!/^(?:bottle|btl|bottiglia)$/.test(wordAt(typed, at))) return null
  if (/^(?:per|each|every|any|which|a|ogni|che|quale)$/.test(wordAt(typed, at - 1))) return null
  const isOf = OF.has(wordAt(typed, at + 1))
  const thing = isOf ? thingAt(typed.tokens, at + 2, lexicon) : null
  if (thing?.kind !== 'spirit') return null
  return bit('bottles', at, at + 1, 1, '1', { count: 1, isSizeAssumed: true, assumedMl: spiritBottleMl })
}

/** `four litre bottles`: four of a litre each. */
function litreBottles({ typed, lexicon }: Around, at: number): Bit | null {
  const count = numberSaid(typed, at, countable(lexicon))
  if (count === null || !Number.isInteger(count.value) || count.value < 2) return null
  const isLitre = /^(?:litre|liter)$/.test(wordAt(typed, count.next))
  if (!isLitre || !/^(?:bottles|btls)$/.test(wordAt(typed, count.next + 1))) return null
  const text = `${count.text} x 1 l`
  return bit('bottles', at, count.next + 2, count.value * 1000, text, { count: count.value })
}

/** `Twenty of those little 4 oz bottles`. */
function ofThose({ typed, lexicon }: Around, at: number): Bit | null {
  const things = countable(lexicon)
  const count = numberSaid(typed, at, things)
  if (count === null || !/^(?:of|di)$/.test(wordAt(typed, count.next))) return null
  if (!/^(?:those|these|the|my|our|quell[eai]|queste|mie)$/.test(wordAt(typed, count.next + 1))) return null
  let from = count.next + 2
  while (LARGE.test(wordAt(typed, from))) from++
  const size = fluidSizeAt(typed, from, things)
  if (size === null || !wordSet(lexicon.bottles).has(wordAt(typed, size.next))) return null
  const text = `${count.text} x ${size.text}`
  return bit('bottles', at, size.next + 1, count.value * size.ml, text, { count: count.value })
}

/** `a 70cl bottle`, `two 500 ml bottles`. */
export function sizeFirst({ typed, lexicon }: Around, at: number): Bit | null {
  const words = wordSet(lexicon.bottles)
  // `A litre bottle of gin`.
  const word = /^(?:an?|one|un|una)$/.test(wordAt(typed, at)) ? wordAt(typed, at + 1) : ''
  const unit = /^(?:litre|liter|quart|pint|gallon)$/.test(word) ? anyUnitAt(typed, at + 1)?.unit : undefined
  if (unit !== undefined && words.has(wordAt(typed, at + 2)))
    return bit('bottles', at, at + 3, unit.factor, `1 x 1 ${word}`, { count: 1 })
  const things = countable(lexicon)
  const number = numberSaid(typed, at, things)
  // `Twenty small 100 ml bottles`.
  let behindSize = number?.next ?? at
  while (measureSaid(typed, behindSize, things) === null && LARGE.test(wordAt(typed, behindSize))) behindSize++
  const count = number === null ? null : { ...number, next: behindSize }
  const isCounted = count !== null && measureSaid(typed, count.next, things) !== null
  const from =
    count === null || !(count.isWord || isCounted)
      ? /^(?:a|an|un|una|my|the)$/.test(wordAt(typed, at))
        ? at + 1
        : at
      : count.next
  const several = count !== null && (count.isWord || isCounted) ? count : null
  const size = fluidSizeAt(typed, from, things)
  if (size === null) return null
  const isBottle = words.has(wordAt(typed, size.next))
  // `Three 70cl vodkas`.
  if (several !== null && thingAt(typed.tokens, size.next, lexicon)?.kind === 'spirit') {
    return bit('bottles', at, size.next, several.value * size.ml, `${several.value} x ${size.text}`, {
      count: several.value,
    })
  }
  if (!isBottle && !(several !== null && areJarsOfDrink(typed, lexicon, size.next))) return null
  // `12 oz bottles, four of them`.
  const behind = several === null ? countBehind(typed, size.next + 1) : null
  const bottles = several?.value ?? behind?.value ?? 1
  return bit('bottles', at, behind?.next ?? size.next + 1, bottles * size.ml, `${bottles} x ${size.text}`, {
    count: bottles,
  })
}

/** `, four of them`: how many there are, said behind. */
function countBehind(typed: TypedText, at: number): { readonly value: number; readonly next: number } | null {
  const count = numberSaid(typed, wordAt(typed, at) === ',' ? at + 1 : at, new Set())
  if (count === null || !Number.isInteger(count.value)) return null
  const isOfThem = wordAt(typed, count.next) === 'of' && /^(?:them|those|these|em)$/.test(wordAt(typed, count.next + 1))
  return isOfThem ? { value: count.value, next: count.next + 2 } : null
}
