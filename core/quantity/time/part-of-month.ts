import type { CalendarDay, DateSide } from '../quantities.ts'
import { addDays, addMonths, daysBetween, isoDay } from './calendar-day.ts'
import { MONTHS } from './parse-date.ts'

/** A month as it is said in a sentence, as a pattern. */
export const MONTH =
  'jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?|' +
  'gen(?:naio)?|febbraio|marzo|aprile|maggio|giugno|luglio|agosto|settembre|ottobre|novembre|dicembre'

/** A month alone, `may` and `march` among them, is no day. */
export const MONTH_ALONE = new RegExp(`^(?:${MONTH})$`)

/** Whether a word is a month that stands for a whole one. */
export const isMonth = (word: string): boolean => MONTH_ALONE.test(word)

const PART =
  /^(?:the )?(early|late|mid|(?:beginning|start|middle|end)(?: of)?|(?:inizio|meta|fine)(?: di)?) ?-? ([a-z]+)(?: (\d{4}))?$/
/** `That’s fine, may I`, `the start may`: no month. */
const NO_PART = /^(?:fine|start|end|beginning|middle)\b(?! of\b).* (?:may|march)$/
/** Early and late in a month nobody counts; common practice, no source. The end is its last day. */
const OF_MONTH: Readonly<Record<string, number>> = { early: 10, beginning: 5, start: 5, inizio: 5, late: 25 }
const MIDDLE = 15
const ENDS = /^(?:end|fine)$/

const THIS_MONTH =
  /^(?:the )?((?:beginning|start|middle|end) of|early|mid|late|inizio|meta|fine)(?: del)? (?:(?:the|this) )?(next |last |prossimo |scorso )?(?:month|mese)( prossimo| scorso)?$/

const lastOf = (first: CalendarDay): CalendarDay => addDays(addMonths({ ...first, day: 1 }, 1), -1)

function dayInMonth(part: string, first: CalendarDay): CalendarDay {
  const [word] = part.split(' ')
  return ENDS.test(word!) ? lastOf(first) : { ...first, day: OF_MONTH[word!] ?? MIDDLE }
}

/** `Mid March`, `fine gennaio`: the day as an option takes it. */
export function partOfMonth(plain: string, today: CalendarDay, side: DateSide): string | null {
  const [, part, month, said] = PART.exec(plain) ?? []
  if (part === undefined || !MONTH_ALONE.test(month!) || NO_PART.test(plain)) return null
  const of = MONTHS.get(month!)!
  const ahead = of < today.month ? 1 : 0
  const back = of > today.month ? -1 : 0
  const year = said === undefined ? today.year + (side === 'past' ? back : ahead) : Number(said)
  const { day } = dayInMonth(part, { year, month: of, day: 1 })
  return `${day} ${month}${said === undefined ? '' : ` ${said}`}`
}

/** `The end of the month`, `metà del mese prossimo`. */
export function partOfThisMonth(plain: string, today: CalendarDay, side: DateSide): string | null {
  const [, part, before, behind] = THIS_MONTH.exec(plain) ?? []
  if (part === undefined) return null
  const which = (before ?? behind ?? '').trim()
  const asked = /^(?:next|prossimo)$/.test(which) ? [1] : /^(?:last|scorso)$/.test(which) ? [-1] : [0]
  const steps = which !== '' ? asked : side === 'past' ? [0, -1] : [0, 1]
  const days = steps.map((step) => dayInMonth(part, addMonths({ ...today, day: 1 }, step)))
  const such = days.find((day) => isOnSide(daysBetween(day, today), side))
  return such === undefined ? null : isoDay(such)
}

/** Whether a day so far ahead lies where it is looked for. */
export const isOnSide = (ahead: number, side: DateSide): boolean =>
  side === 'past' ? ahead <= 0 : side === 'after_today' ? ahead > 0 : ahead >= 0
