import { usProofFromAbvPercent } from '../../../core/liquid/proof.ts'
import { digits, plusMinusDigits } from '../../../core/quantity/digits.ts'
import type { Measured } from '../../../core/quantity/measured.ts'
import { measuredOut, weighedOut } from '../../../core/recipe/by-tool.ts'
import type { Format } from '../format.ts'
import type { Kitchen } from '../kitchen.ts'

/** US cup, NIST Handbook 44 Appendix C. */
const CUP_ML = 236.5882365
const TABLESPOON_ML = CUP_ML / 16
const OUNCE_G = 28.349523125
/** Keeps a number and its unit on one line. */
const NBSP = '\u00a0'
const QUARTERS = ['', '¼', '½', '¾']

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

const spread = (plusMinus: number, perUnit = 1): string => {
  const { roundedValue, decimals } = plusMinusDigits(plusMinus / perUnit)
  return number(roundedValue, decimals)
}

const metricVolume = (volume: Measured): string => {
  const inLitres = volume.value >= 1000
  return inLitres ? `${shown(volume, 1000)}${NBSP}l` : `${shown(volume)}${NBSP}ml`
}

const metricMass = (mass: Measured): string =>
  mass.value >= 1000 ? `${shown(mass, 1000)}${NBSP}kg` : `${shown(mass)}${NBSP}g`

/** In quarters of a unit, at least one quarter. */
const inQuarters = (amount: number): string => {
  const quarters = Math.max(1, Math.round(amount * 4))
  const whole = Math.floor(quarters / 4)
  return [whole === 0 ? '' : `${whole}`, QUARTERS[quarters % 4]].filter((part) => part !== '').join(' ')
}

/** From so many cups a quarter of one is near enough. */
const MANY_CUPS = 8

/** Quarters of a cup and the spoons over, so that what is poured is within half a spoon. */
const cups = (volumeMl: number): string => {
  const spoons = volumeMl / TABLESPOON_ML
  if (spoons < 3.5) return `${inQuarters(spoons)}${NBSP}tbsp`
  const step = volumeMl < MANY_CUPS * CUP_ML ? 1 : 4
  const rounded = Math.round(spoons / step) * step
  const over = rounded % 4
  const amount = rounded - over
  const cup = `${inQuarters(amount / 16)}${NBSP}${amount > 16 ? 'cups' : 'cup'}`
  return over === 0 ? cup : `${cup} + ${over}${NBSP}tbsp`
}

const pounds = (massG: number): string => {
  const ounces = massG / OUNCE_G
  if (ounces < 15.75) return `${inQuarters(ounces)}${NBSP}oz`
  const whole = Math.round(ounces)
  return [`${Math.floor(whole / 16)}${NBSP}lb`, whole % 16 === 0 ? '' : `${whole % 16}${NBSP}oz`]
    .filter((part) => part !== '')
    .join(' ')
}

const volumeIn = (kitchen: Kitchen) => (volume: Measured) =>
  kitchen === 'us' && volume.value >= TABLESPOON_ML / 8
    ? `${cups(volume.value)} (${metricVolume(volume)})`
    : metricVolume(volume)

const massIn = (kitchen: Kitchen) => (mass: Measured) =>
  kitchen === 'us' && mass.value >= OUNCE_G / 8 ? `${pounds(mass.value)} (${metricMass(mass)})` : metricMass(mass)

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
    return kitchen === 'us' ? `${percent} (${number(usProofFromAbvPercent(abv.value), 0)}${NBSP}proof)` : percent
  },
  sweetness: (sugar) => `${shown(sugar)}${NBSP}g/L`,
  temperature: ({ value }) =>
    kitchen === 'us'
      ? `${number(value * 1.8 + 32, 0)}${NBSP}°F (${number(value, 0)}${NBSP}°C)`
      : `${number(value, 0)}${NBSP}°C`,
  give: {
    volume: ({ value, plusMinus }) =>
      value >= 1000 ? `${spread(plusMinus, 1000)}${NBSP}l` : `${spread(plusMinus)}${NBSP}ml`,
    mass: ({ value, plusMinus }) =>
      value >= 1000 ? `${spread(plusMinus, 1000)}${NBSP}kg` : `${spread(plusMinus)}${NBSP}g`,
    strength: ({ plusMinus }) => `${spread(plusMinus)}${NBSP}%${NBSP}vol`,
    sweetness: ({ plusMinus }) => `${spread(plusMinus)}${NBSP}g/L`,
    temperature: ({ plusMinus }) =>
      kitchen === 'us' ? `${number(plusMinus * 1.8, 0)}${NBSP}°F` : `${number(plusMinus, 0)}${NBSP}°C`,
  },
})
