import { CUP_ML, IMPERIAL_FLUID_OUNCE_ML, IMPERIAL_PINT_ML, OUNCE_G, POUND_G } from '../customary.ts'
import type { Measured } from '../measured/measured.ts'
import { digits } from '../measured/shown-digits.ts'
import type { UnitSystem } from '../read/parse-units.ts'

const TABLESPOONS_A_CUP = 16

const TABLESPOON_ML = CUP_ML / TABLESPOONS_A_CUP

const TEASPOONS_A_TABLESPOON = 3

const FLUID_OUNCES_A_PINT = 20

const OUNCES_A_POUND = 16

/**
 * The share of an amount that it may be rounded by: household measures hold what they say to within a twentieth (US practice,
 * from memory), and nobody pours a spoon more into four cups.
 */
const NEAR = 0.035

/** A measure that a household pours or weighs by. */
export type HouseholdUnit = 'cup' | 'tbsp' | 'tsp' | 'imp_pint' | 'imp_fl_oz' | 'lb' | 'oz'

/** So many of a measure, in whole eighths. */
export interface HouseholdPart {
  readonly count: number
  readonly unit: HouseholdUnit
}

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

/** What measuring cups show, in tablespoons: halves, quarters and eighths of a cup, then spoons. */
const CUP_STEPS = [8, 4, 2, 1, 0.5, 0.25]

/** Under so many tablespoons nothing is a quarter of a cup. */
const FEW_SPOONS = 3.5

/** Of cups a quarter, 4 tablespoons, is the least that they show. */
const QUARTER_CUP = 4

function spoons(amount: Shown): readonly HouseholdPart[] {
  const rounded = toStep(amount, [0.25])
  if (isNear(rounded, amount)) return [{ count: rounded, unit: 'tbsp' }]
  return [{ count: toStep(per(amount, 1 / TEASPOONS_A_TABLESPOON), [0.25, 0.125]), unit: 'tsp' }]
}

/** Cups as they are measured: spoons over only where cups, halves, quarters and eighths of them are not near. */
function cups(volumeMl: Measured): readonly HouseholdPart[] {
  const amount = shownOf(volumeMl, TABLESPOON_ML)
  if (amount.shown < FEW_SPOONS) return spoons(amount)
  const rounded = toStep(amount, CUP_STEPS)
  return parts(rounded, ['cup', 'tbsp'], [rounded % QUARTER_CUP, TABLESPOONS_A_CUP])
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
  if (amount.shown < NEARLY_A_POUND) return [{ count: toStep(amount, [1, 0.5, 0.25, 0.125]), unit: 'oz' }]
  const rounded = toStep(amount, [1])
  return parts(rounded, ['lb', 'oz'], [rounded % OUNCES_A_POUND, OUNCES_A_POUND])
}

/** Less than an eighth of the smallest measure is told in metric alone. */
const LEAST = 1 / 8

const isTold = (amount: Measured, unit: number): boolean => shownOf(amount, unit).shown >= LEAST

/** What is poured, ml, in the measures of a household; null where that is metric. */
export function householdVolume(volumeMl: Measured, system: UnitSystem): readonly HouseholdPart[] | null {
  if (system === 'us' && isTold(volumeMl, TABLESPOON_ML)) return cups(volumeMl)
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
  tsp: TABLESPOON_ML / TEASPOONS_A_TABLESPOON,
  imp_pint: IMPERIAL_PINT_ML,
  imp_fl_oz: IMPERIAL_FLUID_OUNCE_ML,
  lb: POUND_G,
  oz: OUNCE_G,
}

/** What the measures come to, ml or g. */
const householdAmount = (told: readonly HouseholdPart[]): number =>
  told.reduce((sum, { count, unit }) => sum + count * CANONICAL[unit], 0)

const EIGHTHS = 8

const DENOMINATORS: Readonly<Record<number, string>> = {
  1: '1/8',
  2: '1/4',
  3: '3/8',
  4: '1/2',
  5: '5/8',
  6: '3/4',
  7: '7/8',
}

const countTyped = (count: number): string => {
  const whole = Math.floor(count)
  const part = DENOMINATORS[Math.round((count - whole) * EIGHTHS)] ?? ''
  return [whole === 0 ? '' : `${whole}`, part].filter((text) => text !== '').join(' ')
}

const TYPED: { readonly [Unit in HouseholdUnit]: string } = {
  cup: 'cups',
  tbsp: 'tbsp',
  tsp: 'tsp',
  imp_pint: 'imp pints',
  imp_fl_oz: 'imp fl oz',
  lb: 'lb',
  oz: 'oz',
}

const typedUnit = ({ count, unit }: HouseholdPart): string =>
  count <= 1 && (unit === 'cup' || unit === 'imp_pint') ? TYPED[unit].replace(/s$/, '') : TYPED[unit]

/** As somebody types it: `4 1/4 cups 2 tbsp`. */
export const householdTyped = (told: readonly HouseholdPart[]): string =>
  told.map((part) => `${countTyped(part.count)} ${typedUnit(part)}`).join(' ')
