import { isRefused } from '../../../core/domain-error.ts'
import { parseCountryCode } from '../../../core/label/parse-country-code.ts'
import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import { parseZone } from '../../../core/quantity/time/parse-zone.ts'
import { isMonth } from '../../../core/quantity/time/part-of-month.ts'
import { bit, type Sentence } from '../bits/bit.ts'
import { moreTimeIn } from '../bits/more-time.ts'
import { endOfAbsence, isLength } from './absence.ts'
import { onlyBit } from './amount-slots.ts'
import { BARE_CLOCK, clock } from './clock-slot.ts'
import type { SlotKind } from './frame.ts'
import { isNotNow } from './not-now.ts'
import type { Fill, SlotFilled } from './plant-slots.ts'

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

/** `Remind me in June`: from its first day on. */
function monthSaid({ typed }: Sentence): SlotFilled | null {
  const at = typed.tokens.findIndex(
    ({ text }, place) =>
      isMonth(text) &&
      typed.tokens[place + 1]?.kind !== 'number' &&
      /^(?:in|until|till|a|ad|fino)$/.test(typed.tokens[place - 1]?.text ?? ''),
  )
  const month = typed.tokens[at]?.text
  if (month === undefined) return null
  const text = `1 ${month.charAt(0).toUpperCase()}${month.slice(1)}`
  return { text, bits: [bit('date', at, at + 1, 0, text)] }
}

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
  const month = monthSaid(sentence)
  if (month !== null) return month
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
    return !IS_ASKED.test(typed.tokens[0]?.text ?? '') && has('be_quiet', 'denial', 'no')
      ? { text: 'off', bits: [] }
      : null
  },
  zone: named(parseZone),
  country: named(parseCountryCode),
  private_place: ({ has }: Sentence) => (has('privately') ? { text: 'private', bits: [] } : null),
  here_place: ({ has }: Sentence) => (has('in_here') ? { text: 'here', bits: [] } : null),
} as const satisfies Partial<Record<SlotKind, Fill>>
