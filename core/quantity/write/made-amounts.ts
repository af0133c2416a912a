import { type MaterialId, materialOf, materialText, USUAL_MATERIAL } from '../materials.ts'
import type { Measured } from '../measured/measured.ts'
import type { Mass, Ratio, Strength, SweeteningRead, Sweetness, Volume, WaterRead } from '../quantities.ts'
import { parseSugar } from '../read/parse-sugar.ts'
import type { UnitSystem } from '../read/parse-units.ts'
import { parseVolume } from '../read/parse-volume.ts'
import { householdMass, householdVolume } from './household.ts'
import { householdTyped } from './household-typed.ts'
import { sizeTold } from './size-told.ts'

/** The most that half a digit can be, as a share of the value, as it is read. */
const HALF_DIGIT_CAP = 0.05

/** Half of the last digit that a number is written with. */
function halfDigit(value: number): number {
  const [, decimals = ''] = String(value).split('.')
  return Math.min(0.5 * 10 ** -decimals.length, HALF_DIGIT_CAP * value)
}

/** An amount of our own as it is read where it is typed: 0.1 to 1,000,000 ml. */
export const millilitres = (volumeMl: number): Volume => ({
  kind: 'volume',
  volumeMl,
  halfDigitMl: halfDigit(volumeMl),
  statedMl: null,
  atC: null,
  unit: 'ml',
  assumed: [],
})

/** The same as a cook types it, from a litre on in litres: `330 ml`, `1.51 l`; in cups `1 3/4 cups 2 tbsp`, as it is shown. */
export function volumeTyped(amount: Measured, system: UnitSystem, told = householdVolume(amount, system)): string {
  if (told !== null) return householdTyped(told)
  const { value } = amount
  return value < 1000 ? `${value} ml` : `${Number((value / 1000).toPrecision(12))} l`
}

/** That, which is read as it is because it was. */
function kitchenVolume(amount: Measured, system: UnitSystem): Volume {
  const isMetric = householdVolume(amount, system) === null
  return isMetric && amount.value < 1000 ? millilitres(amount.value) : parseVolume(volumeTyped(amount, system))
}

/** An amount of our own as it is read where it is typed: 0.01 to 1,000,000 g. */
export const grams = (massG: number): Mass => ({
  kind: 'mass',
  massG,
  halfDigitG: halfDigit(massG),
  statedG: null,
  byVolume: false,
  unit: 'g',
  assumed: [],
})

/** A strength of our own as it is read where it is typed: 0.1 to 100 % vol at 20 °C. */
export const percentVol = (abvPercent: number): Strength => ({
  kind: 'strength',
  abvPercent,
  halfDigitPercent: halfDigit(abvPercent),
  statedPercent: null,
  atC: null,
  unit: 'percent',
  assumed: [],
})

/** A sweetness of our own as it is read where it is typed: 0 to 1,200 g/L. */
export const gramsPerLitre = (sugarGPerL: number): Sweetness => ({
  kind: 'sweetness',
  sugarGPerL,
  halfDigitGPerL: halfDigit(sugarGPerL),
  statedGPerL: null,
  unit: 'g/l',
  assumed: [],
})

/** A ratio of our own as it is read where it is typed: 0.01 to 20 g of sugar to each gram of water. */
export const sugarToWater = (sugarGPerWaterG: number): Ratio => ({ kind: 'ratio', sugarGPerWaterG, assumed: [] })

/** Water of our own, or a juice that stands for it, as it is read where it is typed. */
const asWater = (amount: Volume, juice: MaterialId | null): WaterRead => {
  if (juice === null) return { waters: [amount], juices: [] }
  const gPerMl = materialOf(juice).pouredGPerMl
  const poured: SweeteningRead = {
    kind: 'mass',
    massG: amount.volumeMl * gPerMl,
    halfDigitG: amount.halfDigitMl * gPerMl,
    statedG: null,
    byVolume: true,
    unit: amount.unit,
    assumed: ['syrup_by_volume'],
    material: juice,
  }
  return { waters: [], juices: [poured] }
}

/** So many millilitres of it. */
export const waterMillilitres = (volumeMl: number, juice: MaterialId | null = null): WaterRead =>
  asWater(millilitres(volumeMl), juice)

/** The same as a cook says it in these units. */
export const kitchenWater = (volumeMl: Measured, juice: MaterialId | null, system: UnitSystem): WaterRead =>
  asWater(kitchenVolume(volumeMl, system), juice)

/** So many grams of what sweetens. */
export const sugarGrams = (massG: number, material: MaterialId = USUAL_MATERIAL): SweeteningRead => ({
  ...grams(massG),
  material,
})

/** The same as a cook says it in these units: `1 lb 4 oz`. */
export function kitchenSugar(massG: Measured, material: MaterialId, system: UnitSystem): SweeteningRead {
  const told = householdMass(massG, system)
  return told === null
    ? sugarGrams(massG.value, material)
    : parseSugar(`${householdTyped(told)}${materialText(material)}`)
}

/** The size of a bottle, in the unit it was told in. */
export function sizeOf(volumeMl: number): Volume {
  const told = sizeTold(volumeMl)
  return told === null ? millilitres(Number(volumeMl.toPrecision(4))) : parseVolume(told)
}
