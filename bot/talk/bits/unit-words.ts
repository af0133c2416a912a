import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { anyUnitAt } from '../../../core/quantity/read/unit-at.ts'
import { measureSaid } from '../../../core/quantity/said/measure-said.ts'
import { moreAt } from '../../../core/quantity/said/more-said.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { calledBottleMl } from '../../../core/quantity/us-bottles.ts'
import type { Lexicon } from '../lexicon/lexicon.ts'
import { type Bit, bit } from './bit.ts'
import { thingAt } from './things.ts'

const NONE: ReadonlySet<string> = new Set()

const UNIT_ALONE = /^(?:litre|liter|litro|kilo|chilo|pint|quart|gallon|pound|cup|tazza)$/
const PER = /^(?:per|al|the|each|every|a|an|un|una|one|this|that|this|to|half|mezzo|\d.*)$/

/** `litre of 95`: one is meant, where no number and no article stands before it. */
export function unitAlone(typed: TypedText, at: number): Bit | null {
  const word = wordAt(typed, at)
  const unit = UNIT_ALONE.test(word) && !PER.test(wordAt(typed, at - 1)) ? anyUnitAt(typed, at)?.unit : undefined
  if (unit === undefined) return null
  const more = moreAt(typed, at + 1)
  const next = more?.next ?? at + 1
  if (more === null && !/^(?:of|ae|di)$/.test(wordAt(typed, next))) return null
  const count = 1 + (more?.share ?? 0)
  return bit(unit.kind === 'mass' ? 'mass' : 'volume', at, next, count * unit.factor, `${count} ${word}`)
}

/** `a fifth of rum`, `2 handles of vodka`; null where no such bottle stands there. */
export function calledAt(typed: TypedText, lexicon: Lexicon, at: number): Bit | null {
  const article = /^(?:a|one)$/.test(wordAt(typed, at)) ? { value: 1, next: at + 1 } : null
  // `Handle of rum`, after nothing that counts it.
  const isBare = calledBottleMl(wordAt(typed, at)) !== null && typed.tokens[at - 1]?.kind !== 'number'
  const count = article ?? (isBare ? { value: 1, next: at } : numberSaid(typed, at, NONE))
  const each = count === null ? null : calledBottleMl(wordAt(typed, count.next))
  if (count === null || each === null) return null
  const next = count.next + 1
  const from = wordAt(typed, next) === 'of' ? next + 1 : next
  const isOfSpirit = [0, 1, 2].some((more) => thingAt(typed.tokens, from + more, lexicon)?.kind === 'spirit')
  const ml = count.value * each
  const name = wordAt(typed, count.next).replace(/s$/, '')
  // `Brandy, a fifth`, `a fifth of 151`.
  const isBehind =
    next === from &&
    /^(?:[,.;)]|and|plus|)$/.test(wordAt(typed, next)) &&
    typed.tokens.some((_, place) => place < at && thingAt(typed.tokens, place, lexicon)?.kind === 'spirit')
  const isProof = /^(?:1\d\d|80|90)$/.test(wordAt(typed, from)) && next < from
  // `How many lemons for a handle?`
  const isFor = /^(?:for|in|into|per|with)$/.test(wordAt(typed, at - 1)) && /^(?:[?.!,;]|)$/.test(wordAt(typed, next))
  return isOfSpirit ||
    isBehind ||
    (next === from && isMadeOf(typed, at, next)) ||
    isProof ||
    (isFor && next === from && HOW_MANY.test(typed.text)) ||
    isLabelled(typed, lexicon, at, next)
    ? bit('volume', at, next, ml, `${count.value} ${name}${count.value > 1 ? 's' : ''}`)
    : null
}

/** `A fifth at 80 proof`, `80 proof fifth`, `80 proof vodka, one fifth`: what only a bottle has beside it. */
function isLabelled(typed: TypedText, lexicon: Lexicon, at: number, next: number): boolean {
  const from = /^(?:of|at|,|\(|-)$/.test(wordAt(typed, next)) ? next + 1 : next
  if (measureSaid(typed, from, NONE)?.kind === 'strength') return true
  const words = [1, 2, 3].map((back) => wordAt(typed, at - back))
  const isEnd = isNextLine(typed, next) || /^(?:[,;.):]|and|plus|with|of)$/.test(wordAt(typed, next))
  if (!isEnd) return false
  return isStrengthBefore(words) || (isNextLine(typed, next) && isSpiritOfLine(typed, lexicon, at))
}

/** `80 proof`, `40 %`, `80 proof vodka`, `80 proof (`: read backwards. */
const isStrengthBefore = (words: readonly string[]): boolean => {
  const [unit = '', number = ''] = /^[-(,]$/.test(words[0] ?? '') ? words.slice(1) : words
  return /^(?:proof|%|abv)$/.test(unit) && (/^\d+(?:[.,]\d+)?$/.test(number) || number === '-')
}

/** Whether the token at a place begins a line. */
const isNextLine = (typed: TypedText, at: number): boolean => {
  const [before, token] = [typed.tokens[at - 1], typed.tokens[at]]
  return token === undefined || (before !== undefined && typed.text.slice(before.to, token.from).includes('\n'))
}

/** A drink in the line that ends here: `80 proof vodka, one fifth`. */
function isSpiritOfLine(typed: TypedText, lexicon: Lexicon, at: number): boolean {
  for (let place = at - 1; place >= 0; place--) {
    if (thingAt(typed.tokens, place, lexicon)?.kind === 'spirit') return true
    if (isNextLine(typed, place)) return false
  }
  return false
}

const ENDS = /^(?:[?.!,;]|instead|then|please|now|)$/

/** `Make it a handle`, `a fifth instead`: what was said before is changed to it; `a fifth sweeter` is a share. */
function isMadeOf(typed: TypedText, at: number, next: number): boolean {
  const [before, verb] = [wordAt(typed, at - 1), wordAt(typed, at - 2)]
  if (!ENDS.test(wordAt(typed, next))) return false
  return (
    wordAt(typed, next) === 'instead' ||
    (/^(?:it|that|this)$/.test(before) && /^(?:make|making|call)$/.test(verb)) ||
    (before === 'to' && /^(?:swap|switch|change|go)$/.test(verb)) ||
    /^(?:with|use|using|do|get|grab|got)$/.test(before)
  )
}

/** Bottles of spirit as they are called in Canada by their old size in ounces, ml; from memory. */
const OUNCERS: ReadonlyMap<number, number> = new Map([
  [13, 375],
  [26, 750],
  [40, 1140],
  [60, 1750],
  [66, 1750],
])

/** `a forty ouncer of vodka`, `a 26er of gin`; null where no such bottle stands there. */
export function ouncerAt(typed: TypedText, at: number): Bit | null {
  const from = /^(?:a|one)$/.test(wordAt(typed, at)) ? at + 1 : at
  const size = numberSaid(typed, from, NONE)
  const ml = size === null ? undefined : OUNCERS.get(size.value)
  if (size === null || ml === undefined) return null
  const word = wordAt(typed, size.next) === '-' ? size.next + 1 : size.next
  const said = typed.tokens[word]
  // Of a word that no lexicon has another one is made.
  const asTyped = said === undefined ? '' : typed.text.slice(said.from, said.to).toLowerCase()
  if (!/^(?:ouncers?|pounders?|ers?)$/.test(asTyped)) return null
  return bit('volume', at, word + 1, ml, `${ml} ml`)
}

/** Plants are asked for by it; `how many quarts in a handle` is a measure by another. */
const HOW_MANY =
  /\bhow (?:many|much)\b(?! (?:quarts?|cups?|pints?|ml|liters?|litres?|(?:fluid |fl )?(?:ounces|oz)|shots?|drinks?|gallons?|fifths?|handles?|bottles?)\b(?! of\b))/i

/** Pounds to the stone, the weight: UK Weights and Measures Act 1985, Schedule 1. */
const STONE_LB = 14
const LB_G = 453.59237

/** `two stone of plums`, `half a stone of pears`: a weight, where it is counted and of something. */
export function stoneAt(typed: TypedText, at: number): Bit | null {
  const isHalf = wordAt(typed, at) === 'half' && wordAt(typed, at + 1) === 'a'
  const count = isHalf ? { value: 0.5, next: at + 2 } : numberSaid(typed, at, new Set(['stone']))
  if (count === null || wordAt(typed, count.next) !== 'stone' || wordAt(typed, count.next + 1) !== 'of') return null
  const lb = count.value * STONE_LB
  return bit('mass', at, count.next + 1, lb * LB_G, `${lb} lb`)
}
