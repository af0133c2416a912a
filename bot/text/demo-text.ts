import type { CalendarDay } from '../../core/quantity/quantities.ts'

/** What is typed at a local time, with a remark before it. */
export interface SeasonStep {
  /** `2026-09-05 10:00`, by the season's own zone. */
  readonly at: string
  readonly remark?: string
  readonly lines: readonly string[]
  /** Like something shown before: neither it nor the nudges until then are shown, only the remark. */
  readonly isQuiet?: boolean
}

/** A part of the season, which begins with nothing kept. */
export interface SeasonAct {
  readonly steps: readonly SeasonStep[]
  /** Every reply as it is given; else those are cut short whose like was seen before. */
  readonly isWhole: boolean
}

/** The allotment society's season: what it types, and the words around it. */
export interface SeasonText {
  readonly zone: string
  /** How a reminder to shake is answered. */
  readonly shaken: string
  readonly acts: readonly SeasonAct[]
  remark(text: string): string
  heading(day: CalendarDay): string
  readonly shakesLeftOut: string
  /** Asks for Enter before the next day. */
  readonly goOn: string
  readonly end: string
}
