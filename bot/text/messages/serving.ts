import type { CountryId, DrinkSize, Guidance } from '../../../core/label/country.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Call } from '../../calls/call.ts'
import type { Plain } from './plain.ts'

export interface CountryDrink {
  readonly country: CountryId
  readonly drink: DrinkSize
}

export interface ServingMessages {
  headlines: {
    serving: {
      readonly pourMl: Measured
      readonly abvPercent: Measured
      readonly ethanolG: Measured
      /** Null where the size of a drink there is not known. */
      readonly counted: { readonly drinks: Measured; readonly country: CountryId } | null
    }
  }
  rows: Plain<'pure_alcohol' | 'standard_drink' | 'drinks'>
  cells: {
    alcohol_spread: { readonly massG: Measured }
    standard_drink: CountryDrink
    drinks: { readonly drinks: Measured }
  }
  notes: {
    name_a_country: { readonly line: Call }
    guidance: { readonly country: CountryId; readonly guidance: Guidance }
    no_guidance: { readonly country: CountryId }
    no_drink_size: { readonly country: CountryId }
    unknown_country: { readonly typed: string; readonly nearest: CountryId | null }
    own_country: { readonly code: string }
    /** By the time zone, as nobody said. */
    zone_country: { readonly code: string }
    own_country_unknown: { readonly code: string }
    one_glass: {
      readonly heavyG: number
      readonly dangerousG: number
      readonly adultKg: number
      readonly gPerL: number
    }
  }
  cautions: Plain<'dangerous_glass' | 'heavy_glass' | 'neat_spirit' | 'law_and_doctor'>
  actions: {
    count_in: { readonly country: CountryId }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly serving: ServingMessages
  }
}
