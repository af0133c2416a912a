import type { StemScale } from '../quantities.ts'
import { type HydrometerRead, parseBrix, parseHydrometer, type RefractometerRead } from '../read/parse-reading.ts'
import { firstReadAs } from './first-read-as.ts'
import { numberTexts } from './number-texts.ts'
import { atTemperature } from './write-quantity.ts'

/** What stands after the number. */
const WRITTEN: { readonly [Scale in StemScale]: string } = {
  sg: '',
  sg_60f: ' 60/60',
  g_per_ml: ' g/ml',
  brix: ' Brix',
  baume: ' Baumé',
  percent: '%',
}

function* readingTexts({ value: { value, plusMinus }, scale }: HydrometerRead): Iterable<string> {
  for (const number of numberTexts(value)) yield `${number}${WRITTEN[scale]}`
  for (const spread of numberTexts(plusMinus)) yield `${numberTexts(value)[0]}±${spread}${WRITTEN[scale]}`
  for (const number of numberTexts(value)) {
    for (const spread of numberTexts(plusMinus)) yield `${number}±${spread}${WRITTEN[scale]}`
  }
}

/** `1.035`, `8.7 Brix at 24 C`. */
export const writeHydrometer = (reading: HydrometerRead): string =>
  firstReadAs(reading, atTemperature(readingTexts(reading), reading.atC), parseHydrometer)

/** A refractometer's scale goes without saying. */
function* brixTexts(reading: RefractometerRead): Iterable<string> {
  for (const text of readingTexts(reading)) yield text.replace(WRITTEN.brix, '')
  yield* readingTexts(reading)
}

/** `26.5`. */
export const writeBrix = (reading: RefractometerRead): string =>
  firstReadAs(reading, atTemperature(brixTexts(reading), reading.atC), parseBrix)
