import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { type Digits, digits, spreadDigits } from '../../../core/quantity/measured/shown-digits.ts'
import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'
import {
  type HouseholdPart,
  type HouseholdUnit,
  householdAtLeast,
  householdMass,
  householdVolume,
  thirdsOver,
} from '../../../core/quantity/write/household.ts'
import { kitchenRounded, kitchenSweetness, measuredOut, weighedOut } from '../../../core/recipe/tool-precision.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Kitchen } from '../messages/kitchen.ts'
import { dayText, plural } from './phrases.ts'

/** Keeps a number and its unit on one line. */
const NBSP = '\u00a0'

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']

const THIRDS = { 1: '⅓', 2: '⅔' } as const

/** `1 ½`, of whole eighths or thirds. */
const mixed = (amount: number): string => {
  const whole = Math.floor(amount)
  const thirds = thirdsOver(amount)
  const part = thirds === null ? (EIGHTHS[Math.round((amount - whole) * 8)] ?? '') : THIRDS[thirds]
  return [whole === 0 ? '' : `${whole}`, part].filter((text) => text !== '').join(NBSP)
}

/** `2 ½`: in the eighths that cups and spoons are marked with; never nothing of something. */
export const inEighths = (amount: number): string => mixed(Math.max(amount, 1 / 8))

/** They say `imp`, because pints and ounces that are typed bare are US ones. */
const UNIT_NAMES: { readonly [Unit in HouseholdUnit]: (count: number) => string } = {
  cup: (count) => (count > 1 ? 'cups' : 'cup'),
  tbsp: () => 'tbsp',
  tsp: () => 'tsp',
  imp_pint: (count) => `imp${NBSP}${plural(count, 'pint')}`,
  imp_fl_oz: () => `imp${NBSP}fl${NBSP}oz`,
  lb: () => 'lb',
  oz: () => 'oz',
}

/** `4 ¼ cups + 2 tbsp`, `2 imp pints + 15 fl oz`, `1 lb 4 oz`. */
const household = (told: readonly HouseholdPart[]): string => {
  const [first, ...rest] = told.map(({ count, unit }) => `${mixed(count)}${NBSP}${UNIT_NAMES[unit](count)}`)
  const isWeighed = told[0]?.unit === 'lb'
  return [first, ...rest.map((each) => (isWeighed ? each : `+ ${each.replace(`imp${NBSP}`, '')}`))].join(' ')
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

const besideMetric = (told: readonly HouseholdPart[] | null, metricText: string): string =>
  told === null ? metricText : `${household(told)} (${metricText})`

const volumeIn = (kitchen: UnitSystem, volume: Measured, metricText: string): string =>
  besideMetric(householdVolume(volume, kitchen), metricText)

const massIn = (kitchen: UnitSystem, mass: Measured, metricText: string): string =>
  besideMetric(householdMass(mass, kitchen), metricText)

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
    atLeast: (volumeMl) => {
      const told = householdAtLeast(measuredOut(volumeMl), kitchen)
      return told === null ? cookText(measuredOut(volumeMl), VOLUME) : household(told)
    },
    mass: (massG) => alone(massIn(masses, kitchenRounded(massG), cookText(kitchenRounded(massG), MASS))),
    strength: cookStrength,
    sweetness: (sugarGPerL) => `${number(kitchenSweetness(sugarGPerL), 0)}${NBSP}g/L`,
  },
})
