import type { UnitKind } from '../problems.ts'
import { type Unit, unitsByKind } from '../read/units.ts'
import { isCalledBottle } from '../us-bottles.ts'
import { numberTexts } from './number-texts.ts'

/** A number with its unit, both in the canonical unit of their kind: ml, g, % vol, g/L, days. */
interface Amount {
  readonly kind: UnitKind
  readonly value: number
  readonly stated: number | null
  /** The key of its unit in `units.ts`. */
  readonly unit: string
}

/** Where a unit is written otherwise than the first of the ways to type it. */
const WRITTEN: Readonly<Record<string, string>> = {
  '%': '%',
  '°': '°',
  'g / l': ' g/L',
  'g / 100 ml': ' g/100 ml',
  'g / dl': ' g/dl',
  'oz / quart': ' oz/quart',
  cup: ' cups',
  pint: ' pints',
  quart: ' quarts',
  gallon: ' gallons',
  fifth: ' fifths',
  handle: ' handles',
  'imp pint': ' imp pints',
  h: ' hours',
  d: ' days',
  w: ' weeks',
  month: ' months',
  y: ' years',
}

/** Of one of these one is written: `1 pint`. */
const isPlural = (phrase: string): boolean => phrase.endsWith('s') && Object.values(WRITTEN).includes(phrase)

/** Units of a kind under one key, each with the first way to type it: `cup` and `us cup`. */
const unitsOf = (kind: UnitKind, key: string): readonly (readonly [phrase: string, unit: Unit])[] => {
  const found = new Map<Unit['assumed'], readonly [string, Unit]>()
  for (const [phrase, unit] of unitsByKind[kind]) {
    if (unit.key === key && !found.has(unit.assumed)) found.set(unit.assumed, [WRITTEN[phrase] ?? ` ${phrase}`, unit])
  }
  return [...found.values()]
}

/** What the larger unit of two is told in: whole ones first, then what cups and jugs show. */
const LARGER_STEPS = [1, 1 / 2, 1 / 4, 1 / 3, 1 / 8] as const

/** A share of a step that is lost where a double was added up. */
const ROUNDED_OFF = 1e-9

const isWithoutDecimals = (number: string): boolean => !number.includes('.')

/** `1 lb 4 oz`, `1/2 cup 1 1/2 tbsp`: some of the larger unit, and the rest in a smaller one; no decimals where it goes without. */
function* compounds({ kind, value }: Amount, [phrase, { factor }]: readonly [string, Unit]): Iterable<string> {
  const larger = LARGER_STEPS.map((step) => Math.floor(value / factor / step + ROUNDED_OFF) * step)
  const parted = [...new Set(larger.filter((each) => each > 0))].flatMap((count) => {
    const named = count <= 1 && isPlural(phrase) ? phrase.slice(0, -1) : phrase
    const counted = numberTexts(count).filter(isWithoutDecimals)
    return [...unitsByKind[kind]]
      .filter(([, unit]) => unit.factor < factor && !isCalledBottle(unit.key))
      .flatMap(([smaller, unit]) =>
        numberTexts((value - count * factor) / unit.factor).flatMap((number) =>
          counted.map((text) => ({ text: `${text}${named} ${number} ${smaller}`, isPlain: isWithoutDecimals(number) })),
        ),
      )
  })
  for (const isPlain of [true, false]) for (const each of parted) if (each.isPlain === isPlain) yield each.text
}

/** The ways to write an amount, the plainest first. */
export function* amountTexts(amount: Amount): Iterable<string> {
  const { kind, value, stated } = amount
  const units = unitsOf(kind, amount.unit)
  for (const [phrase, { factor }] of units) {
    const stateds = stated === null ? [''] : numberTexts(stated / factor).map((number) => `±${number}`)
    const named = value / factor <= 1 && isPlural(phrase) ? phrase.slice(0, -1) : phrase
    for (const number of numberTexts(value / factor)) for (const spread of stateds) yield `${number}${spread}${named}`
  }
  // What has no unit is what is asked for.
  const stateds = stated === null ? [''] : numberTexts(stated).map((number) => `±${number}`)
  for (const number of numberTexts(value)) for (const spread of stateds) yield `${number}${spread}`
  for (const unit of units) yield* compounds(amount, unit)
}
