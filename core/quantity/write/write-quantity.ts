import { massFractionFromAbv } from '../../liquid/ethanol-water.ts'
import { usProofFromAbvPercent } from '../../liquid/proof.ts'
import { type MaterialId, materialOf, materialText } from '../materials.ts'
import type {
  Mass,
  Ratio,
  Span,
  Strength,
  SugarRead,
  SweeteningRead,
  Sweetness,
  Volume,
  WaterOrKind,
  WaterRead,
} from '../quantities.ts'
import { parseAmount } from '../read/parse-amount.ts'
import { parseRatio } from '../read/parse-ratio.ts'
import { parseStrength } from '../read/parse-strength.ts'
import { parseSugar } from '../read/parse-sugar.ts'
import { parseSweetness } from '../read/parse-sweetness.ts'
import { amountTexts } from './amount-texts.ts'
import { firstReadAs, readAsOrNull } from './first-read-as.ts'
import { numberTexts } from './number-texts.ts'

/** Each of some texts with the temperature that it was read at, °C or °F. */
export function* atTemperature(texts: Iterable<string>, atC: number | null): Iterable<string> {
  for (const text of texts) {
    if (atC === null) yield text
    else {
      for (const number of signedTexts(atC)) yield `${text} at ${number} C`
      for (const number of signedTexts(atC * 1.8 + 32)) yield `${text} at ${number} F`
    }
  }
}

const signedTexts = (value: number): readonly string[] =>
  value < 0 ? numberTexts(-value).map((text) => `-${text}`) : numberTexts(value)

const volumeTexts = ({ volumeMl, statedMl, unit, atC }: Volume): Iterable<string> =>
  atTemperature(amountTexts({ kind: 'volume', value: volumeMl, stated: statedMl, unit }), atC)

const massTexts = ({ massG, statedG, unit }: Mass): Iterable<string> =>
  amountTexts({ kind: 'mass', value: massG, stated: statedG, unit })

/** As `writeAmount`; null of one that no single amount is read as: `2 x 700 ml`. */
export const amountSaid = (amount: Volume | Mass): string | null =>
  readAsOrNull(amount, amount.kind === 'volume' ? volumeTexts(amount) : massTexts(amount), parseAmount)

/** `930 ml`, `2 cups`, `450 g`. */
export const writeAmount = (amount: Volume | Mass): string =>
  firstReadAs(amount, amount.kind === 'volume' ? volumeTexts(amount) : massTexts(amount), parseAmount)

function* withMaterial(texts: Iterable<string>, { material }: SweeteningRead): Iterable<string> {
  for (const text of texts) yield `${text}${materialText(material)}`
}

function sugarTexts(sugar: SweeteningRead): Iterable<string> {
  const { massG, statedG, unit, byVolume, material } = sugar
  const perMl = (mass: number): number => mass / materialOf(material).pouredGPerMl
  const stated = statedG === null ? null : perMl(statedG)
  return byVolume ? amountTexts({ kind: 'volume', value: perMl(massG), stated, unit }) : massTexts(sugar)
}

/** `450 g`; what was poured by the cup, as it was poured. */
const writeSugar = (sugar: SweeteningRead): string =>
  firstReadAs(sugar, withMaterial(sugarTexts(sugar), sugar), parseSugar)

/** Its amount alone, without what it is of; null of one that no single amount is read as. */
export const sugarSaid = (sugar: SweeteningRead): string | null => {
  const text = readAsOrNull(sugar, withMaterial(sugarTexts(sugar), sugar), parseSugar)
  return text === null ? null : text.slice(0, text.length - materialText(sugar.material).length)
}

/** `200 g honey + 450 g`. */
export const writeSugars = (sugars: readonly SweeteningRead[]): string => sugars.map(writeSugar).join(' + ')

/** `1 l + 30 ml lemon juice`. */
export const writeWaters = ({ waters, juices }: WaterRead): string =>
  [...waters.map(writeAmount), ...juices.map(writeSugar)].join(' + ')

/** `honey`. */
export const writeSweetener = (material: MaterialId): string => materialOf(material).names[0]!

/** `2 cups`, `apple juice`. */
export const writeWaterOrKind = (water: WaterOrKind): string =>
  typeof water === 'string' ? writeSweetener(water) : writeWaters(water)

/** `200 g + honey`: the amounts, and what is taken where the amount is worked out. */
export const writeSugarOrKind = ({ amounts, sweetener }: SugarRead): string =>
  [...amounts.map(writeSugar), ...(sweetener === null ? [] : [writeSweetener(sweetener)])].join(' + ')

/** `30%`, `190 proof`, `90.6% at 28 C`. */
export function writeStrength(strength: Strength): string {
  const { abvPercent, statedPercent, unit, atC } = strength
  const value =
    unit === 'proof'
      ? usProofFromAbvPercent(abvPercent) / 2
      : unit === 'mass_percent'
        ? 100 * massFractionFromAbv(abvPercent)
        : abvPercent
  return firstReadAs(
    strength,
    atTemperature(amountTexts({ kind: 'strength', value, stated: statedPercent, unit }), atC),
    parseStrength,
  )
}

/** `250 g/L`, `8 oz/quart`, `dry`. */
export function writeSweetness(sweetness: Sweetness): string {
  const { sugarGPerL, statedGPerL, unit } = sweetness
  const texts = unit.includes('/')
    ? amountTexts({ kind: 'sweetness', value: sugarGPerL, stated: statedGPerL, unit })
    : [unit]
  return firstReadAs(sweetness, texts, parseSweetness)
}

/** `2:1`: grams of sugar to each gram of water. */
export function writeRatio(ratio: Ratio): string {
  const { sugarGPerWaterG } = ratio
  const whole = [String(sugarGPerWaterG), `${sugarGPerWaterG}0`, ...numberTexts(sugarGPerWaterG)]
  return firstReadAs(ratio, [...whole.map((number) => `${number}:1`), ...whole], parseRatio)
}

/** `14 days`, `2 months`, `1.5 weeks`. */
export const writeSpan = (span: Span, read: (text: string) => Span): string =>
  firstReadAs(span, amountTexts({ kind: 'span', value: span.nominalDays, stated: null, unit: span.unit }), read)
