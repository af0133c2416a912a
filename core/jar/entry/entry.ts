import type { FiningId } from '../../label/fining.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import type { Batch, BatchPlant, PutIn } from '../../recipe/batch.ts'
import type { KnownPortion, Portion } from '../../recipe/portion.ts'
import type { Sweetening } from '../../recipe/sweetening.ts'
import type { FruitSugared, Gauged, Noted, Parted, Tasted } from './told.ts'

/** A plant as it went in. */
export type PlantIn = BatchPlant<IsoDay>

/** Bottles of one size. */
export interface BottlesOf {
  readonly count: number
  readonly volumeMl: number
}

/** What goes into a jar at once. */
export type Ingredients = PutIn<IsoDay>

/** A volume or mass as read on the vessel or the scale, at the temperature of the liquid. */
export type ReadAmount = Pick<Portion, 'amount' | 'by' | 'atC'>

/** A strength as read, see `Portion`. */
export interface ReadStrength {
  readonly abvPercent: Measured
  readonly abvAtC: number | null
  readonly readsProof: boolean
}

/** A batch as it was begun, and as it was planned on its first day. */
export interface Started extends Batch<IsoDay> {
  readonly kind: 'started'
  readonly name: string
  /** The plants had steeped in another jar before; left out: they had not. */
  readonly secondOf?: SecondOf
  /** A pectic enzyme on the fruit before the spirit, in its maker's words; left out: none. */
  readonly enzyme?: string
}

/** Plants that steep once more, with what they had soaked up. */
export interface SecondOf {
  /** The name that the first jar had, and its id then. */
  readonly other: string
  readonly otherId: string
  /** What is left in them of the first infusion. */
  readonly soaked: KnownPortion
  /** What of it sweetens: its grams are in that already. Left out: nothing, or not known. */
  readonly sweetenings?: readonly Sweetening[]
  /** As they had been weighed in. */
  readonly plants: readonly PlantIn[]
}

/** `layer`: fruit laid on what is in, from which the days count anew; `top_up`: what covers the plants again. */
export type AddedAs = 'layer' | 'top_up'

/** What went into a jar that had been started. */
export interface Added extends Ingredients {
  readonly kind: 'added'
  /** Left out: as it comes. */
  readonly as?: AddedAs
  /** A pectic enzyme, in its maker's words; left out: none. */
  readonly enzyme?: string
}

export interface Strained {
  readonly kind: 'strained'
  /** Everything that came out, rinsings included; null where it was not measured. */
  readonly measured: ReadAmount | null
  readonly strength: ReadStrength | null
  /** Water rinsed through the plants. */
  readonly rinseWaterG: Measured
}

/** A plant that was lifted out while the rest steeped on, with the mass that had gone in. */
export type PlantOut = Pick<PlantIn, 'id' | 'name' | 'massG'>

/** What another jar had become, poured into this one. */
export interface PouredIn {
  readonly kind: 'poured_in'
  readonly liquid: KnownPortion
  /** Of what steeped in it, the part that came with the liquid: for cautions and limits. */
  readonly plants: readonly PlantIn[]
  /** What of it sweetens: its grams are in the liquid already. Left out: nothing, or not known. */
  readonly sweetenings?: readonly Sweetening[]
  /** Of the spirit and water on those plants, as much, mL. */
  readonly spiritMl: number
  /** The name that the other jar had. */
  readonly other: string
  /** What this one is called from here on; null: as before. */
  readonly into: string | null
  /** What it was fined with there; left out: nothing. */
  readonly fined?: readonly FiningId[]
}

/** What became clear: filtered, or poured off what had sunk. */
export interface Filtered {
  readonly kind: 'filtered'
  /** What was left; null where it was not measured. */
  readonly measured: ReadAmount | null
  /** Racked: poured off the lees; left out: filtered. */
  readonly isRacked?: boolean
  /** What it was fined with before; left out: nothing. */
  readonly fining?: FiningId
}

/** What the jar was sweetened with; what the strained fruit gave back counts as such. */
export interface Sweetened {
  readonly kind: 'sweetened'
  readonly waterG: Measured
  readonly sweetenings: readonly Sweetening[]
  /** What sugar drew out of the strained fruit went in; left out: nothing of it. */
  readonly ofFruit?: OfFruit
}

/** What sugar drew out of strained fruit, null where it was not measured. */
export interface OfFruit {
  readonly measured: ReadAmount | null
}

/** Bottles that left the shelf. */
export interface BottlesOut {
  readonly kind: 'bottles_out'
  readonly use: 'given' | 'opened'
  readonly bottles: readonly BottlesOf[]
}

/** What happened to a jar, without when. */
export type Happening =
  | Started
  | { readonly kind: 'shaken' }
  | Tasted
  | Added
  | Strained
  | Filtered
  | Gauged
  | Sweetened
  | FruitSugared
  | { readonly kind: 'taken_out'; readonly plants: readonly PlantOut[] }
  | Parted
  | PouredIn
  | Noted
  | { readonly kind: 'bottled'; readonly bottles: readonly BottlesOf[] }
  | BottlesOut
  | { readonly kind: 'opened' }
  | { readonly kind: 'emptied' }
  | { readonly kind: 'discarded' }
  | { readonly kind: 'renamed'; readonly name: string }
  /** To an hour of the day, an instant; null: to the day. */
  | { readonly kind: 'put_off'; readonly untilDay: IsoDay; readonly untilMs: number | null }

/** What is said about an earlier entry. */
export type Amendment =
  /** Puts `by` (of the same kind) in its place, and where `moved` is set, at that moment. */
  | {
      readonly kind: 'corrected'
      readonly of: number
      readonly by: Happening
      readonly moved: Moment | null
    }
  | { readonly kind: 'undone'; readonly of: number }

/** An instant and the day it was where its maker lives, so that moving zones moves no past day. */
export interface Moment {
  readonly atMs: number
  readonly day: IsoDay
  /** IANA name. */
  readonly zone: string
}

export interface Entry extends Moment {
  /** 1, 2, 3 … in order of entry: the entry's name within its jar. */
  readonly seq: number
  readonly enteredMs: number
  /** What the maker typed, option by option. */
  readonly typed: readonly (readonly [option: string, text: string])[]
  /** Which attempt to record something made it: the same attempt made again records nothing. */
  readonly attempt?: string
}

export type HappeningEntry = Entry & Happening
export type JarEntry = Entry & (Happening | Amendment)
export type HappeningKind = Happening['kind']
