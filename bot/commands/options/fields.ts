import { z } from 'zod'
import { DomainError } from '../../../core/domain-error.ts'
import { parseCountry } from '../../../core/label/parse-country.ts'
import { parseLabelPlants } from '../../../core/label/parse-label-plants.ts'
import { parseRegion, regions } from '../../../core/label/parse-region.ts'
import type { Wanted } from '../../../core/quantity/problems.ts'
import type { Strength } from '../../../core/quantity/quantities.ts'
import { parseAmount } from '../../../core/quantity/read/parse-amount.ts'
import { parseRatio } from '../../../core/quantity/read/parse-ratio.ts'
import { parseStrength } from '../../../core/quantity/read/parse-strength.ts'
import { parseSugar } from '../../../core/quantity/read/parse-sugar.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { parseVolume } from '../../../core/quantity/read/parse-volume.ts'
import { shown } from '../../../core/quantity/read/tokens.ts'
import { expectDistilled } from '../../../core/recipe/distilled.ts'
import { drinksIn } from '../../../core/recipe/drinks-in.ts'
import { findListed, findOne } from '../plants/botanical-found.ts'
import { type Takes, taking } from './option-metadata.ts'

/** What was typed for an option, and the quantity it is. */
export interface Given<Quantity> {
  readonly typed: string
  readonly is: Quantity
}

/** An option whose text `parse` reads; what it throws becomes the option's problem. */
export const field = <Quantity>(parse: (text: string) => Quantity, takes: Takes = {}) => {
  const schema = z.string().transform((typed, context): Given<Quantity> => {
    try {
      return { typed, is: parse(typed) }
    } catch (error) {
      if (!(error instanceof DomainError)) throw error
      context.addIssue({ code: 'custom', message: error.message, params: { error } })
      return z.NEVER
    }
  })
  return taking(schema, takes)
}

/** Characters of a list of plants: two dozen of them with their amounts. */
export const PLANTS = { suggested: 'botanicals', most: 600 } as const

/** What `work` throws becomes the problem of an option that only the person's settings could read. */
export const blamed = <Result>(option: string, work: () => Result): Result => {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    throw new z.ZodError([{ code: 'custom', input: option, message: error.message, path: [option], params: { error } }])
  }
}

/** A wish is at 20 °C: a temperature beside it is refused, not passed over. */
const atTwenty =
  <Quantity extends { readonly atC: number | null }>(parse: (text: string) => Quantity, wanted: Wanted) =>
  (text: string): Quantity => {
    const quantity = parse(text)
    if (quantity.atC === null) return quantity
    const values = { typed: shown(text), extra: `at ${quantity.atC} °C`, wanted }
    throw new DomainError('bad_value', 'unexpected_text', values)
  }

/** The strength of a liquid: none that only drying makes. */
const distilled =
  <Text extends Strength>(parse: (text: string) => Text) =>
  (text: string): Text => {
    const strength = parse(text)
    expectDistilled(strength, text, '95%')
    return strength
  }

/** The kinds of value that options take; each reads the text typed. */
export const fields = {
  amount: field(parseAmount),
  sugar: field(parseSugar),
  strength: field(distilled(parseStrength)),
  /** Of a spirit, at 20 °C. */
  spiritStrength: field(distilled(atTwenty(parseStrength, 'strength'))),
  wishedStrength: field(atTwenty(parseStrength, 'strength')),
  wishedVolume: field(atTwenty(parseVolume, 'volume')),
  sweetness: field(parseSweetness, { suggested: 'sweetness' }),
  ratio: field(parseRatio),
  /** Drinks of the trade; what must not be drunk is refused. */
  spirits: field((text) => drinksIn(text, { blends: false })),
  parts: field((text) => drinksIn(text, { blends: true })),
  volume: field(parseVolume),
  country: field(parseCountry, { suggested: 'country' }),
  region: field(parseRegion, { choices: regions }),
  botanical: field(findOne, { suggested: 'botanicals' }),
  botanicals: field(findListed, PLANTS),
  labelPlants: field(parseLabelPlants, PLANTS),
}
