import { CUP_ML, OUNCE_PER_QUART_G_PER_L } from '../../../core/quantity/customary.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { type Digits, digits, spreadDigits } from '../../../core/quantity/measured/shown-digits.ts'
import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'
import { exampleIn } from '../../../core/quantity/write/example-in.ts'
import {
  householdAtLeast,
  householdMass,
  householdPoured,
  householdVolume,
} from '../../../core/quantity/write/household.ts'
import { type HouseholdPart, type HouseholdUnit, thirdsOver } from '../../../core/quantity/write/household-typed.ts'
import { sizeTold, usJarTold } from '../../../core/quantity/write/size-told.ts'
import { kitchenRounded, kitchenSweetness, measuredOut, weighedOut } from '../../../core/recipe/tool-precision.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import { type Kitchen, type MixedKitchen, unitsIn } from '../messages/kitchen.ts'
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
  kitchen === 'us' ? `${percent}${NBSP}%${NBSP}vol (${proof(rounded(abv))})` : `${percent}${NBSP}%${NBSP}vol`

/** As far as half a percent is told. */
const ONE_PROOF_PERCENT = 1.05

const proof = (abvPercent: number): string => `${number(2 * abvPercent, 0)}${NBSP}proof`

const cookText = (amount: Measured, { small, large }: Units): string =>
  amount.value >= 1000 ? `${plain(amount.value / 1000, 2)}${NBSP}${large}` : `${plain(amount.value, 1)}${NBSP}${small}`

/** In the kitchen's own unit, without the metric beside it. */
const alone = (text: string): string => text.replace(/ \([^)]*\)$/, '')

/** A strength that is known to less than half a percent keeps its decimal. */
const cookPercent = ({ value, plusMinus }: Measured): string =>
  plain(value, plusMinus < 0.5 && Math.abs(value - Math.round(value)) > plusMinus ? 1 : 0)

/** A quart of a litre. */
const QUART_SHARE = (4 * CUP_ML) / 1000

/** As far as a scale tells ounces: quarters of one under two to the quart, then halves. */
const FEW_OUNCES = 2

/** `8 ½ oz/quart`, as it is typed too. */
const ouncesAQuart = (sugarGPerL: number): string => {
  const ounces = sugarGPerL / OUNCE_PER_QUART_G_PER_L
  const step = ounces < FEW_OUNCES ? 4 : 2
  return `${inEighths(Math.max(1 / 4, Math.round(ounces * step) / step))}${NBSP}oz/quart`
}

/** What somebody would call it, by the least that it has, g/L. Judgement, about the styles that have a name. */
const SWEET_WORDS = [
  [330, 'syrupy'],
  [230, 'very sweet'],
  [155, 'medium sweet'],
  [80, 'fairly dry'],
  [25, 'barely sweet'],
  [0, 'hardly any sugar'],
] as const

const sweetWord = (sugarGPerL: number): string => SWEET_WORDS.find(([least]) => sugarGPerL >= least)![1]

/** As it is sold: in ml or litres in every kitchen, but for what was told by the pint. */
const vesselSize = (volumeMl: number): string =>
  sizeTold(volumeMl)?.replaceAll(' ', NBSP) ??
  (volumeMl >= 1000 ? `${plain(volumeMl / 1000, 2)}${NBSP}l` : `${plain(volumeMl, 0)}${NBSP}ml`)

/** English habits: a decimal point, a space between thousands, a space before the unit. */
export const englishFormat = (kitchen: Kitchen): Format => inUnits(unitsIn(kitchen))

/** Proof and °F go with cups. */
const inUnits = (habits: MixedKitchen): Format => {
  const { volume: kitchen, mass: masses } = habits
  const isUs = kitchen === 'us'
  const isInProof = isUs && habits.strength === 'proof'
  const isByQuart = isUs && masses === 'us'
  const isByOunce = isUs && habits.sweetness !== 'metric'
  const percent = (text: string): string => `${text}${NBSP}%`
  const gramsALitre = (text: string): string => `${text}${NBSP}g/L`
  const own: Format = {
    in: (other = habits) => englishFormat(other),
    number,
    plain,
    volume: (volume) => volumeIn(kitchen, volume, metric(volume, VOLUME)),
    mass: (mass) => massIn(masses, mass, metric(mass, MASS)),
    pour: (volumeMl) => volumeIn(kitchen, measuredOut(volumeMl), metric(measuredOut(volumeMl), VOLUME)),
    weigh: (massG) => massIn(masses, weighedOut(massG), metric(weighedOut(massG), MASS)),
    strength: (abv) =>
      isInProof
        ? `${proof(rounded(abv))} (${unpadded(shown(abv))}${NBSP}%${NBSP}vol)`
        : strengthIn(kitchen, abv, unpadded(shown(abv))),
    sweetness: (sugar) => (isByOunce ? ouncesAQuart(sugar.value) : gramsALitre(shown(sugar))),
    wished: {
      strength: (abvPercent, maxDecimals) => (isInProof ? proof(abvPercent) : percent(plain(abvPercent, maxDecimals))),
      sweetness: (sugarGPerL, maxDecimals) =>
        isByOunce ? ouncesAQuart(sugarGPerL) : gramsALitre(plain(sugarGPerL, maxDecimals)),
    },
    dose: {
      mass: (gPerL, maxDecimals) =>
        isByQuart ? own.round.mass(gPerL * QUART_SHARE) : `${plain(gPerL, maxDecimals)}${NBSP}g`,
      volume: (mlPerL) => own.round.volume(isByQuart ? mlPerL * QUART_SHARE : mlPerL),
      each: isByQuart ? 'quart' : 'litre',
      litres: isByQuart ? QUART_SHARE : 1,
    },
    glass: {
      volume: (volumeMl) => (isUs ? own.round.volume(volumeMl) : `${plain(volumeMl)}${NBSP}ml`),
      sugar: (massG, gPerMl) => (isUs ? own.round.volume(massG / gPerMl) : `${plain(massG)}${NBSP}g`),
    },
    example: (text) => exampleIn(text, habits),
    vessel: {
      bottle: vesselSize,
      jar: (volumeMl) =>
        isUs && sizeTold(volumeMl) === null ? usJarTold(volumeMl).replaceAll(' ', NBSP) : vesselSize(volumeMl),
    },
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
      cups: (massG, of) => {
        const told = isByQuart ? householdPoured(massG, of) : null
        return told === null ? null : household(told)
      },
      strength: (abv) =>
        isInProof
          ? proof(abv.plusMinus < ONE_PROOF_PERCENT ? abv.value : Math.round(abv.value))
          : percent(cookPercent(abv)),
      sweetness: (sugarGPerL) =>
        isByOunce ? ouncesAQuart(sugarGPerL) : gramsALitre(number(kitchenSweetness(sugarGPerL), 0)),
      temperature: (tempC) => alone(own.temperature({ value: tempC, plusMinus: 0 })),
      sweet: (sugarGPerL) => (isByOunce ? sweetWord(sugarGPerL) : gramsALitre(number(kitchenSweetness(sugarGPerL), 0))),
    },
  }
  return own
}
