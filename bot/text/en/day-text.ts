import type { CalendarDay } from '../../../core/quantity/quantities.ts'

export const MONTHS = 'January February March April May June July August September October November December'.split(' ')

/** From Monday on. */
export const WEEKDAYS = 'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' ')

/** `9 December 2026`. */
export const dayText = ({ year, month, day }: CalendarDay): string => `${day} ${MONTHS[month - 1]} ${year}`
