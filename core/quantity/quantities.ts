import type { MaterialId } from './materials.ts'

/** A reading that was taken where the text left room for another one; the reply has to say it. */
export type Assumption =
  | 'percent_vol' // a bare strength, taken as % vol
  | 'grams_per_litre' // a bare sweetness, taken as g/L
  | 'us_measure' // cup, fl oz, pint, quart, gallon: the US ones
  | 'us_proof' // proof: the US one, twice the % vol at 60 °F
  | 'decimal_point' // `1.250 kg`: the separator read as a decimal sign, the other reading lies out of range
  | 'thousands_separator' // `5.000 mg`: the separator read as a thousands sign, likewise
  | 'sugar_ounces' // bare ounces of sugar, taken as a weight
  | 'sugar_by_volume' // sugar given by volume: weighed with the USDA weight of a cup of granulated sugar
  | 'brown_by_volume' // brown sugar likewise: of a packed cup
  | 'whole_fruit' // citrus by its weight: the fruit, of which the peel goes in
  | 'syrup_by_volume' // honey or a syrup likewise: by its density

interface Typed {
  /** The unit taken, by its key in `units.ts`. */
  readonly unit: string
  readonly assumed: readonly Assumption[]
}

export interface Volume extends Typed {
  readonly kind: 'volume'
  /** As read on the vessel; see `atC`. */
  readonly volumeMl: number
  /** Half of the last digit typed. */
  readonly halfDigitMl: number
  /** What was typed after `±`, or null. */
  readonly statedMl: number | null
  /** The liquid's temperature where one was typed (`930 ml at 28 C`), else null: 20 °C. */
  readonly atC: number | null
}

export interface Mass extends Typed {
  readonly kind: 'mass'
  readonly massG: number
  readonly halfDigitG: number
  readonly statedG: number | null
  /** True where a volume was typed and turned into a mass (sugar by the cup): the volume's tool counts, not the scale's. */
  readonly byVolume: boolean
}

/** What sweetens, and how much of it. */
export interface SweeteningRead extends Mass {
  readonly material: MaterialId
}

/** Water, and what stands for it. */
export interface WaterRead {
  readonly waters: readonly (Volume | Mass)[]
  readonly juices: readonly SweeteningRead[]
}

/** What goes in for the water of a syrup: so much of it, or what is taken where the amount is worked out. */
export type WaterOrKind = WaterRead | MaterialId

/** What sweetens a batch. */
export interface SugarRead {
  /** What goes in, each with its amount. */
  readonly amounts: readonly SweeteningRead[]
  /** What is taken where the amount is worked out; null where nothing was said. */
  readonly sweetener: MaterialId | null
}

export interface Strength extends Typed {
  readonly kind: 'strength'
  /** % vol at 20 °C as typed; where `atC` is set it is what a hydrometer showed at that temperature. */
  readonly abvPercent: number
  readonly halfDigitPercent: number
  readonly statedPercent: number | null
  readonly atC: number | null
}

export interface Sweetness extends Typed {
  readonly kind: 'sweetness'
  /** Grams of sucrose, as weighed, in a litre of the liquid. */
  readonly sugarGPerL: number
  readonly halfDigitGPerL: number
  readonly statedGPerL: number | null
}

/**
 * What is printed on a hydrometer: specific gravity against water, both at 20 °C or both at 60 °F; g/mL at 20 °C; Brix (sugar
 * by mass at 20 °C); Baumé for liquids heavier than water; % vol of unsweetened spirit at 20 °C.
 */
export type StemScale = 'sg' | 'sg_60f' | 'g_per_ml' | 'brix' | 'baume' | 'percent'

export interface Temperature extends Typed {
  readonly kind: 'temperature'
  readonly tempC: number
}

/** Sugar to water by mass: `2:1` is 2 g of sugar to each gram of water. */
export interface Ratio {
  readonly kind: 'ratio'
  readonly sugarGPerWaterG: number
  readonly assumed: readonly Assumption[]
}

/** A length of time: exactly one of `days` (also hours, weeks) and `months` (also years) is set. */
export interface Span extends Typed {
  readonly kind: 'span'
  readonly days: number | null
  /** Of the calendar; may be a fraction (`1.5 months`). */
  readonly months: number | null
  /** In days of 24 hours; a month is the mean one of 30.436875 days. */
  readonly nominalDays: number
}

/** A day of the calendar, in no zone. */
export interface CalendarDay {
  readonly year: number
  /** 1 to 12. */
  readonly month: number
  readonly day: number
}

export interface TypedDate extends CalendarDay {
  readonly kind: 'date'
  /** True where no year was typed: the next such day, today included. */
  readonly yearAssumed: boolean
}

/** What is counted beside the thing itself: `1 stick cinnamon`, `3 foglie di alloro`. */
export type Piece =
  | 'stick'
  | 'pod'
  | 'bean'
  | 'clove'
  | 'leaf'
  | 'sprig'
  | 'slice'
  | 'piece'
  | 'bunch'
  | 'head'
  | 'pinch'

export interface Count {
  readonly kind: 'count'
  readonly count: number
  readonly piece: Piece | null
  /** As typed, singular or plural, in either language; empty for a bare number. */
  readonly noun: string
  readonly assumed: readonly Assumption[]
}

/** One of the liquids of `spirit:` or `parts:`. */
export interface LiquidPart {
  readonly amount: Volume | Mass
  readonly strength: Strength | null
  readonly sweetness: Sweetness | null
  /** What else was typed of it (`vodka`), or empty. */
  readonly words: string
  /** All that was typed of it, and of its strength; empty where none was said. */
  readonly typed: string
  readonly strengthTyped: string
}

/** Which of the days with one name is meant: the last one or today, today or the next one, or the next one. */
export type DateSide = 'past' | 'from_today' | 'after_today'
