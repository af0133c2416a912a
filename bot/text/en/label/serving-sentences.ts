import type { CountryId, DrinkSize, Guidance } from '../../../../core/label/country.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import { digits, plusMinusDigits } from '../../../../core/quantity/measured/shown-digits.ts'
import type { Format } from '../../format.ts'
import { ifDrunk } from '../if-drunk.ts'
import { countryInSentence } from './country-by-code.ts'
import { countryNames } from './country-names.ts'
import { guidanceWords } from './guidance-words.ts'
import { cited } from './source-names.ts'

/** Keeps a number and its unit on one line. */
const NBSP = '\u00a0'

const shown = ({ value, plusMinus }: Measured, format: Format): string => {
  const { roundedValue, decimals } = digits(value, plusMinus)
  return format.number(roundedValue, decimals)
}

const spread = ({ plusMinus }: Measured, format: Format): string => {
  const { roundedValue, decimals } = plusMinusDigits(plusMinus)
  return format.number(roundedValue, decimals)
}

/** Alcohol is counted in grams in every kitchen. */
const grams = (massG: Measured, format: Format): string => `${shown(massG, format)}${NBSP}g`

const drinkCount = (drinks: Measured, format: Format): string => {
  if (Math.abs(drinks.value - 1) < 0.005) return 'one standard drink'
  return `${shown(drinks, format)} ${drinks.value < 1 ? 'of a standard drink' : 'standard drinks'}`
}

interface Size {
  readonly country: CountryId
  readonly drink: DrinkSize
}

const sizeWords = ({ drinkG, pureMl }: DrinkSize, format: Format): string =>
  pureMl === null
    ? `${format.plain(drinkG)}${NBSP}g of alcohol`
    : `${format.plain(pureMl)}${NBSP}ml of pure alcohol, about ${format.plain(drinkG)}${NBSP}g`

/** What `/serving` says. */
export const servingSentences = {
  headlines: {
    serving: (
      values: {
        readonly pourMl: Measured
        readonly abvPercent: Measured
        readonly ethanolG: Measured
        /** Null where the size of a drink there is not known. */
        readonly counted: { readonly drinks: Measured; readonly country: CountryId } | null
      },
      format: Format,
    ) => {
      const { counted } = values
      const glass = `${format.volume(values.pourMl)} at ${format.strength(values.abvPercent)}`
      const drinks =
        counted === null ? '' : `, ${drinkCount(counted.drinks, format)} in ${countryNames[counted.country]}`
      return `${glass} hold about ${grams(values.ethanolG, format)} of alcohol${drinks}.`
    },
  },

  rows: {
    pure_alcohol: () => 'Alcohol',
    standard_drink: () => 'Standard drink',
    drinks: () => 'Drinks in it',
  },

  cells: {
    alcohol_spread: ({ massG }: { readonly massG: Measured }, format: Format) =>
      `${grams(massG, format)} ± ${spread(massG, format)}${NBSP}g`,
    standard_drink: ({ country, drink }: Size, format: Format) =>
      `${sizeWords(drink, format)} in ${countryNames[country]}${cited(drink)}`,
    drinks: ({ drinks }: { readonly drinks: Measured }, format: Format) =>
      `${shown(drinks, format)} ± ${spread(drinks, format)}`,
  },

  notes: {
    guidance: ({ country, guidance }: { readonly country: CountryId; readonly guidance: Guidance }, format: Format) => {
      const who =
        country === 'who' ? 'The World Health Organization tells adults' : `Adults in ${countryNames[country]} are told`
      return `${who}: ${guidanceWords(guidance, format)}${cited(guidance)}.`
    },
    no_guidance: ({ country }: { readonly country: CountryId }) =>
      `I have no official guidance on record for ${countryNames[country]}.`,
    no_drink_size: ({ country }: { readonly country: CountryId }) =>
      `I have no standard drink on record for ${countryNames[country]}, so I give grams only.`,
    unknown_country: ({ typed, nearest }: { readonly typed: string; readonly nearest: CountryId | null }) =>
      `I know no standard drink for “${typed}”, so I give grams only.${nearest === null ? '' : ` Did you mean ${countryNames[nearest]}?`}`,
    own_country: ({ code }: { readonly code: string }) =>
      `You named no country, so I took ${countryInSentence(code)}, as in your /settings.`,
    own_country_unknown: ({ code }: { readonly code: string }) =>
      `I know no standard drink for ${countryInSentence(code)}, the country in your /settings, so I give grams only.`,
    one_glass: (
      values: {
        readonly heavyG: number
        readonly dangerousG: number
        readonly adultKg: number
        readonly gPerL: number
      },
      format: Format,
    ) => {
      const { heavyG, dangerousG, adultKg, gPerL } = values
      return (
        `In one go ${format.plain(heavyG)} g of alcohol or more is heavy drinking (World Health Organization).` +
        ` From about ${format.plain(dangerousG)} g an adult of ${format.plain(adultKg)} kg comes near ${format.plain(gPerL, 1)} g in a litre of blood, where life is in danger (both from memory, please check).`
      )
    },
    name_a_country: () => 'Name a country, as in country:Italy, and I count its standard drinks too.',
  },

  cautions: {
    dangerous_glass: () =>
      `Never drink that in one go: it can kill, and far less can kill a child. ${ifDrunk()} Don’t leave them to sleep it off.`,
    heavy_glass: () => 'That’s heavy drinking in one glass. Share it out, or pour much less.',
    neat_spirit: () =>
      'Spirit this strong burns mouth and throat and poisons fast: never drink or serve it undiluted (from memory, please check).',
    law_and_doctor: () =>
      'None in pregnancy or when trying for a baby, none before driving, swimming or working with machines, none for anybody under age;' +
      ' with medicines, liver disease or a past dependence ask a doctor or pharmacist. The law where you are comes before anything said here.',
  },

  actions: {
    count_in: ({ country }: { readonly country: CountryId }) => `Count it in ${countryNames[country]}`,
  },
}
