import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { type Digits, digits, spreadDigits } from '../../../core/quantity/measured/shown-digits.ts'
import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'
import { kitchenRounded, kitchenSweetness, measuredOut, weighedOut } from '../../../core/recipe/tool-precision.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Kitchen } from '../messages/kitchen.ts'
import { dayText, plural } from './phrases.ts'

/** US cup, NIST Handbook 44 Appendix C. */
const CUP_ML = 236.5882365

const TABLESPOON_ML = CUP_ML / 16

/** Imperial pint and its fluid ounce, an eighth and a 160th of a gallon: UK Weights and Measures Act 1985, Schedule 1. */
const PINT_ML = 568.26125

const FLUID_OUNCES_A_PINT = 20

const FLUID_OUNCE_ML = PINT_ML / FLUID_OUNCES_A_PINT

export const OUNCE_G = 28.349523125

/** Keeps a number and its unit on one line. */
const NBSP = '\u00a0'

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']

/**
 * The share of an amount that it may be rounded by: household measures hold what they say to within a twentieth (US practice,
 * from memory), and nobody pours a spoon more into four cups.
 */
const NEAR = 0.035

/** An amount, and what the metric figure beside it shows of it. */
export interface Shown {
  readonly exact: number
  readonly shown: number
}

const per = ({ exact, shown }: Shown, unit: number): Shown => ({ exact: exact / unit, shown: shown / unit })

const isNear = (amount: number, { shown }: Shown): boolean => Math.abs(amount - shown) <= NEAR * shown

/** Rounded to the coarsest of these steps that is near what is shown; to the finest where none is. */
const toStep = (amount: Shown, steps: readonly number[]): number => {
  const rounded = steps.flatMap((step) =>
    [amount.exact, amount.shown].map((each) => Math.max(step, Math.round(each / step) * step)),
  )
  return rounded.find((each) => isNear(each, amount)) ?? rounded.at(-1)!
}

/** `1 ½`, of whole eighths. */
const mixed = (amount: number): string => {
  const whole = Math.floor(amount)
  const part = EIGHTHS[Math.round((amount - whole) * 8)] ?? ''
  return [whole === 0 ? '' : `${whole}`, part].filter((text) => text !== '').join(' ')
}

/** `2 ½`: in the eighths that cups and spoons are marked with; never nothing of something. */
export const inEighths = (amount: number): string => mixed(Math.max(amount, 1 / 8))

/** What measuring cups show, in tablespoons: halves, quarters and eighths of a cup, then spoons. */
const CUP_STEPS = [8, 4, 2, 1, 0.5, 0.25]

const TEASPOONS = 3

/** Under so many tablespoons nothing is a quarter of a cup. */
const spoonsText = (spoons: Shown): string => {
  const rounded = toStep(spoons, [0.25])
  return isNear(rounded, spoons)
    ? `${mixed(rounded)}${NBSP}tbsp`
    : `${mixed(toStep(per(spoons, 1 / TEASPOONS), [0.25, 0.125]))}${NBSP}tsp`
}

/** Cups as they are measured: spoons over only where cups, halves, quarters and eighths of them are not near. */
export const cups = (volumeMl: Shown): string => {
  const spoons = per(volumeMl, TABLESPOON_ML)
  if (spoons.shown < 3.5) return spoonsText(spoons)
  const rounded = toStep(spoons, CUP_STEPS)
  const over = rounded % 4
  const amount = rounded - over
  if (amount === 0) return `${mixed(over)}${NBSP}tbsp`
  const cup = `${mixed(amount / 16)}${NBSP}${amount > 16 ? 'cups' : 'cup'}`
  return over === 0 ? cup : `${cup} + ${mixed(over)}${NBSP}tbsp`
}

/** Under so many fluid ounces a quarter of one is told. */
const FEW_OUNCES = 5

/** In fluid ounces: a quarter of a pint, as jugs show it, then ounces. */
const PINT_STEPS = [5, 2, 1, 0.5, 0.25]

/** Imperial pints and the fluid ounces over. They say `imp`, because pints and ounces that are typed bare are US ones. */
const imperialPints = (volumeMl: Shown): string => {
  const ounces = per(volumeMl, FLUID_OUNCE_ML)
  if (ounces.shown < FEW_OUNCES) return `${mixed(toStep(ounces, [0.25, 0.125]))}${NBSP}imp${NBSP}fl${NBSP}oz`
  const rounded = toStep(ounces, PINT_STEPS)
  const over = rounded % FLUID_OUNCES_A_PINT
  const pints = (rounded - over) / FLUID_OUNCES_A_PINT
  if (pints === 0) return `${mixed(over)}${NBSP}imp${NBSP}fl${NBSP}oz`
  const pint = `${pints}${NBSP}imp${NBSP}${plural(pints, 'pint')}`
  return over === 0 ? pint : `${pint} + ${mixed(over)}${NBSP}fl${NBSP}oz`
}

export const pounds = (massG: Shown): string => {
  const ounces = per(massG, OUNCE_G)
  if (ounces.shown < 15.75) return `${mixed(toStep(ounces, [1, 0.5, 0.25, 0.125]))}${NBSP}oz`
  const whole = toStep(ounces, [1])
  return [`${Math.floor(whole / 16)}${NBSP}lb`, whole % 16 === 0 ? '' : `${whole % 16}${NBSP}oz`]
    .filter((part) => part !== '')
    .join(' ')
}

const number = (value: number, decimals: number): string => {
  const text = (Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value).toFixed(Math.max(0, decimals))
  const [whole = '', fraction] = text.replace('-', '−').split('.')
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, NBSP)
  return fraction === undefined ? grouped : `${grouped}.${fraction}`
}

/** Without zeros at the end of a fraction. */
const unpadded = (text: string): string => (text.includes('.') ? text.replace(/\.?0+$/, '') : text)

const plain = (value: number, maxDecimals = 3): string => unpadded(number(value, maxDecimals))

const written = ({ roundedValue, decimals }: Digits): string => number(roundedValue, decimals)

const shown = ({ value, plusMinus }: Measured, perUnit = 1): string =>
  written(digits(value / perUnit, plusMinus / perUnit))

const beside = ({ value, plusMinus }: Measured, perUnit = 1) => {
  const spread = spreadDigits(value / perUnit, plusMinus / perUnit)
  return { value: written(spread.value), plusMinus: written(spread.plusMinus) }
}

/** As it is shown, so that two figures of one amount agree. */
const rounded = ({ value, plusMinus }: Measured): number => digits(value, plusMinus).roundedValue

const both = (amount: Measured): Shown => ({ exact: amount.value, shown: rounded(amount) })

/** In litres or kilograms: 999.7 ± 20 ml is 1.00 l. */
const isLarge = (amount: Measured): boolean => rounded(amount) >= 1000

interface Units {
  readonly small: string
  readonly large: string
}
const VOLUME: Units = { small: 'ml', large: 'l' }
const MASS: Units = { small: 'g', large: 'kg' }

const metric = (amount: Measured, { small, large }: Units): string =>
  isLarge(amount) ? `${shown(amount, 1000)}${NBSP}${large}` : `${shown(amount)}${NBSP}${small}`

/** The value with the decimals of its ±, and the ±. */
const metricBeside = (amount: Measured, { small, large }: Units) => {
  const { value, plusMinus } = beside(amount, isLarge(amount) ? 1000 : 1)
  const unit = `${NBSP}${isLarge(amount) ? large : small}`
  return { value: `${value}${unit}`, plusMinus: `${plusMinus}${unit}` }
}

/** Less than an eighth of the smallest unit is told in metric alone. */
const volumeIn = (kitchen: UnitSystem, volume: Measured, metricText: string): string => {
  const volumeMl = both(volume)
  if (kitchen === 'us' && volumeMl.shown >= TABLESPOON_ML / 8) return `${cups(volumeMl)} (${metricText})`
  if (kitchen === 'imperial' && volumeMl.shown >= FLUID_OUNCE_ML / 8) {
    return `${imperialPints(volumeMl)} (${metricText})`
  }
  return metricText
}

const massIn = (kitchen: UnitSystem, mass: Measured, metricText: string): string =>
  kitchen !== 'metric' && rounded(mass) >= OUNCE_G / 8 ? `${pounds(both(mass))} (${metricText})` : metricText

/** Twice the figure beside it, as labels have it. */
const strengthIn = (kitchen: UnitSystem, abv: Measured, percent: string): string =>
  kitchen === 'us'
    ? `${percent}${NBSP}%${NBSP}vol (${number(2 * rounded(abv), 0)}${NBSP}proof)`
    : `${percent}${NBSP}%${NBSP}vol`

const cookText = (amount: Measured, { small, large }: Units): string =>
  amount.value >= 1000 ? `${plain(amount.value / 1000, 2)}${NBSP}${large}` : `${plain(amount.value, 1)}${NBSP}${small}`

/** In the kitchen's own unit, without the metric beside it. */
const alone = (text: string): string => text.replace(/ \([^)]*\)$/, '')

/** A strength that is known to less than half a percent keeps its decimal. */
const cookStrength = ({ value, plusMinus }: Measured): string =>
  `${plain(value, plusMinus < 0.5 && Math.abs(value - Math.round(value)) > plusMinus ? 1 : 0)}${NBSP}%`

/** English habits: a decimal point, a space between thousands, a space before the unit. */
export const englishFormat = (kitchen: Kitchen): Format =>
  typeof kitchen === 'string' ? inUnits(kitchen, kitchen) : inUnits(kitchen.volume, kitchen.mass)

/** Proof and °F go with cups. */
const inUnits = (kitchen: UnitSystem, masses: UnitSystem): Format => ({
  in: (other = { volume: kitchen, mass: masses }) => englishFormat(other),
  number,
  plain,
  volume: (volume) => volumeIn(kitchen, volume, metric(volume, VOLUME)),
  mass: (mass) => massIn(masses, mass, metric(mass, MASS)),
  pour: (volumeMl) => volumeIn(kitchen, measuredOut(volumeMl), metric(measuredOut(volumeMl), VOLUME)),
  weigh: (massG) => massIn(masses, weighedOut(massG), metric(weighedOut(massG), MASS)),
  strength: (abv) => strengthIn(kitchen, abv, unpadded(shown(abv))),
  sweetness: (sugar) => `${shown(sugar)}${NBSP}g/L`,
  temperature: ({ value }) =>
    kitchen === 'us'
      ? `${number(value * 1.8 + 32, 0)}${NBSP}°F (${number(value, 0)}${NBSP}°C)`
      : `${number(value, 0)}${NBSP}°C`,
  day: (day, words = dayText(day)) => words,
  moment: (_day, _minutes, words) => words,
  call: (call) => lineOf(call),
  channel: () => 'a channel',
  give: {
    volume: (volume) => metricBeside(volume, VOLUME).plusMinus,
    mass: (mass) => metricBeside(mass, MASS).plusMinus,
    strength: (abv) => `${beside(abv).plusMinus}${NBSP}%${NBSP}vol`,
    sweetness: (sugar) => `${beside(sugar).plusMinus}${NBSP}g/L`,
    temperature: ({ plusMinus }) =>
      kitchen === 'us' ? `${number(plusMinus * 1.8, 0)}${NBSP}°F` : `${number(plusMinus, 0)}${NBSP}°C`,
  },
  spread: {
    volume: (volume) => {
      const { value, plusMinus } = metricBeside(volume, VOLUME)
      return `${volumeIn(kitchen, volume, value)} ± ${plusMinus}`
    },
    mass: (mass) => {
      const { value, plusMinus } = metricBeside(mass, MASS)
      return `${massIn(masses, mass, value)} ± ${plusMinus}`
    },
    strength: (abv) => {
      const { value, plusMinus } = beside(abv)
      return `${strengthIn(kitchen, abv, value)} ± ${plusMinus}${NBSP}%${NBSP}vol`
    },
    sweetness: (sugar) => {
      const { value, plusMinus } = beside(sugar)
      return `${value}${NBSP}g/L ± ${plusMinus}${NBSP}g/L`
    },
  },
  round: {
    volume: (volumeMl) =>
      alone(volumeIn(kitchen, kitchenRounded(volumeMl), cookText(kitchenRounded(volumeMl), VOLUME))),
    mass: (massG) => alone(massIn(masses, kitchenRounded(massG), cookText(kitchenRounded(massG), MASS))),
    strength: cookStrength,
    sweetness: (sugarGPerL) => `${number(kitchenSweetness(sugarGPerL), 0)}${NBSP}g/L`,
  },
})
