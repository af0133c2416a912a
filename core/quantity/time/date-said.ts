import { domainErrorOf } from '../../domain-error.ts'
import type { CalendarDay, DateSide } from '../quantities.ts'
import { type TypedText, textFrom } from '../read/tokens.ts'
import { numberSaid } from '../said/number-said.ts'
import { addMonths, daysBetween, isDay, isoDay } from './calendar-day.ts'
import { FEAST_BEGINS, feastDay } from './feasts.ts'
import { dateIn } from './parse-date.ts'
import { isOnSide, MONTH, MONTH_ALONE, partOfMonth, partOfThisMonth } from './part-of-month.ts'

/** A day in a sentence: the text that an option takes for it, and where it ends. */
export interface DateSaid {
  readonly text: string
  readonly next: number
}

const WEEKDAY =
  'mon(?:day)?|tue(?:s|sday)?|wed(?:nesday)?|thu(?:r|rs|rsday)?|fri(?:day)?|sat(?:urday)?|sun(?:day)?|' +
  'lunedi|martedi|mercoledi|giovedi|venerdi|sabato|domenica'

/** Days of a month in words; they are read beside a month only, for `the first` is seldom a day. */
const ORDINALS: ReadonlyMap<string, number> = new Map([
  ...'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'
    .split(' ')
    .map((word, at) => [word, at + 1] as const),
  ['thirtieth', 30],
  ['primo', 1],
])
const TENS: Readonly<Record<string, number>> = { twenty: 20, thirty: 30 }

/** `fourteenth`, `twenty first`: the day of the month, and where it ends; null where none stands there. */
function ordinalAt({ tokens }: TypedText, at: number): { readonly day: number; readonly next: number } | null {
  const word = (place: number): string => tokens[place]?.text ?? ''
  const alone = ORDINALS.get(word(at))
  if (alone !== undefined) return { day: alone, next: at + 1 }
  const dash = word(at + 1) === '-' ? 2 : 1
  const [tens, unit] = [TENS[word(at)], ORDINALS.get(word(at + dash))]
  const day = tens === undefined || unit === undefined || unit > 9 ? 0 : tens + unit
  return day >= 21 && day <= 31 ? { day, next: at + dash + 1 } : null
}

/** Words that a day can begin with; only there a longer look is worth its time. */
const BEGINS = new RegExp(
  `^(?:${MONTH}|${WEEKDAY}|\\d.*|the|a|an|al|tomorow|tommorow|tommorrow|tomorrw|tmrw|tmw|un|una|il|l|in|tra|fra|on|by|last|next|this|scors[oa]|prossim[oa]|quest[oa]|today|tonight|tomorrow|` +
    'yesterday|oggi|stamattina|stasera|stamani|domani|dopodomani|ieri|' +
    `${FEAST_BEGINS}|` +
    'first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|\\p{L}+teenth|twentieth|twenty|thirtieth|thirty|primo|' +
    'early|mid|middle|late|end|beginning|start|meta|inizio|fine|just|two|three|four|five|six|seven|eight|nine|ten|due|tre|quattro|cinque|sei|sette|otto|nove|dieci|couple|few)$',
  'u',
)

/** Whether a day may begin with a word. */
export const isDayWord = (word: string): boolean => BEGINS.test(word)

const SAME_DAY =
  /^(?:today|tonight|this (?:morning|afternoon|evening)|just now|earlier|earlier today|oggi|stamattina|stamani|stasera|questa mattina|questa sera)$/
const DAY_BEFORE = /^(?:yesterday(?: (?:morning|afternoon|evening))?|last night|ieri(?: sera| mattina)?)$/
const DAY_AFTER = /^tomorrow(?: (?:morning|afternoon|evening|night))?$|^domani(?: (?:mattina|sera))?$/

/** The nth of this month, of the next, or of the one before, as the side wants. */
function nth(day: number, today: CalendarDay, side: DateSide): CalendarDay | null {
  const months = side === 'past' ? [0, -1, -2] : [0, 1, 2]
  for (const step of months) {
    const first = addMonths({ ...today, day: 1 }, step)
    const such = { ...first, day }
    const ahead = isDay(such) ? daysBetween(such, today) : Number.NaN
    if (isOnSide(ahead, side)) return such
  }
  return null
}

/** Spans of time whose length nobody counts. */
const VAGUE: readonly (readonly [RegExp, string])[] = [
  [/(?<=^(?:in )?)(?:a )?couple (?:of )?/, '2 '],
  [/(?<=^(?:in )?)(?:a )?few /, '3 '],
  [/(?<=^(?:tra |fra )?)un paio di /, '2 '],
  [/(?<=^(?:in )?)(?:a )?fortnight\b/, '2 weeks'],
]

function dayOf(phrase: string, today: CalendarDay, side: DateSide): string | null {
  const plain = phrase
    .replace(/^(?:on|by|the|il|l|al|for|per) /, '')
    .replace(/^(?:the|il) /, '')
    .replace(/\b(?:tomorow|tommorow|tommorrow|tomorrw|tmrw|tmw)\b/, 'tomorrow')
  if (SAME_DAY.test(plain)) return 'today'
  if (DAY_BEFORE.test(plain)) return 'yesterday'
  if (DAY_AFTER.test(plain)) return 'tomorrow'
  const feast = feastDay(plain, today, side)
  if (feast !== null) return feast
  if (/^(?:(?:the|this|next|last) )?weekend$|^(?:(?:questo |prossimo )?fine settimana)$/.test(plain)) return 'Saturday'
  const part = partOfMonth(plain, today, side) ?? partOfThisMonth(plain, today, side)
  if (part !== null) return part
  const ordinal = /^(\d{1,2}) ?(?:st|nd|rd|th)?$/.exec(plain)
  if (ordinal !== null && /(?:st|nd|rd|th)$|^(?:the|il|l|al) /.test(phrase.replace(/^(?:on|by) /, ''))) {
    const day = nth(Number(ordinal[1]), today, side)
    return day === null ? null : isoDay(day)
  }
  if (/^[\d.,]+$/.test(plain)) return null
  const counted = VAGUE.reduce((text, [pattern, by]) => text.replace(pattern, by), plain)
  const weekday = /^(?:this|last|next)? ?(?:morning|afternoon|evening|night)$/.test(counted) ? '' : counted
  return weekday === '' ? null : parsed(weekday.replace(/ (?:morning|afternoon|evening|night)$/, ''), today, side)
}

function parsed(text: string, today: CalendarDay, side: DateSide): string | null {
  let isDate = false
  const refusal = domainErrorOf(() => {
    isDate = dateIn(text, { today, country: null }, side) !== null
  })
  if (refusal === null) return isDate ? text : null
  return refusal.code === 'ambiguous' || refusal.problem === 'other_weekday' ? text : null
}

const MOST_PIECES = 7

/** Read over by a date, and a word of what comes behind it: `20 November, 950 ml`. */
const ENDS_NO_DAY = /^(?:[,;:]|the|il|lo|la|l|i|gli|le)$/

/**
 * The day whose words begin at a piece of a sentence: `Saturday`, `this morning`, `3 days ago`, `the 7th`, `mid December`, `Natale`,
 * `24/12`; the longest one; null where none does. Never throws.
 */
export function dateSaid(typed: TypedText, at: number, today: CalendarDay, side: DateSide): DateSaid | null {
  const { tokens } = typed
  if (!BEGINS.test(tokens[at]?.text ?? '')) return null
  for (let next = Math.min(tokens.length, at + MOST_PIECES); next > at; next--) {
    const said = tokens.slice(at, next)
    const written = said.map(({ text }) => text)
    if (MONTH_ALONE.test(written.join(' ')) || ENDS_NO_DAY.test(written.at(-1)!)) continue
    // Figures with their slashes stay together.
    const isNumeric = said.every(({ kind, text }) => kind === 'number' || /^[-/.]$/.test(text))
    const phrase = isNumeric ? textFrom(typed, at, next) : written.join(' ')
    if (isNumeric && !/[-/]/.test(phrase)) continue
    const counted = isNumeric ? phrase : inFigures(typed, at, next)
    const text = dayOf(counted, today, side)
    if (text !== null) return { text, next }
  }
  return null
}

/** `two weeks ago` with its number in figures. */
function inFigures(typed: TypedText, from: number, to: number): string {
  const words: string[] = []
  const hasMonth = typed.tokens.slice(from, to).some(({ text }) => MONTH_ALONE.test(text))
  for (let at = from; at < to; ) {
    const ordinal = hasMonth ? ordinalAt(typed, at) : null
    if (ordinal !== null && ordinal.next <= to) {
      words.push(String(ordinal.day))
      at = ordinal.next
      continue
    }
    const number = numberSaid(typed, at, NONE)
    if (number !== null && number.next <= to && !/^(?:a|an|un|una|uno)$/.test(typed.tokens[at]!.text)) {
      words.push(number.text)
      at = number.next
    } else words.push(typed.tokens[at++]!.text)
  }
  return words.join(' ').replace(/(?<=\d) (?=(?:st|nd|rd|th)\b)/, '')
}

const NONE: ReadonlySet<string> = new Set()
