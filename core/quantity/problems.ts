import type { CalendarDay, DateSide } from './quantities.ts'

/** What a text was expected to be; a language says with it what is accepted. */
export type Wanted =
  | 'volume'
  | 'mass'
  | 'amount'
  | 'sugar'
  | 'sweetener'
  | 'filler'
  | 'strength'
  | 'sweetness'
  | 'temperature'
  | 'ratio'
  | 'span'
  | 'date'
  | 'count'
  | 'plant'
  | 'part'
  | 'hydrometer'
  | 'brix'

/** What a unit measures. */
export type UnitKind = 'volume' | 'mass' | 'strength' | 'sweetness' | 'temperature' | 'span'

/** `line`: the whole line with a text in its place that is read, where whoever knows the line found one. */
interface Instead {
  readonly line?: string | null
}

/** Why something that sweetens is not taken: it is deadly to dogs, or none of its sweetness is sugar. */
export type SweetenerRefused = 'kills_dogs' | 'no_sugar'

/**
 * What can be wrong with a text that should be a quantity, by key, with the values its sentence needs.
 * `typed` is what was typed, fit to be shown: no control characters, at most 40 characters.
 */
export interface QuantityProblems {
  readonly empty_text: Instead & { readonly wanted: Wanted }
  readonly text_too_long: { readonly typed: string; readonly maxCharacters: number }
  /** Control characters, direction marks and other characters that nobody sees. */
  readonly hidden_characters: { readonly typed: string }
  /** Digits other than 0 to 9, such as full-width ones. */
  readonly foreign_digits: { readonly typed: string }
  readonly no_number: Instead & { readonly typed: string; readonly wanted: Wanted }
  readonly bad_number: Instead & { readonly typed: string; readonly number: string }
  readonly exponent_number: Instead & { readonly typed: string; readonly wanted: Wanted }
  readonly negative_number: Instead & { readonly typed: string; readonly wanted: Wanted }
  readonly no_unit: Instead & { readonly typed: string; readonly wanted: Wanted }
  readonly unknown_unit: Instead & { readonly typed: string; readonly unit: string; readonly wanted: Wanted }
  /** A known unit, of something else than what was asked for. */
  readonly wrong_kind: Instead & { readonly typed: string; readonly got: UnitKind; readonly wanted: Wanted }
  readonly out_of_range: Instead & { readonly typed: string; readonly wanted: Wanted }
  readonly unexpected_text: Instead & { readonly typed: string; readonly extra: string; readonly wanted: Wanted }
  /** A `±` that is larger than the value itself. */
  readonly wide_plus_minus: Instead & { readonly typed: string }
  /** A second strength, or a second sweetness, of one liquid. */
  readonly said_twice: Instead & { readonly typed: string; readonly kind: 'strength' | 'sweetness' | 'amount' }
  readonly other_sweetener: Instead & {
    readonly typed: string
    readonly sweetener: string
    readonly why: SweetenerRefused | null
  }
  /** Sugar and water in parts that were not said; `choices` are texts that can be typed. */
  readonly which_syrup: Instead & { readonly typed: string; readonly choices: readonly string[] }
  /** An amount of what is worked out; `fix` is the name alone, `line` the line with it, where a chat knows it. */
  readonly amount_worked_out: { readonly typed: string; readonly fix: string; readonly line?: string | null }
  /** Neither water nor a juice that is known. */
  readonly other_water: Instead & { readonly typed: string; readonly extra: string }
  /** Two names without amounts. */
  readonly one_sweetener: { readonly typed: string }
  readonly dangling_plus: Instead & { readonly typed: string }

  /** `1,000 ml`: `choices` are texts that can be typed, each with one meaning. */
  readonly two_readings: Instead & { readonly typed: string; readonly choices: readonly [string, string] }
  /** `14.5` of a hydrometer. */
  readonly which_scale: Instead & { readonly typed: string; readonly choices: readonly [string, string, string] }
  /** `70° proof`. */
  readonly us_or_uk_proof: Instead & {
    readonly typed: string
    readonly choices: readonly [string, string]
    /** % vol of each. */
    readonly percents: readonly [us: number, uk: number]
  }
  /** `0.95` without a %. */
  readonly fraction_or_percent: Instead & { readonly typed: string; readonly choices: readonly [string, string] }
  /** `25 oz`: fluid ounces or a weight; `weight` is null where only a volume is taken. */
  readonly ounces: Instead & { readonly typed: string; readonly fluid: string; readonly weight: string | null }
  /** `1 bottle` of a spirit. */
  readonly bottle_without_size: Instead & { readonly typed: string }
  /** Of a freezer. */
  readonly freezer_out_of_range: { readonly typed: string }
  readonly celsius_or_fahrenheit: Instead & { readonly typed: string; readonly choices: readonly [string, string] }
  /** `6/7`: the days it can be. */
  readonly day_or_month: Instead & {
    readonly typed: string
    readonly days: readonly { readonly month: number; readonly day: number }[]
  }

  readonly no_month: { readonly typed: string }
  readonly no_date: Instead & { readonly typed: string; readonly side: DateSide }
  /** 31 November. */
  readonly no_such_day: Instead & { readonly typed: string; readonly side: DateSide }
  /** Friday 28 November, which is a Saturday (5, Monday being 0). */
  readonly other_weekday: Instead & { readonly typed: string; readonly day: CalendarDay; readonly weekday: number }
  /** No time of day. */
  readonly no_clock_time: Instead & { readonly typed: string }
  readonly date_too_far: Instead & { readonly typed: string; readonly fromYear: number; readonly toYear: number }

  /** `+02:00`, `UTC+2`. */
  readonly offset_zone: Instead & { readonly typed: string }
  /** The nearest zones, at most three. */
  readonly unknown_zone: Instead & { readonly typed: string; readonly nearest: readonly string[] }
  /** Neither metric, US nor imperial. */
  readonly unknown_units: Instead & { readonly typed: string }
}

declare module '../domain-error.ts' {
  interface Problems extends QuantityProblems {}
}
