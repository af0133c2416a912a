import { DomainError } from '../../../core/domain-error.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { wordAt } from '../../../core/quantity/read/tokens.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { parseDate } from '../../../core/quantity/time/parse-date.ts'
import { type Bit, bit, type Sentence } from '../bits/bit.ts'
import type { SlotFilled } from './plant-slots.ts'

const LENGTH = /^\d+ (?:days?|weeks?|months?|giorn[oi]|settiman[ae]|mes[ei])$|^an? (?:day|week|month)$/

/** A day so far ahead, rather than one that is named: `two weeks`. */
export const isLength = ({ kind, text }: Bit): boolean => kind === 'span' || (kind === 'date' && LENGTH.test(text))

const FROM = /^(?:from|starting|beginning|leaving|da|dal|dall|dalla|partire)$/
const UNTIL = /^(?:until|till|til|to|through|fino|al|alla|back|entro)$/
const SMALL = /^(?:on|the|il|l|a|di|from)$/

/** What it is called to be away: said by the pause itself. */
const AWAY = /^(?:holidays?|vacation|away|gone|off|travelling|vacanz[ae]|ferie|viaggio|via)$/

function wordBefore({ typed }: Sentence, { from }: Bit): string {
  let at = from - 1
  while (at > 0 && SMALL.test(wordAt(typed, at)) && !FROM.test(wordAt(typed, at))) at--
  return wordAt(typed, at)
}

function dayOf(text: string, today: CalendarDay): CalendarDay | null {
  try {
    return parseDate(text, { today, country: null }, 'after_today')
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    return null
  }
}

/**
 * When an absence is over of which it is said when it begins: `from tomorrow for two weeks`, `da sabato fino al 20 dicembre`. Null
 * where no beginning is said; `open` where it has no end.
 */
export function endOfAbsence(sentence: Sentence): SlotFilled | 'open' | null {
  const { bits, today, typed } = sentence
  const days = bits.filter((each) => each.kind === 'date' && !isLength(each))
  const start = days.find((each) => FROM.test(wordBefore(sentence, each)))
  if (start === undefined) return null
  const said = typed.tokens.flatMap(({ text }, at) => (AWAY.test(text) ? [bit('span', at, at + 1, 0, text)] : []))
  const end = days.find((each) => each !== start && UNTIL.test(wordBefore(sentence, each)))
  if (end !== undefined) return { text: end.text, bits: [end, start, ...said] }
  const length = bits.find(isLength)
  if (length === undefined) return 'open'
  const begin = dayOf(start.text, today)
  const over = begin === null ? null : dayOf(`in ${length.text}`, begin)
  return over === null ? 'open' : { text: isoDay(over), bits: [length, start, ...said] }
}
