import { z } from 'zod'
import { DomainError } from '../../core/domain-error.ts'
import { parseCountry } from '../../core/label/parse-country.ts'
import { parseLabelPlants } from '../../core/label/parse-label-plants.ts'
import { parseRegion } from '../../core/label/parse-region.ts'
import { parseAmount } from '../../core/quantity/parse-amount.ts'
import { parseParts } from '../../core/quantity/parse-parts.ts'
import { parseRatio } from '../../core/quantity/parse-ratio.ts'
import { parseSpirits } from '../../core/quantity/parse-spirits.ts'
import { parseStrength } from '../../core/quantity/parse-strength.ts'
import { parseSugar } from '../../core/quantity/parse-sugar.ts'
import { parseSweetness } from '../../core/quantity/parse-sweetness.ts'
import { parseVolume } from '../../core/quantity/parse-volume.ts'
import type { Wanted } from '../../core/quantity/problems.ts'
import { shown } from '../../core/quantity/typed-text.ts'
import { findListed, findOne } from './botanical-found.ts'

/** What was typed for an option, and the quantity it is. */
export interface Given<Quantity> {
  readonly typed: string
  readonly is: Quantity
}

/** An option whose text `parse` reads; what it throws becomes the option's problem. */
export const field = <Quantity>(parse: (text: string) => Quantity) =>
  z.string().transform((typed, context): Given<Quantity> => {
    try {
      return { typed, is: parse(typed) }
    } catch (error) {
      if (!(error instanceof DomainError)) throw error
      context.addIssue({ code: 'custom', message: error.message, params: { error } })
      return z.NEVER
    }
  })

/** A wish is at 20 °C: a temperature beside it is refused, not passed over. */
const atTwenty =
  <Quantity extends { readonly atC: number | null }>(parse: (text: string) => Quantity, wanted: Wanted) =>
  (text: string): Quantity => {
    const quantity = parse(text)
    if (quantity.atC === null) return quantity
    const values = { typed: shown(text), extra: `at ${quantity.atC} °C`, wanted }
    throw new DomainError('bad_value', 'unexpected_text', values)
  }

/** The kinds of value that options take; each reads the text typed. */
export const fields = {
  amount: field(parseAmount),
  sugar: field(parseSugar),
  strength: field(parseStrength),
  wishedStrength: field(atTwenty(parseStrength, 'strength')),
  wishedVolume: field(atTwenty(parseVolume, 'volume')),
  sweetness: field(parseSweetness),
  ratio: field(parseRatio),
  spirits: field(parseSpirits),
  parts: field(parseParts),
  volume: field(parseVolume),
  country: field(parseCountry),
  region: field(parseRegion),
  botanical: field(findOne),
  botanicals: field(findListed),
  labelPlants: field(parseLabelPlants),
}
