import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { mendedFrom, wordAt } from '../../../core/quantity/read/tokens.ts'
import { anyUnitAt } from '../../../core/quantity/read/unit-at.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import { dateSaid } from '../../../core/quantity/time/date-said.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { aboutSoLong } from './about-so-long.ts'
import { type Around, isGravity, measureAt, NONE, ratingAt, sweetnessPerLitre } from './amount-bits.ts'
import { isBirthday } from './birthday.ts'
import { type Bit, bit } from './bit.ts'
import { bottlesAt, sizeFirst } from './bottle-bits.ts'
import { clockTold } from './clock-told.ts'
import { coinAt } from './coin-at.ts'
import { customaryBottlesAt } from './customary-bottles.ts'
import { drinksNamed } from './drinks-named.ts'
import { filledAt } from './filled-bottles.ts'
import { jarAt } from './jar-at.ts'
import { withPiece } from './lifted-out.ts'
import { monthMeant } from './month-meant.ts'
import { plantAt } from './plant-bits.ts'
import { smallPieceAt } from './small-pieces.ts'
import { countable, drinkAt, thingAt } from './things.ts'
import { calledAt, ouncerAt } from './unit-words.ts'

/** Since when it lies there, not when it will: `left the ginger in 2 months`. */
const LIES =
  /^(?:been|left|leave|leaving|sat|sitting|steeped|steeping|kept|infused|infusing|stood|stewing|lasciat[oaie]|stat[oaie]|tenut[oaie])$/

const MEASURES = /^(?:ml|cl|dl|l|oz|litres?|litri)$/

function dateAt(around: Around, at: number): Bit | null {
  const { typed, today, spans, lexicon } = around
  const { tokens } = typed
  const isIn = /^(?:in|tra|fra)$/.test(wordAt(typed, at))
  if (isIn && [1, 2, 3, 4].some((back) => LIES.test(wordAt(typed, at - back)))) return null
  if (
    /^(?:sat|sun|set|mar|wed|ago|gen|gio|lun|ven|mer|dom|mon|may|march|dec|sett)$/.test(wordAt(typed, at)) &&
    !/^(?:on|until|till|til|by|next|last|this|fino|di)$/.test(wordAt(typed, at - 1))
  ) {
    if (typed.tokens[at + 1]?.kind !== 'number') return null
  }
  if (
    wordAt(typed, at) === 'the' &&
    /^(?:sun|rest|end|start|beginning|middle|last|next|few|one)$/.test(wordAt(typed, at + 1)) &&
    !/^(?:end|start|beginning|middle)$/.test(wordAt(typed, at + 1))
  )
    return null
  if (isBirthday(typed, at)) return null
  const isPast = spans.some(({ concept }) => DEEDS.has(concept))
  // `3/4 cup` is no day in April.
  const isFraction = tokens[at]?.kind === 'number' && tokens[at + 1]?.text === '/' && anyUnitAt(typed, at + 3) !== null
  if (isFraction) return null
  const month = isPast ? null : monthMeant(typed, at, spans)
  if (month !== null) return bit('date', at, at + 1, 0, month)
  const found = dateSaid(typed, at, today, isPast ? 'past' : 'after_today')
  // `Limone al 30%`: how strong, no day of the month.
  if (found === null || /^(?:%|percent|gradi|vol|abv)$/.test(wordAt(typed, found.next))) return null
  if (found.next === at + 2 && isStrengthOf(around, at)) return null
  // `The 20cl`: the size of a bottle. `The ten bottles` are counted.
  const behind = wordAt(typed, found.next)
  const isCount = wordSet(lexicon.bottles).has(behind) || /^(?:jars|vasi|barattoli)$/.test(behind)
  const isNumber = numberSaid(typed, found.next - 1, countable(lexicon))?.next === found.next
  if (isNumber && (isCount || MEASURES.test(behind))) return null
  // The full stop behind `on Saturday.` is no part of the day.
  return bit('date', at, found.next, 0, found.text.replace(/ \.$/, ''))
}

/** `2 litri al 25`, `un bicchiere al 90`, `arrivare al 30`: how strong a liquid is or is to be, no day of the month. */
function isStrengthOf({ typed, lexicon }: Around, at: number): boolean {
  if (lexicon.id !== 'it' || !/^(?:al|a)$/.test(wordAt(typed, at))) return false
  return VESSEL.test(wordAt(typed, at - 1)) && typed.tokens[at + 1]?.kind === 'number'
}

const VESSEL = /^(?:ml|cl|dl|l|lt|litr[oi]|bicchier[ei]|arriv(?:are|arci|o)|port(?:are|arl[oa]|o)|scendere|salire)$/

const MOST_READINGS = 6
const READINGS = /^(?:readings?|instruments|measurements|letture|strumenti|misurazioni)$/

/** Everything that is an amount or a thing, from left to right, the longest first. */
export function bitsIn(around: Around): readonly Bit[] {
  const { tokens } = around.typed
  const bits: Bit[] = []
  for (let at = 0; at < tokens.length; ) {
    const found = bitAt(around, at)
    if (found !== null)
      if (isHowCold(around, found))
        bits.push({ ...found, kind: 'temperature', text: `-${/[\d.,]+/.exec(found.text)?.[0] ?? found.text} C` })
      else bits.push(isBelowNothing(around, found) ? { ...found, kind: 'negative', text: `-${found.text}` } : found)
    at = found?.to ?? at + 1
  }
  return drinksNamed(around, withPiece(tokens, bits, around.jars))
}

const AMOUNTS = new Set<Bit['kind']>(['volume', 'mass', 'strength', 'sweetness', 'bottles', 'bare'])

/** `Freeze at -18`: how cold it is, never an amount. */
function isHowCold({ typed, spans }: Around, { kind, from }: Bit): boolean {
  const isMinus = /^(?:[-−–]|minus|meno)$/.test(typed.tokens[from - 1]?.text ?? '')
  return kind === 'bare' && isMinus && spans.some(({ concept }) => concept === 'freezes' || concept === 'freezer_at')
}

/** `-5%`, of which nothing can be made; not `4-6`, nor how cold it is. */
function isBelowNothing({ typed, spans }: Around, { kind, from }: Bit): boolean {
  const [sign, before] = [typed.tokens[from - 1], typed.tokens[from - 2]]
  if (!AMOUNTS.has(kind) || (sign?.text !== '-' && sign?.text !== '−')) return false
  if (kind === 'bare' && spans.some(({ concept }) => concept === 'freezes' || concept === 'freezer_at')) return false
  return sign.to === typed.tokens[from]!.from && (before === undefined || before.to < sign.from || before.text === ':')
}

/** `4/5`: a mark, where nothing tells of a day. */
function isMark({ typed, spans }: Around, at: number): boolean {
  if (spans.some(({ concept }) => concept === 'tasted')) return true
  const isOfDay = /^(?:on|by|until|till|since|from|the|before|entro|dal|al|il|per|fino)$/.test(wordAt(typed, at - 1))
  return !isOfDay && !spans.some(({ concept }) => DEEDS.has(concept) && concept !== 'opened')
}

/** `One big pineapple`. */
const isLarge = (word: string): boolean => /^(?:big|large|small|little|nice|whole|fat|ripe|medium|huge)$/.test(word)

function bitAt(around: Around, at: number): Bit | null {
  const { typed, lexicon, jars } = around
  const { tokens } = typed
  const jar = jarAt(tokens, at, jars)
  if (jar !== null) return bit('jar', at, jar.next, 0, jar.jar.name, { ids: [jar.jar.id] })
  const clock = clockTold(around, at)
  if (clock !== null) return clock
  const soLong = aboutSoLong(typed, at)
  if (soLong !== null) return soLong
  const date = dateAt(around, at)
  const gravity =
    tokens[at]!.kind === 'number' && isGravity(tokens[at]!.text)
      ? bit('gravity', at, at + 1, Number(tokens[at]!.text.replace(',', '.')), tokens[at]!.text)
      : null
  const rating = ratingAt(around, at)
  if (rating !== null && isMark(around, at)) return rating
  if (date !== null) return date
  const bottles =
    customaryBottlesAt(around, at) ??
    ouncerAt(typed, at) ??
    calledAt(typed, lexicon, at) ??
    filledAt(around, at) ??
    bottlesAt(around, at) ??
    sizeFirst(around, at)
  if (rating !== null) return rating
  if (bottles !== null) return bottles
  const smallPiece = smallPieceAt(around, at)
  if (smallPiece !== null) return smallPiece
  const coin = coinAt(typed, at)
  if (coin !== null) return coin
  const measure = measureAt(around, at)
  if (measure !== null) return measure
  if (gravity !== null) return gravity
  // `Due` is no two where English is spoken.
  const isDue = lexicon.id === 'en' && wordAt(typed, at) === 'due'
  const number = isDue ? null : numberSaid(typed, at, countable(lexicon))
  // `The cherry one 3 weeks back`: the jar, no number.
  const isOne = tokens[at]!.text === 'one' && tokens[at + 1]?.kind === 'number' && tokens[at - 1]?.kind !== 'word'
  // `Together in one jar`, `started one jar, 20 limes …`.
  const isBegun = around.spans.some(({ concept }) => concept === 'started' || concept === 'log_start')
  const isWithin =
    (isBegun || /^(?:in|into)$/.test(wordAt(typed, at - 1))) &&
    /^(?:jar|batch|kilner|vaso|barattolo)$/.test(wordAt(typed, at + 1))
  // `One orange` is counted, `the lemon one` is not.
  const isCounted =
    tokens[at]!.text === 'one' && plantAt(around, isLarge(wordAt(typed, at + 1)) ? at + 2 : at + 1) !== null
  const isArticle = number?.isWord && number.value === 1 && number.next === at + 1 && !isOne && !isCounted
  if (
    number !== null &&
    !(isArticle && isWithin) &&
    !(isArticle && !wordSet(lexicon.loose).has(tokens[number.next]?.text ?? ''))
  ) {
    // `Two readings`, `tre letture`: how many there are is heard from each of them.
    if (number.value <= MOST_READINGS && READINGS.test(tokens[number.next]?.text ?? ''))
      return bit('bare', at, number.next + 1, number.value, number.text, { role: 'gone' })
    // `Her 60th`.
    if (/^(?:st|nd|rd|th)$/.test(tokens[number.next]?.text ?? ''))
      return bit('bare', at, number.next + 1, number.value, number.text, { role: 'gone' })
    return sweetnessPerLitre(around, at, number) ?? bit('bare', at, number.next, number.value, number.text)
  }
  const plant = plantAt(around, at)
  const drink = drinkAt(tokens, at, lexicon)
  if (drink !== null && drink.next >= (plant?.to ?? 0)) {
    const ids = plantSaid(saidText(drink.plant).tokens, 0, NONE)?.ids ?? []
    return bit('plant', at, drink.next, 0, drink.plant, { ids, spirit: drink.spirit })
  }
  const thing = thingAt(tokens, at, lexicon)
  if (thing !== null && thing.next >= (plant?.to ?? 0)) {
    return bit(thing.kind, at, thing.next, thing.abvPercent, mendedFrom(typed, at, thing.next))
  }
  return plant
}
