import { isRefused } from '../../../core/domain-error.ts'
import { parseCountryCode } from '../../../core/label/parse-country-code.ts'
import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import { parseZone } from '../../../core/quantity/time/parse-zone.ts'
import { bit, type Sentence } from '../bits/bit.ts'
import { moreTimeIn } from '../bits/more-time.ts'
import { endOfAbsence, isLength } from './absence.ts'
import { onlyBit } from './amount-slots.ts'
import type { SlotKind } from './frame.ts'
import { isNotNow } from './not-now.ts'
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
const WHOLE = new RegExp(`\\b(?:at|alle|ore) (${HOURS.join('|')}|${ORE.join('|')})\\b( e mezza)?(.*)`, 'i')

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
const BARE_CLOCK =
  /(?<![\d.:])(?:1[0-2]|0?[1-9])(?:[:.][0-5]\d)?\s?(?:am|pm)\b|(?<![\d.:])(?:[01]?\d|2[0-3]):[0-5]\d(?![\d:])/i

/** `Move my reminder to 7 in the evening`. */
const MOVED =
  /\b(?:to|for|by|around|about|verso le|per le)\s+(1[0-2]|[1-9])\s+(in the (?:morning|afternoon|evening)|at night|di (?:mattina|sera|notte)|del (?:mattino|pomeriggio)|della sera)/i

/** The words for the part of a day, which the hour tells. */
const PART_OF_DAY =
  /^(?:evening|afternoon|night|morning|sera|pomeriggio|notte|mattino|mattina|half|quarter|past|oclock)$/

const clock: Fill = (sentence) => {
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
  const match =
    /\b(?:at|alle|ore)\s+(\d{1,2}(?:(?:[:.]|\s+e\s+)\d{2})?)\s*(am|pm|o'?clock|in the evening|in the morning|in the afternoon|at night|di sera|di notte|di mattina|del pomeriggio|della sera|del mattino)?/i.exec(
      typed.text,
    )
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

/** A silence without an end. */
const FOR_GOOD = /\b(?:for good|further notice|for ?ever|permanently|indefinitely|per sempre)\b/

/** `Another week`, `two more weeks`, `altre due settimane`, said of a jar that is let be. */
function moreTime({ typed, bits }: Sentence): SlotFilled | null {
  const more = moreTimeIn(typed)
  if (more === null) return null
  const { text, from, to } = more
  return { text, bits: [bit('span', from, to, 0, text), ...bits.filter((each) => each.from >= from && each.to <= to)] }
}

/** Of every week, which no silence with an end is: `not on sundays`, `non la domenica`. */
const EVERY_WEEK =
  /\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)days|weekends|every \p{L}+day|(?:la|di|ogni) (?:domenica|lunedi|martedi|mercoledi|giovedi|venerdi|sabato))\b/u

const until: Fill = (sentence) => {
  const { bits, has, typed } = sentence
  // What begins a silence is not the day that ends it.
  const isSilence = has('be_quiet', 'away_now', 'not_this_week') && !has('reminders_on')
  const over = isSilence ? endOfAbsence(sentence) : null
  if (over === 'open') return null
  if (over !== null) return over
  if (isSilence && EVERY_WEEK.test(wordsFrom(typed))) return null
  const dates = bits.filter(({ kind }) => kind === 'date')
  // `Not tonight, saturday`.
  const isNot = (from: number): boolean => /^(?:not|non|no)$/.test(typed.tokens[from - 1]?.text ?? '')
  const date = dates.find(({ from }) => !isNot(from)) ?? dates[0]
  // A span is a day so far ahead: `gone for two weeks`.
  if (date !== undefined) return isLength(date) ? { text: `in ${date.text}`, bits: [date] } : onlyBit(date)
  // `To 6:45 pm` is an hour of the day.
  const span = BARE_CLOCK.test(typed.text) ? undefined : bits.find(({ kind }) => kind === 'span')
  if (span !== undefined) return { text: `in ${span.text}`, bits: [span] }
  if (has('this_week')) return { text: 'next Monday', bits: [] }
  const words = wordsFrom(typed)
  const more = moreTime(sentence)
  if (more !== null) return more
  if (FOR_GOOD.test(words)) return { text: 'further notice', bits: [] }
  if (/\b(?:not today|non oggi)\b/.test(words)) return { text: 'tomorrow', bits: [] }
  if (isNotNow(sentence)) return { text: 'later', bits: [] }
  return has('put_off') && /\b(?:later|piu tardi|dopo)\b/.test(words) ? { text: 'later', bits: [] } : null
}

const MOST_WORDS = 3

/** What is said behind `I live in`, as far as it is read. */
function placeNamed({ typed, spans }: Sentence, isRead: (text: string) => boolean): SlotFilled | null {
  const { tokens } = typed
  for (const { concept, to } of spans) {
    if (concept !== 'i_live') continue
    const from = /^(?:the|in|is|to|e|a|il|lo|la)$/.test(tokens[to]?.text ?? '') ? to + 1 : to
    for (let next = Math.min(tokens.length, from + MOST_WORDS); next > from; next--) {
      const text = textFrom(typed, from, next).toLowerCase()
      if (/^[a-z][a-z ]{2,}$|^u[ks]$/.test(text) && isRead(text))
        return { text, bits: [bit('span', from, next, 0, text)] }
    }
  }
  return null
}

const named =
  (read: (text: string) => unknown): Fill =>
  (sentence) =>
    placeNamed(sentence, (each) => !isRefused(() => read(each)))

/** `Are reminders on?` turns none on. */
const IS_ASKED = /^(?:are|is|do|did|does|sono|quando|when|what)$/

/** `Turn the shaking reminders back on`. */
const SHAKE_ON =
  /\b(?:(?:turn|switch|put|have|want|get)\b.*\b(?:back )?on\b(?! about)|(?:start|resume|restart|bring back|unmute)\b|riattiva|riaccendi|ricomincia|ripristina|accendi)/i

/** What is set of reminders and of where a person lives. */
export const reminderFills = {
  clock,
  until,
  pause_over: ({ has, typed }: Sentence) =>
    has('reminders_on') && !has('until', 'denial', 'shaking_reminders') && !IS_ASKED.test(typed.tokens[0]?.text ?? '')
      ? { text: 'none', bits: [] }
      : null,
  shake_off: ({ has, typed }: Sentence) => {
    if (!has('shaking_reminders')) return null
    if (SHAKE_ON.test(typed.text)) return { text: 'daily', bits: [] }
    return has('be_quiet', 'denial', 'no') ? { text: 'off', bits: [] } : null
  },
  zone: named(parseZone),
  country: named(parseCountryCode),
  private_place: ({ has }: Sentence) => (has('privately') ? { text: 'private', bits: [] } : null),
  here_place: ({ has }: Sentence) => (has('in_here') ? { text: 'here', bits: [] } : null),
} as const satisfies Partial<Record<SlotKind, Fill>>
