import { IMPERIAL_GALLON_ML, OUNCE_PER_QUART_G_PER_L, POUND_G, US_GALLON_ML } from '../customary.ts'
import type { UnitKind } from '../problems.ts'
import type { Assumption } from '../quantities.ts'
import { calledBottleMl } from '../us-bottles.ts'

export interface Unit {
  readonly key: string
  readonly kind: UnitKind
  /** How many of the canonical unit (ml, g, % vol, g/L, °C, days) one of this is. */
  readonly factor: number
  /** What this unit reads at the canonical zero: 32 for °F, else 0. */
  readonly zero: number
  readonly assumed: readonly Assumption[]
}

/** In the canonical unit, from a number in `unit`. */
export const toCanonical = (unit: Unit, value: number): number => (value - unit.zero) * unit.factor

type Row = readonly [key: string, factor: number, phrases: string]

/** Mean Gregorian month, days. */
const MONTH_DAYS = 365.2425 / 12

/** Spoons are the US ones; the metric 15 ml and 5 ml differ by 1.4 %, less than any spoon's own error. */
const metricVolumes: readonly Row[] = [
  ['ml', 1, 'ml|mls|mil|mils|millilitre|millilitres|milliliter|milliliters|millilitro|millilitri'],
  ['cl', 10, 'cl|centilitre|centilitres|centiliter|centiliters|centilitro|centilitri'],
  ['dl', 100, 'dl|decilitre|decilitres|deciliter|deciliters|decilitro|decilitri'],
  ['cc', 1, 'cc|ccm|cm³|cm 3'],
  ['l', 1000, 'l|lt|lts|ltr|ltrs|litre|litres|liter|liters|litro|litri'],
  ['hl', 100_000, 'hl|hectolitre|hectolitres|hectoliter|hectoliters|ettolitro|ettolitri'],
  [
    'au_tbsp',
    20,
    'au tbsp|aus tbsp|australian tbsp|au tablespoon|au tablespoons|australian tablespoon|australian tablespoons',
  ],
  ['tbsp', US_GALLON_ML / 256, 'tbsp|tbsps|tablespoon|tablespoons|tablespoonful|tablespoonfuls|cucchiaio|cucchiai'],
  ['tsp', US_GALLON_ML / 768, 'tsp|tsps|teaspoon|teaspoons|teaspoonful|teaspoonfuls|cucchiaino|cucchiaini'],
]

const FLUID_OUNCE = 'fl oz|floz|fluid oz|fluid ounce|fluid ounces'
/** A quarter of a pint. */
const GILL = 'gill|gills'
const PINT = 'pint|pints|pt|pinta|pinte'
const QUART = 'quart|quarts|qt|qts'
const GALLON = 'gallon|gallons|gal|gallone|galloni'

const usVolumes: readonly Row[] = [
  ['fl_oz', US_GALLON_ML / 128, FLUID_OUNCE],
  ['gill', US_GALLON_ML / 32, GILL],
  ['cup', US_GALLON_ML / 16, 'cup|cups|cupful|cupfuls|tazza|tazze'],
  ['pint', US_GALLON_ML / 8, PINT],
  ['quart', US_GALLON_ML / 4, QUART],
  ['gallon', US_GALLON_ML, GALLON],
]

/** Bottles of spirit that are sold by a name, which are no measure of anything else. */
const bottlesCalled: readonly Row[] = ['fifth', 'handle'].map((name) => [
  name,
  calledBottleMl(name)!,
  `${name}|${name}s`,
])

// No imperial cup: it was never a legal measure, and cookbooks disagree about it.
const imperialVolumes: readonly Row[] = [
  ['imp_fl_oz', IMPERIAL_GALLON_ML / 160, FLUID_OUNCE],
  ['imp_gill', IMPERIAL_GALLON_ML / 32, GILL],
  ['imp_pint', IMPERIAL_GALLON_ML / 8, PINT],
  ['imp_quart', IMPERIAL_GALLON_ML / 4, QUART],
  ['imp_gallon', IMPERIAL_GALLON_ML, GALLON],
]

const masses: readonly Row[] = [
  ['mg', 0.001, 'mg|milligram|milligrams|milligrammo|milligrammi'],
  ['g', 1, 'g|gr|gm|gms|grm|grms|gram|grams|gramme|grammes|grammo|grammi'],
  ['hg', 100, 'hg|etto|etti'],
  ['kg', 1000, 'kg|kgs|kilo|kilos|kilogram|kilograms|chilo|chili|chilogrammo|chilogrammi'],
  ['lb', POUND_G, 'lb|lbs|pound|pounds|libbra|libbre'],
  ['oz', POUND_G / 16, 'oz|ounce|ounces|oncia|once'],
  ['oz_weight', POUND_G / 16, 'oz weight|oz wt|ounce weight|ounces weight|ounces by weight|oz by weight'],
]

const strengths: readonly Row[] = [
  [
    'percent',
    1,
    '%|% vol|% v / v|% abv|% alc|% alcohol|% alc vol|% alc / vol|% by volume|% alc by volume|vol %|abv %|' +
      'pct|percent|percent vol|percent abv|percent by volume|per cent|per cent vol|per cento|percento',
  ],
  ['vol', 1, 'vol|abv'],
  ['degrees', 1, '°|° vol|° gl|degrees|gradi|grado|gradi alcolici'],
  // Grams in 100 g; strength-at turns it into % vol.
  ['mass_percent', 1, '% w / w|% w|% m / m|% by weight|% by mass|% wt|wt %|percent by weight|percent by mass'],
  // The old British degrees, of which 100 were 4/7 of alcohol by volume.
  ['uk_proof', 4 / 7, 'uk proof|british proof|imp proof|imperial proof|° uk proof|° british proof'],
  // Of which scale? `strength-at` asks back.
  ['degrees_proof', 0.5, '° proof|degrees proof'],
  // Of % vol at 60 °F; parse-strength brings it to 20 °C.
  ['proof', 0.5, 'proof|us proof|° us proof'],
]

const sweetnesses: readonly Row[] = [
  [
    'g/l',
    1,
    'g / l|gr / l|g / lt|g / litre|g / liter|g / litro|grams / litre|grams / liter|g per l|g per litre|g per liter|' +
      'g al litro|grams per litre|grams per liter|grammi / litro|grammi al litro|grammi per litro',
  ],
  ['g/100ml', 10, 'g / 100 ml|gr / 100 ml|g per 100 ml|grams per 100 ml|grammi per 100 ml'],
  ['g/dl', 10, 'g / dl|gr / dl|g per dl'],
  [
    'oz/quart',
    OUNCE_PER_QUART_G_PER_L,
    'oz / quart|oz / qt|oz per quart|oz per qt|oz a quart|oz to the quart|ounces / quart|ounces per quart|ounces a quart|ounces to the quart',
  ],
]

const spans: readonly Row[] = [
  ['hours', 1 / 24, 'h|hr|hrs|hour|hours|ora|ore'],
  ['days', 1, 'd|day|days|giorno|giorni|gg'],
  ['weeks', 7, 'w|wk|wks|week|weeks|settimana|settimane'],
  ['months', MONTH_DAYS, 'month|months|mese|mesi'],
  ['years', 12 * MONTH_DAYS, 'y|yr|yrs|year|years|anno|anni'],
]

const entries = (
  kind: UnitKind,
  rows: readonly Row[],
  prefixes = [''],
  assumed: readonly Assumption[] = [],
  zero = 0,
) =>
  rows.flatMap(([key, factor, phrases]) =>
    prefixes.flatMap((prefix) =>
      phrases.split('|').map((phrase): [string, Unit] => [prefix + phrase, { key, kind, factor, zero, assumed }]),
    ),
  )

/** Every unit that can be typed: lower-case words and signs, a space between each, by what they measure. */
export const unitsByKind: { readonly [Kind in UnitKind]: ReadonlyMap<string, Unit> } = {
  volume: new Map([
    ...entries('volume', metricVolumes),
    ...entries('volume', usVolumes, [''], ['us_measure']),
    ...entries('volume', usVolumes, ['us ']),
    ...entries('volume', imperialVolumes, ['imp ', 'imperial ', 'uk ']),
    ...entries('volume', bottlesCalled),
  ]),
  mass: new Map(entries('mass', masses)),
  strength: new Map([
    ...entries('strength', strengths.slice(0, -1)),
    ...entries('strength', strengths.slice(-1), [''], ['us_proof']),
  ]),
  sweetness: new Map(entries('sweetness', sweetnesses)),
  temperature: new Map([
    ...entries('temperature', [['c', 1, '° c|c|degrees c|celsius|degrees celsius|gradi c|gradi celsius|gradi']]),
    ...entries('temperature', [['f', 5 / 9, '° f|f|degrees f|fahrenheit|degrees fahrenheit']], [''], [], 32),
  ]),
  span: new Map(entries('span', spans)),
}
