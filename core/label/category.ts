import type { Region } from './parse-region.ts'
import type { Cited } from './sources.ts'

/** What strength and sweetness do not show, and a category asks for besides. */
export type Condition =
  | 'cherry_spirit_only'
  | 'plant_amount'
  | 'steep_time'
  | 'made_in_area'
  /** Natural aniseed flavour beside the sloes. */
  | 'aniseed_flavour'
  /** Mainly of whole green walnuts, not cut ones. */
  | 'whole_walnuts'

/** What stands between a drink and a category. */
export type Missing = 'stronger' | 'weaker' | 'sweeter' | 'drier' | Condition

/** A lower sugar limit for a drink of nothing else than these plants. */
export interface SugarException extends Cited {
  readonly leastInvertGPerL: number
  readonly onlyOf: readonly string[]
  readonly also: readonly Condition[]
}

/** At least and at most; null where the rule sets none. */
export interface Between {
  readonly least: number | null
  readonly most: number | null
}

/** A legal name and what a drink must be to carry it. */
export interface Category extends Cited {
  readonly id: CategoryId
  readonly region: Region
  readonly abvPercent: Between
  /** Counted as invert sugar. */
  readonly invertGPerL: Between
  /** Sugar as a share of the whole drink's mass, %. */
  readonly leastSugarMassPercent: number | null
  readonly exceptions: readonly SugarException[]
  /** Ids of plants: the drink is of one or more of these and nothing else; null: of any. */
  readonly onlyOf: readonly string[] | null
  readonly also: readonly Condition[]
  /** Of a product file: plant in a litre of the finished drink, and days of steeping. */
  readonly plantGPerL: Between
  readonly steepDays: Between
}

export type CategoryId =
  | 'eu_spirit_drink'
  | 'eu_bitter'
  | 'eu_liqueur'
  | 'eu_creme_de'
  | 'eu_creme_de_cassis'
  | 'eu_nocino'
  | 'eu_sloe'
  | 'us_liqueur'
  | 'uk_liqueur'
  | 'gi_sorrento'
  | 'gi_mirto'
  | 'gi_genepi'
  | 'gi_pacharan'
