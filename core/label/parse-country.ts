import { shown } from '../quantity/read/tokens.ts'
import { countries } from './countries.ts'
import type { Country } from './country.ts'

/** What was typed for a country, and the one it is; a country not on record is no error. */
export interface TypedCountry {
  /** As typed, fit to be shown. */
  readonly name: string
  readonly country: Country | null
}

/** In lower case without accents, dots or `the`: `U.S.A.` is `usa`, `the Netherlands` is `netherlands`. */
export const plainName = (typed: string): string =>
  typed
    .slice(0, 200)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/\./g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/^the /, '')

const BY_NAME: ReadonlyMap<string, Country> = new Map(
  countries.flatMap((country) => country.names.map((name): [string, Country] => [name, country])),
)

export const countryNamed = (name: string): Country | null => BY_NAME.get(plainName(name)) ?? null

export const parseCountry = (text: string): TypedCountry => ({ name: shown(text), country: countryNamed(text) })
