import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { digits, plusMinusDigits } from '../../../core/quantity/measured/shown-digits.ts'
import { measuredOut, weighedOut } from '../../../core/recipe/tool-precision.ts'
import type { Format } from '../format.ts'
import type { Kitchen } from '../kitchen.ts'
import { dayText } from './day-text.ts'
import { cups, FLUID_OUNCE_ML, imperialPints, OUNCE_G, pounds, type Shown, TABLESPOON_ML } from './kitchen-measures.ts'

/** Keeps a number and its unit on one line. */
const NBSP = '\u00a0'

const number = (value: number, decimals: number): string => {
  const text = (Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value).toFixed(Math.max(0, decimals))
  const [whole = '', fraction] = text.replace('-', '−').split('.')
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, NBSP)
  return fraction === undefined ? grouped : `${grouped}.${fraction}`
}

/** Without zeros at the end of a fraction. */
const unpadded = (text: string): string => (text.includes('.') ? text.replace(/\.?0+$/, '') : text)

const plain = (value: number, maxDecimals = 3): string => unpadded(number(value, maxDecimals))

const shown = ({ value, plusMinus }: Measured, perUnit = 1): string => {
  const { roundedValue, decimals } = digits(value / perUnit, plusMinus / perUnit)
  return number(roundedValue, decimals)
}

const spread = ({ plusMinus }: Measured, perUnit = 1): string => {
  const { roundedValue, decimals } = plusMinusDigits(plusMinus / perUnit)
  return number(roundedValue, decimals)
}

/** As it is shown, so that two figures of one amount agree. */
const rounded = ({ value, plusMinus }: Measured): number => digits(value, plusMinus).roundedValue

const both = (amount: Measured): Shown => ({ exact: amount.value, shown: rounded(amount) })

/** In litres or kilograms: 999.7 ± 20 ml is 1.00 l. */
const isLarge = (amount: Measured): boolean => rounded(amount) >= 1000

const metricVolume = (volume: Measured): string =>
  isLarge(volume) ? `${shown(volume, 1000)}${NBSP}l` : `${shown(volume)}${NBSP}ml`

const metricMass = (mass: Measured): string =>
  isLarge(mass) ? `${shown(mass, 1000)}${NBSP}kg` : `${shown(mass)}${NBSP}g`

/** Less than an eighth of the smallest unit is told in metric alone. */
const volumeIn = (kitchen: Kitchen) => (volume: Measured) => {
  const metric = metricVolume(volume)
  const volumeMl = both(volume)
  if (kitchen === 'us' && volumeMl.shown >= TABLESPOON_ML / 8) return `${cups(volumeMl)} (${metric})`
  if (kitchen === 'imperial' && volumeMl.shown >= FLUID_OUNCE_ML / 8) return `${imperialPints(volumeMl)} (${metric})`
  return metric
}

const massIn = (kitchen: Kitchen) => (mass: Measured) =>
  kitchen !== 'metric' && rounded(mass) >= OUNCE_G / 8
    ? `${pounds(both(mass))} (${metricMass(mass)})`
    : metricMass(mass)

/** English habits: a decimal point, a space between thousands, a space before the unit. */
export const englishFormat = (kitchen: Kitchen): Format => ({
  number,
  plain,
  volume: volumeIn(kitchen),
  mass: massIn(kitchen),
  pour: (volumeMl) => volumeIn(kitchen)(measuredOut(volumeMl)),
  weigh: (massG) => massIn(kitchen)(weighedOut(massG)),
  strength: (abv) => {
    const percent = `${unpadded(shown(abv))}${NBSP}%${NBSP}vol`
    // Twice the figure beside it, as labels have it.
    return kitchen === 'us' ? `${percent} (${number(2 * rounded(abv), 0)}${NBSP}proof)` : percent
  },
  sweetness: (sugar) => `${shown(sugar)}${NBSP}g/L`,
  temperature: ({ value }) =>
    kitchen === 'us'
      ? `${number(value * 1.8 + 32, 0)}${NBSP}°F (${number(value, 0)}${NBSP}°C)`
      : `${number(value, 0)}${NBSP}°C`,
  day: (day, words = dayText(day)) => words,
  moment: (_day, _minutes, words) => words,
  channel: () => 'a channel',
  give: {
    volume: (volume) => (isLarge(volume) ? `${spread(volume, 1000)}${NBSP}l` : `${spread(volume)}${NBSP}ml`),
    mass: (mass) => (isLarge(mass) ? `${spread(mass, 1000)}${NBSP}kg` : `${spread(mass)}${NBSP}g`),
    strength: (abv) => `${spread(abv)}${NBSP}%${NBSP}vol`,
    sweetness: (sugar) => `${spread(sugar)}${NBSP}g/L`,
    temperature: ({ plusMinus }) =>
      kitchen === 'us' ? `${number(plusMinus * 1.8, 0)}${NBSP}°F` : `${number(plusMinus, 0)}${NBSP}°C`,
  },
})
