import { isDescriptor, plantMisspelt, plantSaid } from '../../../core/botanical/find/plant-said.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { type TypedText, textFrom } from '../../../core/quantity/read/tokens.ts'
import { measureSaid } from '../../../core/quantity/said/measure-said.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { dateSaid } from '../../../core/quantity/time/date-said.ts'
import { type ConceptSpan, wordSet } from '../lexicon/concepts.ts'
import type { Lexicon } from '../lexicon/lexicon.ts'
import type { Bit, TalkJar } from './bit.ts'
import { jarAt } from './jar-at.ts'
import { countable, drinkAt, thingAt } from './things.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'

interface Around {
  readonly typed: TypedText
  readonly lexicon: Lexicon
  readonly spans: readonly ConceptSpan[]
  readonly jars: readonly TalkJar[]
  readonly today: CalendarDay
}

const bit = (kind: Bit['kind'], from: number, to: number, value: number, text: string, more: Partial<Bit> = {}): Bit => ({
  kind,
  value,
  text,
  from,
  to,
  role: null,
  ...more,
})

const wordAt = ({ tokens }: TypedText, at: number): string => tokens[at]?.text ?? ''

const OF = new Set(['of', 'di', 'd', 'da', 'x', 'del', 'della'])
const PER_LITRE = new Set(['per', 'al', 'a', 'each', 'every', 'the', 'to'])
const LITRE = new Set(['litre', 'liter', 'l', 'litro', 'lt'])

/** A bottle where nothing is said of its size, ml: of spirit as it is sold, and as a liqueur is filled. Common practice. */
export const SPIRIT_BOTTLE_ML = 700

/** `6 bottles`, `5 x 500 ml`, `3 bottles of 500`; null where none begin. */
function bottlesAt({ typed, lexicon }: Around, at: number): Bit | null {
  const things = countable(lexicon)
  const words = wordSet(lexicon.bottles)
  const count = numberSaid(typed, at, things)
  if (count === null) return null
  const isTimes = wordAt(typed, count.next) === 'x'
  if (!isTimes && !words.has(wordAt(typed, count.next))) return sizeFirst({ typed, lexicon } as Around, at)
  let next = count.next + 1
  if (isTimes && count.isWord) return null
  const from = OF.has(wordAt(typed, next)) ? next + 1 : next
  const size = measureSaid(typed, from, things)
  if (size !== null && size.kind === 'volume') {
    next = words.has(wordAt(typed, size.next)) ? size.next + 1 : size.next
    const text = `${count.text} x ${size.numberText} ${size.unitText}`
    return bit('bottles', at, next, count.value * size.value, text, { count: count.value })
  }
  const bare = from > next || isTimes ? numberSaid(typed, from, things) : null
  if (bare !== null && !bare.isWord && bare.value >= 50)
    return bit('bottles', at, bare.next, count.value * bare.value, `${count.text} x ${bare.text} ml`, { count: count.value })
  if (isTimes) return null
  const isHalf = count.value === 0.5
  return bit('bottles', at, next, count.value, isHalf ? '1 x 350 ml' : count.text, { count: count.value, isSizeAssumed: true })
}

/** `a 70cl bottle`, `two 500 ml bottles`. */
function sizeFirst({ typed, lexicon }: Around, at: number): Bit | null {
  const words = wordSet(lexicon.bottles)
  const things = countable(lexicon)
  const count = numberSaid(typed, at, things)
  const from = count === null || !count.isWord ? (/^(?:a|an|un|una|my|the)$/.test(wordAt(typed, at)) ? at + 1 : at) : count.next
  const several = count?.isWord === true ? count : null
  const size = measureSaid(typed, from, things)
  if (size === null || size.kind !== 'volume' || !words.has(wordAt(typed, size.next))) return null
  const number = several?.value ?? 1
  return bit('bottles', at, size.next + 1, number * size.value, `${number} x ${size.numberText} ${size.unitText}`, {
    count: number,
  })
}

/** `4/5`, `4 out of 5`, `four stars`. */
function ratingAt({ typed }: Around, at: number): Bit | null {
  const number = numberSaid(typed, at, NONE)
  if (number === null || !Number.isInteger(number.value) || number.value < 1 || number.value > 5) return null
  const words = [0, 1, 2].map((more) => wordAt(typed, number.next + more))
  const of = words[0] === '/' || words[0] === 'su' ? 1 : words[0] === 'out' && words[1] === 'of' ? 2 : words[0] === 'of' ? 1 : 0
  if (of > 0 && /^(?:5|five|cinque)$/.test(words[of] ?? '')) {
    const next = number.next + of + 1
    return bit('rating', at, /^(?:stars?|stelle)$/.test(wordAt(typed, next)) ? next + 1 : next, number.value, number.text)
  }
  if (/^(?:stars?|stelle|stella)$/.test(words[0]!)) return bit('rating', at, number.next + 1, number.value, number.text)
  return null
}

const NONE: ReadonlySet<string> = new Set()

/** An amount with its unit; grams of sugar to a litre are a sweetness. */
function measureAt({ typed, lexicon }: Around, at: number): Bit | null {
  const measure = measureSaid(typed, at, countable(lexicon))
  if (measure === null) return null
  const { kind, value, numberText, unitText, next } = measure
  const text = `${numberText} ${unitText}`.trim()
  if (kind === 'mass') {
    const ofSugar = thingAt(typed.tokens, OF.has(wordAt(typed, next)) ? next + 1 : next, lexicon)
    const from = ofSugar?.kind === 'sugar' ? ofSugar.next : next
    const isPer = PER_LITRE.has(wordAt(typed, from)) || wordAt(typed, from) === '/'
    if (isPer && LITRE.has(wordAt(typed, from + 1))) return bit('sweetness', at, from + 2, value, `${value} g/L`)
  }
  if (kind === 'sweetness') return bit('sweetness', at, next, value, `${Number(value.toPrecision(6))} g/L`)
  if (kind === 'strength') {
    const isDegrees = measure.unit.key === 'degrees'
    return bit('strength', at, next, value, isDegrees || measure.unit.key === 'percent' || measure.unit.key === 'vol' ? `${numberText}%` : text)
  }
  return bit(kind, at, next, value, text)
}

/** Colours, not fruit: `gone a sad orange`. */
const COLOUR_AFTER = /^(?:turned|gone|went|goes|going|is|pale|sad|dull|bright|to|lovely|nice|a|deep|diventato|color|colore)$/
const COLOURS = /^(?:orange|lime|peach|plum|cherry|rose|violet|arancione|rosa|viola|olive)$/

function isColour({ typed, spans }: Around, at: number): boolean {
  if (!COLOURS.test(wordAt(typed, at)) || !COLOUR_AFTER.test(wordAt(typed, at - 1))) return false
  const before = [at - 1, at - 2, at - 3].map((place) => wordAt(typed, place))
  return before.some((word) => /^(?:turned|gone|went|goes|going|diventato|colou?r|colore|from|to|red|green)$/.test(word)) || spans.some(({ concept, to }) => concept === 'pale' && to > at)
}

/** `dried orange peel`: what is said of a plant's form belongs to it, before it and behind it. */
function plantAt(around: Around, at: number): Bit | null {
  const { typed, lexicon } = around
  const { tokens } = typed
  let from = at
  while (isDescriptor(wordAt(typed, from)) && from - at < 2) from++
  const found = plantSaid(tokens, from, wordSet(lexicon.notPlants))
  if (found === null || isColour(around, from)) return null
  // `ginger, dried`, `coffee beans cracked`.
  const behind = wordAt(typed, found.next) === ',' ? found.next + 1 : found.next
  const to = isDescriptor(wordAt(typed, behind)) ? behind + 1 : found.next
  return bit('plant', at, to, 0, textFrom(typed, at, to), { ids: found.ids })
}

/** A plant that is only known by the amount before it, or that has a slip. */
export function misspeltAt({ tokens }: TypedText, at: number): Bit | null {
  const found = plantMisspelt(tokens, at)
  return found === null ? null : bit('plant', at, found.next, 0, tokens.slice(at, found.next).map(({ text }) => text).join(' '), { ids: found.ids })
}

/** Since when it lies there, not when it will: `left the ginger in 2 months`. */
const LIES = /^(?:been|left|leave|leaving|sat|sitting|steeped|steeping|kept|infused|infusing|stood|stewing|lasciat[oaie]|stat[oaie]|tenut[oaie])$/

function dateAt({ typed, today, spans }: Around, at: number): Bit | null {
  const isIn = /^(?:in|tra|fra)$/.test(wordAt(typed, at))
  if (isIn && [1, 2, 3, 4].some((back) => LIES.test(wordAt(typed, at - back)))) return null
  if (/^(?:sat|sun|set|mar|wed|ago|gen|gio|lun|ven|mer|dom|mon|may|march|dec|sett)$/.test(wordAt(typed, at)) && !/^(?:on|until|till|til|by|next|last|this|fino|di)$/.test(wordAt(typed, at - 1))) {
    if (typed.tokens[at + 1]?.kind !== 'number') return null
  }
  if (wordAt(typed, at) === 'the' && /^(?:sun|rest|end|start|beginning|middle|last|next|few)$/.test(wordAt(typed, at + 1)) && !/^(?:end|start|beginning|middle)$/.test(wordAt(typed, at + 1))) return null
  const isPast = spans.some(({ concept }) => PAST.has(concept))
  const found = dateSaid(typed, at, today, isPast ? 'past' : 'after_today')
  return found === null ? null : bit('date', at, found.next, 0, found.text)
}

const PAST = new Set<ConceptSpan['concept']>(['shook', 'strained', 'sweetened', 'filtered', 'bottled', 'tasted', 'opened', 'started', 'added'])

const isGravity = (text: string): boolean => /^(?:0[.,]9|1[.,][01])\d{1,2}$/.test(text)

/** Everything that is an amount or a thing, from left to right, the longest first. */
export function bitsIn(around: Around): readonly Bit[] {
  const { tokens } = around.typed
  const bits: Bit[] = []
  for (let at = 0; at < tokens.length; ) {
    const found = bitAt(around, at)
    if (found !== null) bits.push(found)
    at = found?.to ?? at + 1
  }
  return bits
}

function bitAt(around: Around, at: number): Bit | null {
  const { typed, lexicon, jars } = around
  const { tokens } = typed
  const jar = jarAt(tokens, at, jars)
  if (jar !== null) return bit('jar', at, jar.next, 0, jar.jar.name, { ids: [jar.jar.id] })
  const date = dateAt(around, at)
  const gravity = tokens[at]!.kind === 'number' && isGravity(tokens[at]!.text) ? bit('gravity', at, at + 1, Number(tokens[at]!.text.replace(',', '.')), tokens[at]!.text) : null
  if (date !== null) return date
  const rating = ratingAt(around, at)
  const bottles = bottlesAt(around, at) ?? sizeFirst(around, at)
  if (rating !== null) return rating
  if (bottles !== null) return bottles
  const measure = measureAt(around, at)
  if (measure !== null) return measure
  if (gravity !== null) return gravity
  const number = numberSaid(typed, at, countable(lexicon))
  const isArticle = number !== null && number.isWord && number.value === 1 && number.next === at + 1
  if (number !== null && !(isArticle && !wordSet(lexicon.loose).has(tokens[number.next]?.text ?? ''))) {
    return bit('bare', at, number.next, number.value, number.text)
  }
  const plant = plantAt(around, at)
  const drink = drinkAt(tokens, at, lexicon)
  if (drink !== null && drink.next >= (plant?.to ?? 0)) {
    const ids = plantSaid(saidText(drink.plant).tokens, 0, NONE)?.ids ?? []
    return bit('plant', at, drink.next, 0, drink.plant, { ids })
  }
  const thing = thingAt(tokens, at, lexicon)
  if (thing !== null && thing.next >= (plant?.to ?? 0)) {
    return bit(thing.kind, at, thing.next, thing.abvPercent, textFrom(typed, at, thing.next))
  }
  return plant
}
