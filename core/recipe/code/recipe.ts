import type { MaterialId } from '../../quantity/materials.ts'

/** A plant of a recipe, in whole numbers. */
export interface RecipePlant {
  /** Of the catalogue. */
  readonly id: string
  /** Dried, where the catalogue's is fresh. */
  readonly isDried: boolean
  readonly massMg: number
  /** Fruit or pieces, where it was counted; null where it was weighed. */
  readonly countTenths: number | null
  /** From the start to the day it goes in. */
  readonly addOnDays: number
}

/** At 20 °C. */
export interface RecipeSpirit {
  readonly volumeTenthMl: number
  readonly abvHundredthPercent: number
  /** What it was called, where a code knows it; left out: spirit. */
  readonly drink?: string
}

/** Of a material other than white sugar. */
export interface RecipeSweetening {
  readonly material: MaterialId
  readonly massTenthG: number
}

/** A batch without anything of its maker: amounts and days, whole numbers in core's own units. */
export interface Recipe {
  readonly plants: readonly RecipePlant[]
  readonly spirits: readonly RecipeSpirit[]
  /** Water that went in while it steeped. */
  readonly waterTenthG: number
  /** White sugar that went in while it steeped. */
  readonly sugarTenthG: number
  /** What else sweetened it then, each once; left out: nothing. */
  readonly sweetenings?: readonly RecipeSweetening[]
  /** What it is sweetened with after straining; left out: white sugar. */
  readonly sweetener?: MaterialId
  /** What goes in for the water then; left out: water. */
  readonly filler?: MaterialId
  /** What came out, or was wished for; null where neither is known. */
  readonly targets: { readonly abvHundredthPercent: number; readonly sugarTenthGPerL: number } | null
  /** From the start to straining; null: as long as the catalogue says. */
  readonly steep: { readonly fromDays: number; readonly byDays: number } | null
  readonly restDays: number | null
}

/** Tenths of a gram or a millilitre in a cubic metre: the most that can be typed. */
const MOST_TENTHS = 1e7
/** Twenty years. */
const MOST_DAYS = 7305

/** The range of every number of a recipe, as far as the grammar takes it. */
export const RANGES = {
  massMg: [1, 1e9],
  countTenths: [1, 1e6],
  addOnDays: [0, MOST_DAYS],
  volumeTenthMl: [1, MOST_TENTHS],
  spiritHundredthPercent: [10, 10_000],
  waterTenthG: [0, MOST_TENTHS],
  sugarTenthG: [0, MOST_TENTHS],
  sweeteningTenthG: [1, MOST_TENTHS],
  abvHundredthPercent: [10, 10_000],
  sugarTenthGPerL: [0, 12_000],
  days: [0, MOST_DAYS],
} as const satisfies Readonly<Record<string, readonly [least: number, most: number]>>
