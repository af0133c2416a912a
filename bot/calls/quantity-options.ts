import { DomainError } from '../../core/domain-error.ts'
import { parseCountry } from '../../core/label/parse-country.ts'
import { parseLabelPlants } from '../../core/label/parse-label-plants.ts'
import { parseRegion, regions } from '../../core/label/parse-region.ts'
import type { Wanted } from '../../core/quantity/problems.ts'
import type { Strength } from '../../core/quantity/quantities.ts'
import { parseAmount } from '../../core/quantity/read/parse-amount.ts'
import { parseRatio } from '../../core/quantity/read/parse-ratio.ts'
import { parseBrix, parseHydrometer } from '../../core/quantity/read/parse-reading.ts'
import { parseStrength } from '../../core/quantity/read/parse-strength.ts'
import { parseSugarOrKind, parseSugars, parseSweetener } from '../../core/quantity/read/parse-sugar.ts'
import { parseSweetness } from '../../core/quantity/read/parse-sweetness.ts'
import { parseVolume } from '../../core/quantity/read/parse-volume.ts'
import { parseFiller, parseWaterOrKind, parseWaters } from '../../core/quantity/read/parse-water.ts'
import { shown } from '../../core/quantity/read/tokens.ts'
import { inFigures } from '../../core/quantity/said/in-figures.ts'
import { parseMonth } from '../../core/quantity/time/parse-month.ts'
import {
  writeAmount,
  writeRatio,
  writeStrength,
  writeSugarOrKind,
  writeSugars,
  writeSweetener,
  writeSweetness,
  writeWaterOrKind,
  writeWaters,
} from '../../core/quantity/write/write-quantity.ts'
import { writeBrix, writeHydrometer } from '../../core/quantity/write/write-reading.ts'
import { expectDistilled } from '../../core/recipe/distilled.ts'
import { type DrinkPart, drinksIn } from '../../core/recipe/drinks-in.ts'
import { findListed, findOne } from './named-plants.ts'
import { option } from './option.ts'

/** Characters of a list of plants: two dozen of them with their amounts. */
export const PLANTS = { suggested: 'botanicals', most: 600 } as const

/** The texts of a list, each as it was typed. */
export const joined = (items: readonly { readonly typed: string }[]): string =>
  items.map(({ typed }) => typed).join(' + ')

/** A wish is at 20 °C: a temperature beside it is refused, not passed over. */
const atTwenty =
  <Quantity extends { readonly atC: number | null }>(read: (text: string) => Quantity, wanted: Wanted) =>
  (text: string): Quantity => {
    const quantity = read(text)
    if (quantity.atC === null) return quantity
    const values = { typed: shown(text), extra: `at ${quantity.atC} °C`, wanted }
    throw new DomainError('bad_value', 'unexpected_text', values)
  }

/** The strength of a liquid: none that only drying makes. */
const distilled =
  (read: (text: string) => Strength) =>
  (text: string): Strength => {
    const strength = read(text)
    expectDistilled(strength, text, '95%')
    return strength
  }

const drinks = (blends: boolean) =>
  option({ read: inFigures((text): readonly DrinkPart[] => drinksIn(text, { blends })), write: joined })

const MONTH_NAMES = 'January February March April May June July August September October November December'.split(' ')

/** The quantities that commands take. */
export const quantityOptions = {
  amount: option({ read: inFigures(parseAmount), write: writeAmount }),
  volume: option({ read: inFigures(parseVolume), write: writeAmount }),
  wishedVolume: option({ read: inFigures(atTwenty(parseVolume, 'volume')), write: writeAmount }),
  /** What goes in of what sweetens. */
  sugar: option({ read: inFigures(parseSugars), write: writeSugars }),
  /** The same, or what it is that an amount is worked out of. */
  sugarOrKind: option({ read: inFigures(parseSugarOrKind), write: writeSugarOrKind }),
  /** Water, and what stands for it. */
  waters: option({ read: inFigures(parseWaters), write: writeWaters }),
  /** What stands for the water where that is worked out. */
  filler: option({ read: parseFiller, write: writeSweetener }),
  /** The same, or how much water a recipe gives. */
  waterOrKind: option({ read: inFigures(parseWaterOrKind), write: writeWaterOrKind }),
  /** What an amount is worked out of. */
  sweetener: option({ read: parseSweetener, write: writeSweetener }),
  strength: option({ read: distilled(parseStrength), write: writeStrength }),
  /** Of a spirit, at 20 °C. */
  spiritStrength: option({ read: distilled(atTwenty(parseStrength, 'strength')), write: writeStrength }),
  wishedStrength: option({ read: atTwenty(parseStrength, 'strength'), write: writeStrength }),
  sweetness: option({ read: parseSweetness, write: writeSweetness, suggested: 'sweetness' }),
  /** What a hydrometer, and what a refractometer, shows. */
  hydrometer: option({ read: parseHydrometer, write: writeHydrometer }),
  brix: option({ read: parseBrix, write: writeBrix }),
  ratio: option({ read: parseRatio, write: writeRatio }),
  /** Drinks of the trade; what must not be drunk is refused. */
  spirits: drinks(false),
  parts: drinks(true),
  country: option({ read: parseCountry, write: ({ name }) => name, suggested: 'country' }),
  region: option({ read: parseRegion, write: (region) => region, choices: regions }),
  month: option({ read: parseMonth, write: (month) => (month === 'now' ? 'now' : MONTH_NAMES[month - 1]!) }),
  botanical: option({ read: findOne, write: ({ typed }) => typed, suggested: 'botanicals' }),
  botanicals: option({ read: findListed, write: joined, ...PLANTS }),
  labelPlants: option({
    read: parseLabelPlants,
    write: (plants) => plants.map(({ item }) => item).join(' + '),
    ...PLANTS,
  }),
}
