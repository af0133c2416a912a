import { bit, type Sentence } from '../bits/bit.ts'
import { AT_HOUR } from './half-of-day.ts'
import type { Fill, SlotFilled } from './plant-slots.ts'

const HOURS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ')
const ORE = 'una due tre quattro cinque sei sette otto nove dieci undici dodici'.split(' ')
const HOUR = `${HOURS.join('|')}|\\d{1,2}`

const MINUTES: Readonly<Record<string, number>> = { half: 30, quarter: 15, five: 5, ten: 10, twenty: 20 }

/** `half seven` is half an hour past it, as it is said in Britain. */
const IN_WORDS = new RegExp(
  `\\b(half|quarter|five|ten|twenty(?:[ -]five)?|(?<=\\bat )\\d{1,2}) (?:minutes? )?(past|to) (${HOUR})\\b(.*)`,
  'i',
)
const HALF = new RegExp(`\\b(half) (${HOUR})\\b(.*)`, 'i')
const WHOLE = new RegExp(`\\b${AT_HOUR} (${HOURS.join('|')}|${ORE.join('|')})\\b( e mezza)?(.*)`, 'i')

const hourOf = (word: string): number => {
  const at = Math.max(HOURS.indexOf(word.toLowerCase()), ORE.indexOf(word.toLowerCase()))
  return at === -1 ? Number(word) : at + 1
}

/** Night is the end of the day and the beginning of the next: `at twelve at night` is midnight. */
const FIRST_OF_NIGHT = 6

/** Which half of the day an hour of 1 to 12 is said to be in; null where it is not said. */
function halfOfDay(hour: number, said: string): 'am' | 'pm' | null {
  if (/\b(?:pm|evening|afternoon|sera|pomeriggio)\b/i.test(said)) return 'pm'
  if (/\b(?:night|notte)\b/i.test(said)) return hour === 12 || hour < FIRST_OF_NIGHT ? 'am' : 'pm'
  return /^\s*am\b|\b(?:morning|mattin[oa])\b/i.test(said) ? 'am' : null
}

const written = (hour: number, minutes: number, rest: string, text: string): string => {
  // `Every evening at half seven`.
  const half = halfOfDay(hour, rest) ?? halfOfDay(hour, text)
  const before = half === 'pm' && hour < 12 ? hour + 12 : half === 'am' && hour === 12 ? 0 : hour
  const all = (before * 60 + minutes + 24 * 60) % (24 * 60)
  return `${String(Math.floor(all / 60)).padStart(2, '0')}:${String(all % 60).padStart(2, '0')}`
}

/** `half past eight`, `half seven in the evening`, `alle sette e mezza`, as a clock shows it; null where none is said. */
function clockInWords(text: string): string | null {
  const [, part, side, hour, rest = ''] = IN_WORDS.exec(text) ?? []
  if (part !== undefined && hour !== undefined) {
    const minutes = part
      .toLowerCase()
      .split(/[ -]/)
      .reduce((sum, word) => sum + (MINUTES[word] ?? Number(word)), 0)
    return written(hourOf(hour), side?.toLowerCase() === 'to' ? -minutes : minutes, rest, text)
  }
  const [, , past, later = ''] = HALF.exec(text) ?? []
  if (past !== undefined) return written(hourOf(past), 30, later, text)
  const [, whole, half, more = ''] = WHOLE.exec(text) ?? []
  return whole === undefined ? null : written(hourOf(whole), half === undefined ? 0 : 30, more, text)
}

/** `Remind me 7.30am`, `reminders 19:30`: an hour by its own look. */
export const BARE_CLOCK =
  /(?<![\d.:])(?:1[0-2]|0?[1-9])(?:[:.][0-5]\d)?\s?(?:am|pm)\b|(?<![\d.:])(?:[01]?\d|2[0-3]):[0-5]\d(?![\d:])/i

/** `Move my reminder to 7 in the evening`. */
const MOVED =
  /\b(?:to|for|by|around|about|verso le|per le)\s+(1[0-2]|[1-9])\s+(in the (?:morning|afternoon|evening)|at night|di (?:mattina|sera|notte)|del (?:mattino|pomeriggio)|della sera)/i

const HOUR_IN_DIGITS = new RegExp(
  `\\b${AT_HOUR}\\s+(\\d{1,2}(?:(?:[:.]|\\s+e\\s+)\\d{2})?)\\s*(am|pm|o'?clock|in the evening|in the morning|in the afternoon|at night|di sera|di notte|di mattina|del pomeriggio|della sera|del mattino)?`,
  'i',
)

/** The words for the part of a day, which the hour tells. */
const PART_OF_DAY =
  /^(?:evening|afternoon|night|morning|sera|pomeriggio|notte|mattino|mattina|half|quarter|past|oclock)$/

export const clock: Fill = (sentence) => {
  const { typed } = sentence
  const time = clockAt(sentence)
  if (time === null) return null
  const parts = typed.tokens.flatMap(({ text }, at) =>
    PART_OF_DAY.test(text) ? [bit('span', at, at + 1, 0, text)] : [],
  )
  return { text: time.text, bits: [...time.bits, ...parts] }
}

function clockAt({ typed, bits }: Sentence): SlotFilled | null {
  const said = clockInWords(typed.text)
  if (said !== null) return { text: said, bits: bits.filter(({ kind }) => kind === 'bare' || kind === 'strength') }
  const within = (begin: number, { length }: string) =>
    bits.filter(
      ({ from, to }) => (typed.tokens[from]?.from ?? 0) >= begin && (typed.tokens[to - 1]?.to ?? 0) <= begin + length,
    )
  const match = HOUR_IN_DIGITS.exec(typed.text)
  const moved = match === null ? MOVED.exec(typed.text) : null
  if (moved !== null) {
    const half = halfOfDay(Number.parseInt(moved[1]!, 10), moved[2]!)
    return { text: `${moved[1]} ${half}`, bits: within(moved.index, moved[0]) }
  }
  const bare = match === null ? BARE_CLOCK.exec(typed.text) : null
  if (bare !== null) return { text: bare[0].trim(), bits: within(bare.index, bare[0]) }
  const named = match === null ? /\b(noon|midday|mezzogiorno)\b/i.exec(typed.text) : null
  if (named !== null) return { text: named[1]!, bits: [] }
  if (match === null) return null
  const [, typedHour = '', part = ''] = match
  // `Alle 19 e 30`.
  const hour = typedHour.replace(/\s+e\s+/, ':')
  const half = halfOfDay(Number.parseInt(hour, 10), part) ?? halfOfDay(Number.parseInt(hour, 10), typed.text)
  return { text: Number(hour) > 12 || half === null ? hour : `${hour} ${half}`, bits: within(match.index, match[0]) }
}
