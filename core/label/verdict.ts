import { categories } from './categories.ts'
import type { Between, Category, Condition, Missing } from './category.ts'
import type { Region } from './parse-region.ts'

/** A finished drink as a label counts it; null where it is not known. */
export interface JudgedDrink {
  readonly abvPercent: number
  readonly invertGPerL: number
  readonly sugarMassPercent: number
  /** Ids of all its plants; null where it was not said, or where one is not in the catalogue. */
  readonly plants: readonly string[] | null
  readonly plantGPerL: number | null
  readonly steepDays: number | null
}

export interface Verdict {
  readonly category: Category
  /** The sugar limit that holds for these plants. */
  readonly leastInvertGPerL: number | null
  readonly meets: boolean
  readonly missing: readonly Missing[]
}

/** Rounding in the last digits must not push a drink across an edge. */
const SLACK = 1e-9

/**
 * Invert sugar to 0.1 g/L, so that what the law calls 100 g is what 95 g of sucrose become: 95 × 360.31/342.30 is
 * 99.998, and the limits are whole grams. 94.9 g become 99.9 and do not do.
 */
const countedInvert = (gPerL: number): number => Math.round(gPerL * 10) / 10

const madeOnlyOf = (plants: readonly string[] | null, allowed: readonly string[]): boolean =>
  plants !== null && plants.length > 0 && plants.every((id) => allowed.includes(id))

const under = (value: number, { least }: Between): boolean => least !== null && value < least - SLACK
const over = (value: number, { most }: Between): boolean => most !== null && value > most + SLACK
const isBetween = (value: number | null, limits: Between): boolean =>
  value !== null && !under(value, limits) && !over(value, limits)

/** Conditions that the drink is not shown to meet. */
const unshown = (conditions: readonly Condition[], category: Category, drink: JudgedDrink): readonly Condition[] =>
  conditions.filter(
    (condition) =>
      !(condition === 'plant_amount' && isBetween(drink.plantGPerL, category.plantGPerL)) &&
      !(condition === 'steep_time' && isBetween(drink.steepDays, category.steepDays)),
  )

/** Whether a drink may carry a category's name, and if not, what it lacks. */
export function verdict(drink: JudgedDrink, category: Category): Verdict {
  const invertGPerL = countedInvert(drink.invertGPerL)
  const exceptions = category.exceptions.filter(({ onlyOf }) => madeOnlyOf(drink.plants, onlyOf))
  const granted = exceptions.find(({ also }) => also.length === 0)
  const limits = granted ? { ...category.invertGPerL, least: granted.leastInvertGPerL } : category.invertGPerL
  const conditional = exceptions.find((each) => !under(invertGPerL, { least: each.leastInvertGPerL, most: null }))
  const isDry = under(invertGPerL, limits)
  const isDryByMass =
    category.leastSugarMassPercent !== null && drink.sugarMassPercent < category.leastSugarMassPercent - SLACK
  const missing: readonly Missing[] = [
    ...(under(drink.abvPercent, category.abvPercent) ? (['stronger'] as const) : []),
    ...(over(drink.abvPercent, category.abvPercent) ? (['weaker'] as const) : []),
    ...(isDry && conditional ? conditional.also : isDry || isDryByMass ? (['sweeter'] as const) : []),
    ...(over(invertGPerL, category.invertGPerL) ? (['drier'] as const) : []),
    ...unshown(category.also, category, drink),
  ]
  return { category, leastInvertGPerL: limits.least, meets: missing.length === 0, missing }
}

/** The names that come into question for a drink, each with its verdict; those of other plants are left out. */
export const verdicts = (drink: JudgedDrink, regions: readonly Region[]): readonly Verdict[] =>
  categories
    .filter(({ region, onlyOf }) => regions.includes(region) && (onlyOf === null || madeOnlyOf(drink.plants, onlyOf)))
    .map((category) => verdict(drink, category))
