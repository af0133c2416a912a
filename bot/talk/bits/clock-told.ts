import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import type { Around } from './amount-bits.ts'
import { type Bit, bit } from './bit.ts'

const AT = /^(?:at|around|about|by|alle|verso|ore)$/
const HOURS =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|una|due|tre|quattro|cinque|sei|sette|otto|nove|dieci|undici|dodici)$/
const PART = /^(?:am|pm|oclock|morning|afternoon|evening|night|lunchtime|mattina|mattino|pomeriggio|sera|notte)$/
const BEFORE_PART = /^(?:in|at|the|this|that|yesterday|di|del|della|questa|questo)$/
const MERIDIEM = /^(?:am|pm|oclock)$/
const DAY = /^(?:today|yesterday|tonight|morning|afternoon|evening|oggi|ieri|stamattina|stasera)$/
const HALF = /^(?:half|quarter|mezza|mezzo)$/
const PAST = /^(?:past|to|e)$/

/** No infusion is so weak, % vol. */
const MOST_HOUR = 12

/** What is begun is told with strengths, so that its hour has to be said as one: `at 4am`. */
const isDeed = ({ concept }: ConceptSpan): boolean => DEEDS.has(concept) && concept !== 'started'

const isHourWord = (word: string): boolean => HOURS.test(word) || (/^\d{1,2}$/.test(word) && Number(word) <= 24)

/** Where the words for the part of the day end that begin at a piece; the piece itself where there are none. */
function endOfPart(typed: TypedText, at: number): number {
  let next = at
  while (BEFORE_PART.test(wordAt(typed, next)) && next < at + 2) next++
  return PART.test(wordAt(typed, next)) ? next + 1 : at
}

/** `Shook it at 3 this afternoon`, `strained yesterday at 5`, `alle 15`: an hour of a deed, of which only the day is kept; null where none begins. */
export function clockTold({ typed, spans }: Around, at: number): Bit | null {
  const isBegun = !spans.some(isDeed)
  if (isBegun && !spans.some(({ concept }) => concept === 'started')) return null
  const { tokens } = typed
  const from = AT.test(wordAt(typed, at)) ? at + 1 : at
  const isHalf =
    HALF.test(wordAt(typed, from)) && PAST.test(wordAt(typed, from + 1)) && isHourWord(wordAt(typed, from + 2))
  const hourAt = isHalf ? from + 2 : from
  if (!isHourWord(wordAt(typed, hourAt)) && !/^\d{1,2}[.]\d{2}$/.test(wordAt(typed, hourAt))) return null
  const isShown =
    tokens[hourAt + 1]?.text === ':' &&
    tokens[hourAt + 1]!.to === tokens[hourAt + 2]?.from &&
    /^\d{2}$/.test(wordAt(typed, hourAt + 2))
  const next = isShown ? hourAt + 3 : hourAt + 1
  const end = endOfPart(typed, next)
  if (isBegun && !MERIDIEM.test(wordAt(typed, next))) return null
  const isEnd =
    end === tokens.length || /^(?:[,.;!?)]|and|e|then|poi|with|got|today|yesterday)$/.test(wordAt(typed, end))
  const isAfterAt = from > at
  // `Strained at 87`, `at 20, 650 ml`: how strong.
  const isItalianHour = wordAt(typed, at) === 'alle'
  // `Gave the lemons a rattle` gives no mark.
  const isMark = spans.some(
    ({ concept, from, to }) =>
      concept === 'tasted' && !spans.some((other) => isDeed(other) && other.from <= from && other.to > to),
  )
  const isNoStrength = !isMark && (Number(wordAt(typed, hourAt)) <= MOST_HOUR || HOURS.test(wordAt(typed, hourAt)))
  const isTold = isHalf || isShown || end > next || isItalianHour || DAY.test(wordAt(typed, at - 1)) || isNoStrength
  if (!(isAfterAt || isShown || MERIDIEM.test(wordAt(typed, next)) || isHalf) || !isTold || !isEnd) return null
  return bit(
    'span',
    at,
    end,
    0,
    tokens
      .slice(at, end)
      .map(({ text }) => text)
      .join(' '),
  )
}
