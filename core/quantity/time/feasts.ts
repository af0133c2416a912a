import type { CalendarDay, DateSide } from '../quantities.ts'
import { addDays, daysBetween, isoDay } from './calendar-day.ts'
import { easterOf } from './easter.ts'
import { isOnSide } from './part-of-month.ts'

/** Feasts of a fixed day; those of saints as in the western calendar. */
const FIXED: readonly (readonly [RegExp, string])[] = [
  [/^(?:christmas eve|vigilia(?: di natale)?)$/, '24 December'],
  [/^(?:christmas|xmas)(?: day)?$|^natale$/, '25 December'],
  [/^(?:new years?|new years? day|capodanno)$/, '1 January'],
  [/^(?:new years? eve|nye|hogmanay|san silvestro)$/, '31 December'],
  [/^hallow?een$/, '31 October'],
  [/^(?:st |saint )?valentine ?s?(?: day)?$|^san valentino$/, '14 February'],
  [/^ferragosto$/, '15 August'],
  [/^(?:midsummer|san giovanni)$/, '24 June'],
  [/^midwinter$/, '21 December'],
  [/^boxing day$|^(?:st |saint )stephen ?s?(?: day)?$|^santo stefano$/, '26 December'],
  [/^(?:epifania|befana|epiphany)$/, '6 January'],
  [/^twelfth night$/, '5 January'],
  [/^burns night$/, '25 January'],
  [/^candlemas$|^candelora$/, '2 February'],
  [/^(?:st |saint )(?:patrick|paddy) ?s?(?: day)?$|^san patrizio$/, '17 March'],
  [/^(?:san giuseppe|festa del papa)$/, '19 March'],
  [/^(?:all saints(?: day)?|ognissanti|tutti i santi)$/, '1 November'],
  [/^(?:bonfire night|guy fawkes(?: night)?)$/, '5 November'],
  [/^(?:martinmas|san martino)$/, '11 November'],
  [/^(?:(?:st |saint )nicholas(?: day)?|san nicola)$/, '6 December'],
  [/^immacolata$/, '8 December'],
  [/^(?:(?:st |saint )lucy ?s?(?: day)?|santa lucia)$/, '13 December'],
  [/^michaelmas$/, '29 September'],
]

/** Feasts that go with Easter, by how many days behind it. */
const MOVABLE: readonly (readonly [RegExp, number])[] = [
  [/^(?:shrove tuesday|pancake day|martedi grasso|carnevale)$/, -47],
  [/^(?:ash wednesday|mercoledi delle ceneri)$/, -46],
  [/^(?:palm sunday|domenica delle palme)$/, -7],
  [/^(?:good friday|venerdi santo)$/, -2],
  [/^(?:easter(?: sunday| day)?|pasqua)$/, 0],
  [/^(?:easter monday|pasquetta|lunedi dell? ?angelo)$/, 1],
  [/^(?:whitsun|whit sunday|pentecost|pentecoste)$/, 49],
]

/** Words that a feast can begin with, as a pattern. */
export const FEAST_BEGINS =
  'christmas|xmas|boxing|santo|santa|saint|st|epifania|befana|epiphany|easter|halloween|valentines?|san|new|nye|hogmanay|midsummer|midwinter|natale|pasqua|pasquetta|capodanno|ferragosto|' +
  'vigilia|twelfth|burns|candlemas|candelora|festa|ognissanti|tutti|bonfire|guy|martinmas|immacolata|michaelmas|shrove|pancake|martedi|carnevale|ash|mercoledi|palm|domenica|good|venerdi|lunedi|whitsun|whit|pentecoste?'

/** The day of a feast as an option takes it: a day of the year, or that day where it moves; null where it is none. */
export function feastDay(plain: string, today: CalendarDay, side: DateSide): string | null {
  const fixed = FIXED.find(([pattern]) => pattern.test(plain))
  if (fixed !== undefined) return fixed[1]
  const movable = MOVABLE.find(([pattern]) => pattern.test(plain))
  if (movable === undefined) return null
  const years = side === 'past' ? [0, -1] : [0, 1]
  const days = years.map((step) => addDays(easterOf(today.year + step), movable[1]))
  return isoDay(days.find((day) => isOnSide(daysBetween(day, today), side)) ?? days[1]!)
}
