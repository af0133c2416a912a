import type { HazardKey } from './evidence/hazards.ts'
import type { Preparation } from './evidence/preparation.ts'
import type { SourceKey } from './evidence/sources.ts'
import type { Trust } from './evidence/trust.ts'

export type BotanicalKind =
  | 'citrus'
  | 'coffee_tea_cocoa'
  | 'root'
  | 'herb'
  | 'spice'
  | 'bitter'
  | 'flower'
  | 'berry'
  | 'fruit'
  | 'vegetable'
  | 'nut'
  | 'wood'

export type PlantState = 'fresh' | 'dried' | 'roasted' | 'cured'
export type PlantCut = 'whole' | 'cracked' | 'ground'

/** What is counted; `each` is the fruit or berry itself, `small` and `medium` are sizes of it. */
export type PieceKind =
  | 'each'
  | 'small'
  | 'medium'
  | 'bean'
  | 'berry'
  | 'bunch'
  | 'clove'
  | 'cone'
  | 'cup'
  | 'finger'
  | 'head'
  | 'leaf'
  | 'nut'
  | 'pinch'
  | 'pod'
  | 'slice'
  | 'sprig'
  | 'stalk'
  | 'star'
  | 'stick'
  | 'strip'
  | 'teaspoon'
  | 'thumb'

export interface AmountRange {
  readonly min: number
  readonly max: number
  readonly trust: Trust
}

/** A share by mass, 0 to 1. */
export interface SourcedShare {
  readonly value: number
  readonly trust: Trust
  readonly sources: readonly SourceKey[]
  /** Number of the row in USDA's table where the figure was read or, where it is from memory, is to be read. */
  readonly ndb: string | null
  readonly range: readonly [number, number] | null
  /** What it was estimated after. */
  readonly proxyOf: string | null
}

/** Why sugars are not counted. */
export type NoSugars = 'below_3_percent' | 'not_found' | 'stays_in_kernel'

/** Grams in a litre of the spirit used for steeping, before anything is added. */
export interface Dose {
  readonly minGPerL: number
  readonly typicalGPerL: number
  readonly maxGPerL: number
  readonly trust: Trust
}

/** Limits of one hazard in one plant add up with the limits of that hazard in others. */
export type LimitKey = HazardKey | 'bitterness' | 'eugenol' | 'anethole' | 'linalool' | 'camphor'

export interface Limit {
  readonly key: LimitKey
  readonly gPerLSpirit: number
  readonly trust: Trust
}

export interface TimesDays {
  readonly tasteFrom: number
  readonly usualMin: number
  readonly usualMax: number
  /** Strain by then; null where no harm is known later. */
  readonly latest: number | null
  readonly restMin: number
  readonly restMax: number
  readonly trust: Trust
  /** Taken over from a relative, not from habit with this plant. */
  readonly byAnalogy: boolean
}

export interface ZestGPerFruit {
  readonly strips: readonly [number, number]
  readonly grated: readonly [number, number]
  /** Half of the 95 % interval, as a share of the mean. */
  readonly plusMinusShare: number
  readonly trust: Trust
}

/** A plant, in the form in which it is weighed in. */
export interface Botanical {
  readonly id: string
  readonly kind: BotanicalKind
  readonly names: {
    readonly title: string
    readonly en: readonly string[]
    readonly it: readonly string[]
    readonly latin: readonly string[]
  }
  readonly form: { readonly state: PlantState; readonly cut: PlantCut | null }
  /** Grams of the dried plant that stand for one gram of the fresh; null where no figure is known. */
  readonly driedPerFresh: { readonly factor: number; readonly trust: Trust } | null
  /** Needs a wide jar and pressing under. */
  readonly bulky: boolean
  /** Usual months in the northern hemisphere (common practice); null: all year. */
  readonly monthsNorth: readonly number[] | null
  readonly waterFraction: SourcedShare
  readonly sugarsFraction: SourcedShare | null
  /** Why there is no figure; null where there is one. */
  readonly noSugars: NoSugars | null
  /** What of the plant dissolves beside those sugars, as a share of it by mass. */
  readonly extractFraction: AmountRange
  /** The share of the plant's water that joins the liquid. */
  readonly waterExchange: AmountRange
  readonly dose: Dose
  /** More than this is said, not refused. */
  readonly warnAbove: Limit | null
  /** More than this is refused. */
  readonly ceiling: Limit | null
  readonly timesDays: TimesDays
  /** Spirit that is used with it, % vol. */
  readonly spiritPercent: AmountRange
  readonly zestGPerFruit: ZestGPerFruit | null
  /** Mass of one fruit of which the zest is taken, g. */
  readonly fruitG: readonly [number, number] | null
  readonly pieces: readonly {
    readonly piece: PieceKind
    readonly minG: number
    readonly maxG: number
    readonly trust: Trust
  }[]
  /** Mixed liquid left in the drained, lightly pressed plants, per gram as weighed in. */
  readonly retainedMlPerG: AmountRange
  readonly hazards: readonly HazardKey[]
  readonly preparation: readonly Preparation[]
}
