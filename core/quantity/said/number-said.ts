import { unlessRefused } from '../../domain-error.ts'
import { readNumber } from '../read/read-number.ts'
import { type Token, type TypedText, textFrom, wordAt } from '../read/tokens.ts'
import { anyUnitAt } from '../read/unit-at.ts'
import { moreAt, roundly } from './more-said.ts'
import { ARTICLES, numberInWords } from './number-in-words.ts'
import { HUNDREDS, joinedItalian, TENS, UNITS } from './number-words.ts'

/** A number in a sentence, in figures or in words. */
export interface NumberSaid {
  readonly value: number
  /** As an option takes it: the figures as typed, what was said in words in figures. */
  readonly text: string
  readonly next: number
  readonly isWord: boolean
}

const HALVES = new Set(['half', 'mezzo', 'mezza'])
const DOZENS = new Set(['dozen', 'dozens', 'doz', 'dozzina', 'dozzine'])
/** `Una ventina di foglie`: so many, or nearly. */
const ABOUT_SO_MANY: ReadonlyMap<string, number> = new Map([
  ...[
    'decina',
    'ventina',
    'trentina',
    'quarantina',
    'cinquantina',
    'sessantina',
    'settantina',
    'ottantina',
    'novantina',
  ].map((word, at) => [word, (at + 1) * 10] as const),
  ['quindicina', 15],
  ['centinaio', 100],
])
const COUPLES = new Set(['couple', 'pair', 'paio'])
const OF = new Set(['of', 'di'])

const AT = new Set(['at', 'al', 'a', 'ad', '@'])

/** Of `at 35 180 g/l` the first is a strength: nothing is of 35 180. */
function strengthAlone(typed: TypedText, at: number, next: number): NumberSaid | null {
  const text = wordAt(typed, at)
  const isGrouped = next === at + 2 && /^\d{2}$/.test(text) && /^\d{3}$/.test(wordAt(typed, at + 1))
  return isGrouped && AT.has(wordAt(typed, at - 1)) ? { value: Number(text), text, next: at + 1, isWord: false } : null
}

const BOTTLES = /^(?:bottles?|btls?|bottigli[ae]|minis?|miniatures?|flasks?|jars?|vas[io]|boccett[ae])$/

/** Of `4 750 ml bottles` the first counts them: no bottle holds 4 750 ml. */
function countAlone(typed: TypedText, at: number, next: number): NumberSaid | null {
  const text = wordAt(typed, at)
  const isGrouped = next === at + 2 && /^[1-9]\d?$/.test(text) && /^\d{3}$/.test(wordAt(typed, at + 1))
  const isSize = isGrouped && /^(?:ml|millilit(?:re|er)s?)$/.test(wordAt(typed, next))
  return isSize && BOTTLES.test(wordAt(typed, next + 1))
    ? { value: Number(text), text, next: at + 1, isWord: false }
    : null
}

const FRACTIONS = new Set('½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞')

/** Figures; null where they are none that can be read. */
function figuresAt(typed: TypedText, at: number): NumberSaid | null {
  if (typed.tokens[at]?.kind !== 'number' && !FRACTIONS.has(wordAt(typed, at))) return null
  return unlessRefused(() => {
    const number = readNumber(typed, at)
    const [first] = number?.readings ?? []
    if (number === null || first === undefined) return null
    const alone = strengthAlone(typed, at, number.next) ?? countAlone(typed, at, number.next)
    if (alone !== null) return alone
    return { value: first.value, text: textFrom(typed, at, number.next), next: number.next, isWord: false }
  })
}

const said = (value: number, next: number): NumberSaid => ({ value, text: String(value), next, isWord: true })

/** `twenty five`, `trecento`; null where no number in words begins. */
function wordsAt(typed: TypedText, at: number): NumberSaid | null {
  const found = numberInWords(typed, at)
  return found === null ? null : said(found.value, found.next)
}

/** `a dozen`, `half a dozen`, `two dozen`, `a couple of`; null where none begins. */
function groupAt(typed: TypedText, at: number): NumberSaid | null {
  const isHalf = HALVES.has(wordAt(typed, at))
  const from = isHalf ? at + 1 : at
  const count = ARTICLES.has(wordAt(typed, from))
    ? { value: 1, next: from + 1 }
    : ((isHalf ? null : (figuresAt(typed, from) ?? wordsAt(typed, from))) ?? { value: 1, next: from })
  const group = wordAt(typed, count.next)
  const each = DOZENS.has(group) ? 12 : COUPLES.has(group) && count.next > at ? 2 : (ABOUT_SO_MANY.get(group) ?? null)
  if (each === null) return null
  const next = OF.has(wordAt(typed, count.next + 1)) ? count.next + 2 : count.next + 1
  return said(count.value * each * (isHalf ? 0.5 : 1), next)
}

/** Where a measure may begin behind a part of it: `quarter of a litre`, `quarto di litro`, `half a litre`, `quarter litre`. */
function behindPart(typed: TypedText, at: number): number {
  const from = OF.has(wordAt(typed, at)) || typed.tokens[at]?.text === '-' ? at + 1 : at
  return ARTICLES.has(wordAt(typed, from)) ? from + 1 : from
}

const QUARTERS = new Set(['quarter', 'quarto'])
const THREE_QUARTERS = /^(?:three|tre|3)$/

/** `a third of a cup`, `two thirds cup`, `un terzo di litro`; null where none begin. */
function thirdsAt(typed: TypedText, at: number): NumberSaid | null {
  const word = wordAt(typed, at)
  const count = ARTICLES.has(word) || /^(?:one|1)$/.test(word) ? 1 : /^(?:two|due|2)$/.test(word) ? 2 : null
  const dash = wordAt(typed, at + 1) === '-' ? 2 : 1
  if (count === null || !/^(?:thirds?|terz[oi])$/.test(wordAt(typed, at + dash))) return null
  return said(roundly(count / 3), behindPart(typed, at + dash + 1))
}

/** `half a litre`, `mezzo chilo`, `a quarter of a pint`: only before a unit or one of `things`, for `half of it` is no number. */
function partAt(typed: TypedText, at: number, things: ReadonlySet<string>): NumberSaid | null {
  const thirds = thirdsAt(typed, at)
  if (thirds !== null) return anyUnitAt(typed, thirds.next) === null ? null : thirds
  const isMany = THREE_QUARTERS.test(wordAt(typed, at)) && /^(?:quarters|quarti)$/.test(wordAt(typed, at + 1))
  const from = isMany || (ARTICLES.has(wordAt(typed, at)) && QUARTERS.has(wordAt(typed, at + 1))) ? at + 1 : at
  const word = wordAt(typed, from)
  const share = isMany ? 0.75 : HALVES.has(word) ? 0.5 : QUARTERS.has(word) ? 0.25 : null
  if (share === null) return null
  const next = behindPart(typed, from + 1)
  const isOf = OF.has(wordAt(typed, from + 1))
  const isBefore = anyUnitAt(typed, next) !== null || (share === 0.5 && !isOf && things.has(wordAt(typed, next)))
  return isBefore ? said(share, next) : null
}

const POINTS = new Set(['point', 'virgola'])

/** `point nine`, `one point two`, `zero virgola nove`; null where none begins. */
function pointAt(typed: TypedText, at: number): NumberSaid | null {
  const whole = POINTS.has(wordAt(typed, at)) ? { value: 0, next: at } : wordsAt(typed, at)
  if (whole === null || !POINTS.has(wordAt(typed, whole.next))) return null
  const digits: number[] = []
  for (let next = whole.next + 1; ; next++) {
    const digit = UNITS.get(wordAt(typed, next))
    if (digit === undefined || digit > 9) {
      return digits.length === 0 ? null : said(Number(`${whole.value}.${digits.join('')}`), next)
    }
    digits.push(digit)
  }
}

/** Every word that a number may begin with, but what Italian writes as one. */
const BEGINNINGS: ReadonlySet<string> = new Set([
  ...[ARTICLES, HALVES, QUARTERS, POINTS, DOZENS, FRACTIONS].flatMap((words) => [...words]),
  ...[ABOUT_SO_MANY, UNITS, TENS, HUNDREDS].flatMap((words) => [...words.keys()]),
])

/** Most pieces begin none, and each is asked a dozen times. */
const mayBegin = ({ kind, text }: Token): boolean =>
  kind === 'number' || BEGINNINGS.has(text) || joinedItalian(text) !== null

/**
 * The number that begins at a piece of a sentence: `750`, `1,5`, `ten`, `twenty five`, `a dozen`, `2 and a half`, `point nine`,
 * `mezzo` and `a quarter of a` before a unit, `a` before a unit or one of `things`; null where none does. Never throws.
 */
export function numberSaid(typed: TypedText, at: number, things: ReadonlySet<string>): NumberSaid | null {
  const token = typed.tokens[at]
  if (token === undefined || !mayBegin(token)) return null
  const group = groupAt(typed, at) ?? partAt(typed, at, things) ?? pointAt(typed, at)
  if (group !== null) return group
  const number = figuresAt(typed, at) ?? wordsAt(typed, at)
  if (number !== null) {
    const more = moreAt(typed, number.next)
    // `a 40 e mezzo litro a 20`: half a litre is another amount.
    const isOther = more !== null && number.value >= 10 && anyUnitAt(typed, more.next) !== null
    if (more === null || isOther || !Number.isInteger(number.value)) return number
    // `6 and a quarter litre of gin`: only of what is measured.
    const isMeasured = more.share === 0.5 || anyUnitAt(typed, more.next) !== null
    return isMeasured ? said(roundly(number.value + more.share), more.next) : number
  }
  if (!ARTICLES.has(wordAt(typed, at))) return null
  return anyUnitAt(typed, at + 1) !== null || things.has(wordAt(typed, at + 1)) ? said(1, at + 1) : null
}
