import type { Cited } from './sources.ts'

/** The size of a standard drink; counted by volume where the definition is a volume of pure alcohol. */
export interface DrinkSize extends Cited {
  /** As published, rounded where the definition is a volume. */
  readonly drinkG: number
  readonly pureMl: number | null
  /** Another size that is in use there, from memory; left out where none is known. */
  readonly otherG?: number
}

export interface DrinkingLimit {
  readonly who: 'everyone' | 'men' | 'women' | 'women_young_old'
  readonly amount: number
  readonly unit: 'drinks' | 'g'
  readonly per: 'day' | 'week' | 'any_day'
}

export type Remark =
  | 'spread_three_days'
  | 'drink_free_days'
  | 'two_free_days'
  | 'not_every_day'
  | 'may_be_outdated'
  | 'newer_is_lower'
  | 'risk_rises_there'
  | 'no_safe_level'

/** What a health authority tells adults; never advice of ours. */
export interface Guidance extends Cited {
  readonly limits: readonly DrinkingLimit[]
  readonly remarks: readonly Remark[]
}

export interface Country {
  readonly id: CountryId
  /** In lower case without accents or dots: English, Italian, ISO 3166; the first is the one to type back. */
  readonly names: readonly string[]
  readonly drink: DrinkSize | null
  readonly guidance: Guidance | null
}

export type CountryId =
  | 'us'
  | 'uk'
  | 'ireland'
  | 'italy'
  | 'france'
  | 'germany'
  | 'spain'
  | 'australia'
  | 'new_zealand'
  | 'canada'
  | 'japan'
  | 'austria'
  | 'iceland'
  | 'mexico'
  | 'argentina'
  | 'chile'
  | 'hong_kong'
  | 'india'
  | 'poland'
  | 'sweden'
  | 'denmark'
  | 'switzerland'
  | 'who'
  | 'portugal'
  | 'netherlands'
  | 'belgium'
  | 'norway'
  | 'finland'
  | 'south_korea'
  | 'brazil'
  | 'south_africa'
