import { DomainError } from '../../domain-error.ts'
import { isWithin } from './accepted-ranges.ts'
import { parseTemperature } from './parse-temperature.ts'
import { shown } from './tokens.ts'

/** °C. A warmer one keeps no ice, a colder one is no kitchen's. */
const FREEZERS_C = { low: -40, high: 0 }

/** From here down a bare number is °C: no freezer has so few degrees Fahrenheit. */
const SURELY_CELSIUS = -10

/** A bare number below zero, with whichever minus sign. */
const BARE = /^\s*[-−–](\d+(?:[.,]\d+)?)\s*(?:°|degrees|gradi)?\s*$/i

/**
 * The temperature of a freezer, −40 to 0 °C: `-22`, `-22 C`, `0 F`. A bare number that may be of either scale is asked back,
 * anything else throws as `parseTemperature`, and `freezer_out_of_range`.
 */
export function parseFreezer(text: string): number {
  const bare = BARE.exec(text)?.[1]
  const isCelsius = bare !== undefined && -Number(bare.replace(',', '.')) <= SURELY_CELSIUS
  const freezerC = isCelsius ? -Number(bare.replace(',', '.')) : parseTemperature(text).tempC
  if (isWithin(FREEZERS_C, freezerC)) return freezerC
  throw new DomainError('bad_value', 'freezer_out_of_range', { typed: shown(text) })
}
