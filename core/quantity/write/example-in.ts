import { CUP_ML, OUNCE_G, OUNCE_PER_QUART_G_PER_L, US_FLUID_OUNCE_ML, US_GALLON_ML } from '../customary.ts'
import { US_SPIRIT_BOTTLE_ML } from '../us-bottles.ts'
import { countTyped } from './household-typed.ts'

const QUART_ML = US_GALLON_ML / 4

/** A litre of an example is a quart of it, and what goes with it goes along. */
const US_SHARE = QUART_ML / 1000

/** Bottles that a US shop has, fl oz (common practice, no source). */
const US_BOTTLES_FL_OZ = [5, 8, 12, 16, 25, 32]

/** Up to so many millilitres a glass is poured, in fluid ounces. */
const A_GLASS_ML = 60

const OUNCES_A_POUND = 16
const NEARLY_A_POUND = 14

/** Under so many ounces a quarter of one is told. */
const FEW_OUNCES = 2

const roundedTo = (step: number, value: number): number => Math.max(step, step * Math.round(value / step))

const inMl = (value: number, unit: string): number => value * (unit === 'ml' ? 1 : unit === 'cl' ? 10 : 1000)

const nearest = (value: number, sizes: readonly number[]): number =>
  sizes.toSorted((one, other) => Math.abs(one - value) - Math.abs(other - value))[0]!

/** `1 quart`, `3 3/4 cups`, `1 fl oz`. */
function usVolume(volumeMl: number): string {
  const usMl = volumeMl * US_SHARE
  const quarts = usMl / QUART_ML
  if (Math.abs(quarts - Math.round(quarts)) < 0.01) return `${Math.round(quarts)} ${quarts > 1.5 ? 'quarts' : 'quart'}`
  if (volumeMl <= A_GLASS_ML) return `${countTyped(roundedTo(1 / 2, volumeMl / US_FLUID_OUNCE_ML))} fl oz`
  const cups = roundedTo(1 / 4, usMl / CUP_ML)
  return `${countTyped(cups)} ${cups > 1 ? 'cups' : 'cup'}`
}

/** `1 lb`, `7 oz`. */
function usMass(massG: number): string {
  const ounces = (massG * US_SHARE) / OUNCE_G
  const pounds = roundedTo(1 / 2, ounces / OUNCES_A_POUND)
  if (ounces > NEARLY_A_POUND) return `${countTyped(pounds)} lb`
  return `${countTyped(roundedTo(ounces < FEW_OUNCES ? 1 / 4 : 1, ounces))} oz`
}

/** Whose measures an example is to be in. */
interface ExampleUnits {
  readonly volume: string
  readonly mass: string
}

const BOTTLES = /(?<=\d x |\d bottles of |\d of |bottles:|to fill: |usually )(\d+(?:\.\d+)?) ?(ml|cl|l)(?![\p{L}\d])/giu
const VOLUME =
  /(?<![\p{L}\d.:-]|\d[ -])(\d+(?:\.\d+)?) ?(ml|cl|l)(?![\p{L}\d/])|(?<=:)(\d+(?:\.\d+)?) ?(ml|cl|l)(?![\p{L}\d/])/giu
const MASS = /(?<![\p{L}\d.-])(\d+(?:\.\d+)?) ?(kg|g)(?![\p{L}\d/])/giu
const SWEETNESS = /(?<![\p{L}\d.-])(\d+(?:\.\d+)?) ?g\/l(?![\p{L}\d])/giu
const CELSIUS = /(?<![\p{L}\d.])(-?\d+) ?(?:°\s?)?C(?![\p{L}\d])/gu
/** Where somebody lives who pours in cups, for the places that stand in the examples of everybody. */
const PLACES: readonly (readonly [RegExp, string])[] = [
  [/(?<=\bzone:)(?:Rome|London|Europe\/\w+)/g, 'America/New_York'],
  [/(?<=\bcountry:)(?:Italy|Ireland|UK|GB|IE|IT)\b/g, 'US'],
  [/(?<=\bregion:)(?:EU|UK)\b/gi, 'US'],
]

/** Spirit by the bottle that it is sold in. */
const SOLD_IN = /(?:\bsold in: |\bspirit-size:)$/

/** For how much of it a price is asked, and is paid. */
const PRICED = [
  [/(?<=\? per )kg\b/g, 'lb'],
  [/(?<=\? per )l\b/g, 'quart'],
  [/(?<=\d\/)kg\b/g, 'lb'],
  [/(?<=\d\/)l\b/g, 'quart'],
] as const

/** Any of these as somebody typed it. */
const AMOUNT = /(?<![\p{L}\d.])-?\d+(?:[.,]\d+)? ?(?:ml|cl|l|kg|g|g\/l|c)(?![\p{L}\d/])/giu

const squeezed = (text: string): string => text.toLowerCase().replaceAll(/\s/g, '')

const A_LITRE = /\ba (?:litre|liter) of\b/gi

/**
 * An example line in the amounts that a US kitchen types, a litre as a quart; as it is for any other. What somebody has typed, `kept`,
 * is theirs and stays.
 */
export function exampleIn(line: string, { volume, mass }: ExampleUnits, kept = ''): string {
  if (volume !== 'us' && mass !== 'us') return line
  const typed = new Set([...kept.matchAll(AMOUNT)].map(([amount]) => squeezed(amount)))
  // `250 g per litre` is `250 g/L`.
  const unlessTyped = (whole: string, text: string): string =>
    typed.has(squeezed(whole)) || typed.has(squeezed(whole).replace('/l', '')) ? whole : text
  const weighed = (text: string): string =>
    text.replace(MASS, (whole, value: string, unit: string) =>
      unlessTyped(whole, usMass(Number(value) * (unit.toLowerCase() === 'kg' ? 1000 : 1))),
    )
  if (volume !== 'us') return weighed(line)
  const poured = line
    .replace(SWEETNESS, (whole, value: string) =>
      unlessTyped(whole, `${countTyped(roundedTo(1 / 2, Number(value) / OUNCE_PER_QUART_G_PER_L))} oz/quart`),
    )
    .replace(BOTTLES, (whole, value: string, unit: string) =>
      unlessTyped(
        whole,
        `${nearest(inMl(Number(value), unit.toLowerCase()) / US_FLUID_OUNCE_ML, US_BOTTLES_FL_OZ)} fl oz`,
      ),
    )
    .replace(VOLUME, (whole, ...[value, unit, named, namedUnit, at, all]: string[]) =>
      SOLD_IN.test(all!.slice(0, Number(at)))
        ? `${US_SPIRIT_BOTTLE_ML} ml`
        : unlessTyped(whole, usVolume(inMl(Number(value ?? named), (unit ?? namedUnit ?? 'ml').toLowerCase()))),
    )
    .replace(CELSIUS, (whole, value: string) => unlessTyped(whole, `${Math.round(Number(value) * 1.8 + 32)} F`))
    .replace(A_LITRE, 'a quart of')
  const placed = [...PLACES, ...PRICED].reduce((text, [usual, own]) => text.replace(usual, own), poured)
  return mass === 'us' ? weighed(placed) : placed
}
