import type { CalendarDay, DateSide } from '../quantities.ts'
import { addDays, daysBetween } from './calendar-day.ts'

const DAYS: ReadonlyMap<string, number> = new Map(
  [
    'monday mon lunedì lunedi lun',
    'tuesday tue tues martedì martedi mar',
    'wednesday wed mercoledì mercoledi mer',
    'thursday thu thur thurs giovedì giovedi gio',
    'friday fri venerdì venerdi ven',
    'saturday sat sabato sab',
    'sunday sun domenica dom',
  ].flatMap((words, index) => words.split(' ').map((word): [string, number] => [word, index])),
)

const FILLERS = new Set(['on', 'the', 'il', 'lo', 'la', 'di', '.'])
const NEXT = new Set(['next', 'coming', 'prossimo', 'prossima'])
const LAST = new Set(['last', 'past', 'scorso', 'scorsa', 'passato', 'passata'])
const THIS = new Set(['this', 'questo', 'questa'])

const A_MONDAY: CalendarDay = { year: 2024, month: 1, day: 1 }

const rest = (value: number): number => ((value % 7) + 7) % 7

/** 0 for a Monday's name to 6 for a Sunday's; null for another word. */
export const weekdayNamed = (word: string): number | null => DAYS.get(word) ?? null

/** 0 for a Monday to 6 for a Sunday. */
export const weekdayOf = (day: CalendarDay): number => rest(daysBetween(day, A_MONDAY))

/** `Saturday`, `sabato`, `last Saturday`, `next week`, from the words of a text; null where it is nothing of the kind. */
export function weekdayDate(words: readonly string[], today: CalendarDay, side: DateSide): CalendarDay | null {
  const said = words.filter((word) => !FILLERS.has(word))
  const [isNext, isLast] = [said.some((word) => NEXT.has(word)), said.some((word) => LAST.has(word))]
  const isThis = said.some((word) => THIS.has(word))
  const [name, another] = said.filter((word) => !NEXT.has(word) && !LAST.has(word) && !THIS.has(word))
  if (name === undefined || another !== undefined || said.length > 2) return null
  if (['week', 'settimana'].includes(name)) return isNext ? addDays(today, 7) : isLast ? addDays(today, -7) : null
  const weekday = DAYS.get(name)
  if (weekday === undefined) return null
  const ahead = rest(weekday - daysBetween(today, A_MONDAY))
  if (isLast) return addDays(today, ahead - 7)
  if (side === 'past' && !isNext && !isThis) return addDays(today, ahead === 0 ? 0 : ahead - 7)
  const isTodayOut = isNext || (side === 'after_today' && !isThis)
  return addDays(today, ahead === 0 && isTodayOut ? 7 : ahead)
}
