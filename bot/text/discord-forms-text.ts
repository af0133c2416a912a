import type { HappeningEntry } from '../../core/jar/entry/entry.ts'
import type { CalendarDay } from '../../core/quantity/quantities.ts'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import type { Sayings } from './sayings.ts'

export type SweetnessStyle = 'dry' | 'everyday' | 'rich'

/** What is offered while an option is typed. */
export interface SuggestionText {
  all(): string
  /** A jar that is empty or thrown away; several may have been called the same. */
  doneJar(values: { readonly name: string; readonly startedOn: string }): string
  /** A batch that is shared; without a name where its jar is gone, without a day where it was posted nowhere. */
  share(values: { readonly id: string; readonly name: string | null; readonly day: IsoDay | null }): string
  /** `dry: 120 g/L`, and what it tastes like. */
  style(values: { readonly style: SweetnessStyle; readonly gPerL: number }): string
  /** What a sweetness comes to; nearest to one that has a name. */
  sweetness(values: { readonly gPerL: number; readonly nearest: SweetnessStyle }): string
  /** `yesterday, Tuesday 24 November 2026`. */
  day(values: { readonly day: CalendarDay; readonly daysAhead: number }): string
  /** `minutes` of the day; null: in the morning, when reminders come. */
  until(values: { readonly day: CalendarDay; readonly daysAhead: number; readonly minutes: number | null }): string
  entry(values: { readonly entry: HappeningEntry }): string
  bottles(values: { readonly bottles: readonly { readonly count: number | null; readonly volumeMl: number }[] }): string
  country(code: string): string
  /** `minutes` of the day it is there now. */
  zone(values: { readonly zone: string; readonly minutes: number }): string
}

/** The form for a tasting note. */
export interface TastingFormText extends Sayings<'rating' | 'unrated' | 'note' | 'notePlaceholder'> {
  title(values: { readonly name: string }): string
  readonly ratings: Readonly<Record<1 | 2 | 3 | 4 | 5, string>>
}

/** The form for what came out of straining. */
export interface StrainingFormText
  extends Sayings<'measured' | 'measuredPlaceholder' | 'strength' | 'strengthPlaceholder'> {
  title(values: { readonly name: string }): string
}

/** The form for what was stirred in. */
export interface SweeteningFormText extends Sayings<'sugar' | 'sugarPlaceholder' | 'water' | 'waterPlaceholder'> {
  title(values: { readonly name: string }): string
}

/** The form for the bottles that were filled. */
export interface BottlingFormText {
  title(values: { readonly name: string }): string
  bottles(): string
  bottlesPlaceholder(): string
}

/** The form of who wants to make a batch that somebody shared. */
export type MakeFormText = Sayings<
  | 'title'
  | 'spirit'
  | 'spiritPlaceholder'
  | 'strength'
  | 'strengthPlaceholder'
  | 'bottles'
  | 'bottlesPlaceholder'
  | 'of'
  | 'ofPlaceholder'
  | 'to-strength'
  | 'to-strengthPlaceholder'
>

/** The form that holds a whole line. */
export interface RetypeFormText {
  title(): string
  line(): string
}
