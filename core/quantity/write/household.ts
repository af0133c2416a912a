import { CUP_ML, IMPERIAL_FLUID_OUNCE_ML, IMPERIAL_PINT_ML, OUNCE_G, POUND_G } from '../customary.ts'
import type { Material } from '../material.ts'
import type { Measured } from '../measured/measured.ts'
import { digits } from '../measured/shown-digits.ts'
import type { UnitSystem } from '../read/parse-units.ts'
import { type HouseholdPart, type HouseholdUnit, isWhole } from './household-typed.ts'

const TABLESPOONS_A_CUP = 16

const TABLESPOON_ML = CUP_ML / TABLESPOONS_A_CUP

export const TEASPOONS_A_TABLESPOON = 3

const FLUID_OUNCES_A_PINT = 20

const OUNCES_A_POUND = 16

/**
 * The share of an amount that it may be rounded by: household measures hold what they say to within a twentieth (US practice,
 * from memory), and nobody pours a spoon more into four cups.
 */
const NEAR = 0.035

/** An amount, and what the metric figure beside it shows of it. */
interface Shown {
  readonly exact: number
  readonly shown: number
}

const shownOf = ({ value, plusMinus }: Measured, unit: number): Shown => ({
  exact: value / unit,
  shown: digits(value, plusMinus).roundedValue / unit,
})

const per = ({ exact, shown }: Shown, unit: number): Shown => ({ exact: exact / unit, shown: shown / unit })

const isNear = (amount: number, { shown }: Shown): boolean => Math.abs(amount - shown) <= NEAR * shown

/** Rounded to the coarsest of these steps that is near what is shown; to the finest where none is. */
const toStep = (amount: Shown, steps: readonly number[]): number => {
  const rounded = steps.flatMap((step) =>
    [amount.exact, amount.shown].map((each) => Math.max(step, Math.round(each / step) * step)),
  )
  return rounded.find((each) => isNear(each, amount)) ?? rounded.at(-1)!
}

/** So many of the larger measure, and the rest in the smaller one. */
const parts = (
  inSmaller: number,
  [larger, smaller]: readonly [HouseholdUnit, HouseholdUnit],
  [over, perLarger]: readonly [over: number, perLarger: number],
): readonly HouseholdPart[] =>
  [
    { count: (inSmaller - over) / perLarger, unit: larger },
    { count: over, unit: smaller },
  ].filter(({ count }) => count > 0)

/** Under so many tablespoons a quarter of a cup is not near. */
const FEW_SPOONS = 3.75

/** Under so many tablespoons nothing but teaspoons is told. */
const ONE_SPOON = 0.95

/** A quarter of a cup, in tablespoons: the least that cups are told in. */
const QUARTER_CUP = 4

/** What a set of cups shows, in tablespoons: halves, quarters, thirds and eighths of one; a spoon beside them is a whole one. */
const CUP_STEPS = [8, 4, 16 / 3, 2, 1]

/** And under half a cup half a spoon is told. */
const HALF_CUP = 7.75
const SMALL_CUP_STEPS = [...CUP_STEPS, 0.5]

/** Teaspoons are made in quarters, and one of an eighth; nobody fills more than three of them. */
const TEASPOON_STEPS = [0.25]
const LEAST_TEASPOON_STEPS = [0.25, 0.125]

/** Tablespoons in halves; where none is near, teaspoons beside them, in halves. */
const TABLESPOON_STEPS = [0.5, 1 / TEASPOONS_A_TABLESPOON, 0.5 / TEASPOONS_A_TABLESPOON]

function spoons(amount: Shown): readonly HouseholdPart[] {
  const small = per(amount, 1 / TEASPOONS_A_TABLESPOON)
  if (amount.shown < ONE_SPOON)
    return [{ count: toStep(small, small.shown < 1 ? LEAST_TEASPOON_STEPS : TEASPOON_STEPS), unit: 'tsp' }]
  const rounded = toStep(amount, TABLESPOON_STEPS)
  if (isWhole(2 * rounded)) return [{ count: rounded, unit: 'tbsp' }]
  const whole = Math.floor(rounded)
  const over = Math.round(2 * TEASPOONS_A_TABLESPOON * (rounded - whole)) / 2
  return parts(TEASPOONS_A_TABLESPOON * whole + over, ['tbsp', 'tsp'], [over, TEASPOONS_A_TABLESPOON])
}

/** Cups as they are measured: spoons beside them only where halves, quarters and thirds of them are not near. */
function cups(volumeMl: Measured): readonly HouseholdPart[] {
  const amount = shownOf(volumeMl, TABLESPOON_ML)
  if (amount.shown < FEW_SPOONS) return spoons(amount)
  return cupsAndSpoons(toStep(amount, amount.shown < HALF_CUP ? SMALL_CUP_STEPS : CUP_STEPS))
}

const cupsAndSpoons = (tablespoons: number): readonly HouseholdPart[] =>
  isWhole(2 * tablespoons)
    ? parts(tablespoons, ['cup', 'tbsp'], [tablespoons % QUARTER_CUP, TABLESPOONS_A_CUP])
    : [{ count: tablespoons / TABLESPOONS_A_CUP, unit: 'cup' }]

/** Of the ± of a filled cup so much is left to rounding. Judgement. */
const ROUNDED_SHARE = 0.7

/** Halves, quarters and thirds of a cup; where none is near, whole spoons beside them: pairs of them from a cup on. */
function scoops(amount: Shown, filled: number): number {
  const off = (each: number): number => Math.abs(each / amount.shown - 1)
  const told = [8, 4, 16 / 3].map((step) => toStep(amount, [step]))
  const nearest = told.reduce((one, other) => (off(other) < off(one) ? other : one))
  const scooped = told.find((each) => off(each) <= NEAR) ?? (off(nearest) <= ROUNDED_SHARE * filled ? nearest : null)
  return scooped ?? toStep(amount, [amount.shown < TABLESPOONS_A_CUP ? 1 : 2])
}

/** What sweetens, g, as US cups and spoons of it are filled, as near as their ± carries; null of less than they measure. */
export function householdPoured(
  massG: number,
  { pouredGPerMl, pouredPlusMinusShare }: Pick<Material, 'pouredGPerMl' | 'pouredPlusMinusShare'>,
): readonly HouseholdPart[] | null {
  const volumeMl = { value: massG / pouredGPerMl, plusMinus: 0 }
  if (!isTold(volumeMl, TEASPOON_ML)) return null
  const amount = shownOf(volumeMl, TABLESPOON_ML)
  return amount.shown < FEW_SPOONS ? spoons(amount) : cupsAndSpoons(scoops(amount, pouredPlusMinusShare))
}

/** Under so many fluid ounces a quarter of one is told. */
const FEW_OUNCES = 5

/** In fluid ounces: a quarter of a pint, as jugs show it, then ounces. */
const PINT_STEPS = [5, 2, 1, 0.5, 0.25]

function imperialPints(volumeMl: Measured): readonly HouseholdPart[] {
  const amount = shownOf(volumeMl, IMPERIAL_FLUID_OUNCE_ML)
  if (amount.shown < FEW_OUNCES) return [{ count: toStep(amount, [0.25, 0.125]), unit: 'imp_fl_oz' }]
  const rounded = toStep(amount, PINT_STEPS)
  return parts(rounded, ['imp_pint', 'imp_fl_oz'], [rounded % FLUID_OUNCES_A_PINT, FLUID_OUNCES_A_PINT])
}

/** From so many ounces on pounds are told. */
const NEARLY_A_POUND = 15.75

function pounds(massG: Measured): readonly HouseholdPart[] {
  const amount = shownOf(massG, OUNCE_G)
  const least = amount.shown < 1 ? [0.125] : []
  if (amount.shown < NEARLY_A_POUND) return [{ count: toStep(amount, [1, 0.5, 0.25, ...least]), unit: 'oz' }]
  const rounded = toStep(amount, [1])
  return parts(rounded, ['lb', 'oz'], [rounded % OUNCES_A_POUND, OUNCES_A_POUND])
}

/** Less than an eighth of the smallest measure is told in metric alone. */
const LEAST = 1 / 8
const TEASPOON_ML = TABLESPOON_ML / TEASPOONS_A_TABLESPOON

const isTold = (amount: Measured, unit: number): boolean => shownOf(amount, unit).shown >= LEAST

/** What is poured, ml, in the measures of a household; null where that is metric. */
export function householdVolume(volumeMl: Measured, system: UnitSystem): readonly HouseholdPart[] | null {
  if (system === 'us' && isTold(volumeMl, TEASPOON_ML)) return cups(volumeMl)
  return system === 'imperial' && isTold(volumeMl, IMPERIAL_FLUID_OUNCE_ML) ? imperialPints(volumeMl) : null
}

/** What is weighed, g, in pounds and ounces; null where that is metric. */
export const householdMass = (massG: Measured, system: UnitSystem): readonly HouseholdPart[] | null =>
  system !== 'metric' && isTold(massG, OUNCE_G) ? pounds(massG) : null

/** A spoon more, until there is enough: no household measure is further from what it rounds. */
const MORE_SHARES = Array.from({ length: 41 }, (_, percent) => 1 + percent / 100)

/** The same where less than that would not do; what is rounded is rounded up. */
export function householdAtLeast(volumeMl: Measured, system: UnitSystem): readonly HouseholdPart[] | null {
  const { value, plusMinus } = volumeMl
  const found = MORE_SHARES.map((share) => householdVolume({ value: share * value, plusMinus }, system))
  return found.find((told) => told === null || householdAmount(told) >= value * (1 - 1e-9)) ?? null
}

const CANONICAL: { readonly [Unit in HouseholdUnit]: number } = {
  cup: CUP_ML,
  tbsp: TABLESPOON_ML,
  tsp: TEASPOON_ML,
  imp_pint: IMPERIAL_PINT_ML,
  imp_fl_oz: IMPERIAL_FLUID_OUNCE_ML,
  lb: POUND_G,
  oz: OUNCE_G,
}

/** What the measures come to, ml or g. */
const householdAmount = (told: readonly HouseholdPart[]): number =>
  told.reduce((sum, { count, unit }) => sum + count * CANONICAL[unit], 0)
