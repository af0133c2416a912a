import type { CountryId, DrinkingLimit, DrinkSize, Guidance, Remark } from '../../../core/label/country.ts'
import type { Cited, LawSourceKey } from '../../../core/label/sources.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { spreadDigits } from '../../../core/quantity/measured/shown-digits.ts'
import { kitchenRounded } from '../../../core/recipe/tool-precision.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type { ServingMessages } from '../messages/serving.ts'
import { listed } from './phrases.ts'
import { ifDrunk } from './plant-refusals.ts'
import { countryInSentence, countryNames } from './words.ts'

/** Sources by the name a reader knows them by. */
const sourceNames: Readonly<Record<LawSourceKey, string>> = {
  eu_2019_787: 'Regulation (EU) 2019/787',
  eu_110_2008: 'Regulation (EC) 110/2008',
  eu_1169_2011: 'Regulation (EU) 1169/2011',
  cfr_27_5: '27 CFR 5.150',
  cfr_27_19: '27 CFR 19.356',
  gi_sorrento: 'product file of 2012',
  gi_mirto: 'product file of 2013',
  gi_genepi: 'product file of 2012',
  gi_pacharan: 'its regulation',
  uk_si_1989_768: 'SI 1989/768',
  uk_cmo_2016: 'UK Chief Medical Officers 2016',
  drinks_table: 'a table of standard drinks by country',
  icap_table: 'a table of drinking guidelines by country',
  intake_table: 'a table of recommended maximum intake',
  kalinowski_2016: 'Kalinowski and Humphreys 2016',
  who_2023: 'World Health Organization 2023',
  memory: '',
}

const HOW_FAR: Readonly<Record<Cited['trust'], string>> = {
  published: '',
  secondary: 'read second-hand',
  memory: 'from memory',
}

/** ` (UK Chief Medical Officers 2016)`, ` (from memory, please check)`: where a figure stands and how far to trust it. */
export const cited = ({ sources, trust }: Cited): string => {
  const names = sources.map((key) => sourceNames[key]).filter((name) => name !== '')
  const parts = [...(names.length > 0 ? [listed(names)] : []), ...(HOW_FAR[trust] === '' ? [] : [HOW_FAR[trust]])]
  return ` (${parts.join(', ')})`
}

const WHO: Readonly<Record<DrinkingLimit['who'], string>> = {
  everyone: '',
  men: ' for men',
  women: ' for women',
  women_young_old: ' for women, the over-65s and those of 18 to 21',
}

const PER: Readonly<Record<DrinkingLimit['per'], string>> = { day: 'a day', week: 'a week', any_day: 'on any one day' }

const REMARKS: Readonly<Record<Remark, string>> = {
  spread_three_days: 'spread over three days or more',
  drink_free_days: 'with days without any',
  two_free_days: 'with two days without any',
  not_every_day: 'and not every day',
  may_be_outdated: 'from an edition that a newer one may have replaced',
  newer_is_lower: 'an older figure, and newer advice is lower',
  risk_rises_there: 'the level from which the risk of illness rises, not a safe one',
  no_safe_level: 'no amount is safe for health',
}

const limitWords = ({ who, amount, unit, per }: DrinkingLimit, format: Format): string => {
  const drinks = amount === 1 ? 'drink' : 'drinks'
  return `${format.plain(amount)} ${unit === 'g' ? 'g' : drinks} ${PER[per]}${WHO[who]}`
}

/** `at most 14 drinks a week, spread over three days or more`. */
const guidanceWords = ({ limits, remarks }: Guidance, format: Format): string => {
  const most = limits.length === 0 ? [] : [`at most ${listed(limits.map((limit) => limitWords(limit, format)))}`]
  return [...most, ...remarks.map((remark) => REMARKS[remark])].join(', ')
}

/** Keeps a number and its unit on one line. */
const NBSP = '\u00a0'

/** The value and its ± side by side, without units. */
const beside = ({ value, plusMinus }: Measured, format: Format) => {
  const spread = spreadDigits(value, plusMinus)
  return {
    value: format.number(spread.value.roundedValue, spread.value.decimals),
    plusMinus: format.number(spread.plusMinus.roundedValue, spread.plusMinus.decimals),
  }
}

/** A glass is poured by eye or by a jug, so that two digits are all it tells; alcohol is counted in grams in every kitchen. */
const twoDigits = (value: number, format: Format): string =>
  format.plain(value < 10 ? value : Number(value.toPrecision(2)), value < 10 ? 1 : 0)

/** What a glass is too little to tell of. */
const LEAST = 0.1

const grams = ({ value }: Measured, format: Format): string =>
  value < LEAST
    ? `less than ${format.plain(LEAST, 1)}${NBSP}g`
    : `about ${format.plain(kitchenRounded(value).value, 1)}${NBSP}g`

/** In the United Kingdom a standard drink is called a unit. */
const drinkCount = ({ value }: Measured, country: CountryId, format: Format): string => {
  const [one, many] = country === 'uk' ? ['unit', 'units'] : ['standard drink', 'standard drinks']
  if (value < LEAST) return `hardly any of a ${one}`
  if (Math.abs(value - 1) < LEAST / 2) return `one ${one}`
  return `${twoDigits(value, format)} ${value < 1 ? `of a ${one}` : many}`
}
const sizeWords = ({ drinkG, pureMl }: DrinkSize, format: Format): string =>
  pureMl === null
    ? `${format.plain(drinkG)}${NBSP}g of alcohol`
    : `${format.plain(pureMl)}${NBSP}ml of pure alcohol, about ${format.plain(drinkG)}${NBSP}g`

/** What `/serving` says. */
export const servingSentences = {
  headlines: {
    serving: (values, format) => {
      const { counted } = values
      const glass = `${format.round.volume(values.pourMl.value)} at ${format.round.strength(values.abvPercent)}`
      const drinks =
        counted === null
          ? ''
          : `, ${drinkCount(counted.drinks, counted.country, format)} in ${countryNames[counted.country]}`
      return `${glass} has ${grams(values.ethanolG, format)} of alcohol${drinks}.`
    },
  },

  rows: {
    pure_alcohol: () => 'Alcohol',
    standard_drink: () => 'Standard drink',
    drinks: () => 'Drinks',
  },

  cells: {
    alcohol_spread: ({ massG }, format) => {
      const { value, plusMinus } = beside(massG, format)
      return `${value}${NBSP}g ± ${plusMinus}${NBSP}g`
    },
    standard_drink: ({ country, drink }, format) =>
      `${sizeWords(drink, format)} in ${countryNames[country]}${cited(drink)}${drink.otherG === undefined ? '' : `, or ${format.plain(drink.otherG)}${NBSP}g, which is counted there too`}`,
    drinks: ({ drinks }, format) => {
      const { value, plusMinus } = beside(drinks, format)
      return `${value} ± ${plusMinus}`
    },
  },

  notes: {
    guidance: ({ country, guidance }, format) => {
      const who =
        country === 'who' ? 'The World Health Organization tells adults' : `Adults in ${countryNames[country]} are told`
      return `${who}: ${guidanceWords(guidance, format)}${cited(guidance)}.`
    },
    no_guidance: ({ country }) => `I have no official guidance on record for ${countryNames[country]}.`,
    no_drink_size: ({ country }) =>
      `I have no standard drink on record for ${countryNames[country]}, so I give grams only.`,
    unknown_country: ({ typed, nearest }) =>
      `I don’t know the standard drink of “${typed}”, so it’s grams only.${nearest === null ? '' : ` Did you mean ${countryNames[nearest]}?`}`,
    own_country: ({ code }) => `That’s for ${countryInSentence(code)}, from your /settings.`,
    zone_country: ({ code }) =>
      `That’s for ${countryInSentence(code)}, by your time zone. For another: ${lineTyped('settings', { country: code === 'IT' ? 'IE' : 'IT' })}`,
    own_country_unknown: ({ code }) =>
      `I know no standard drink for ${countryInSentence(code)}, the country in your /settings, so I give grams only.`,
    one_glass: (values, format) => {
      const { heavyG, dangerousG, adultKg, gPerL } = values
      return (
        `In one go ${format.plain(heavyG)} g of alcohol or more is heavy drinking (World Health Organization).` +
        ` About ${format.plain(dangerousG)} g brings an adult of ${format.plain(adultKg)} kg near ${format.plain(gPerL, 1)} g in a litre of blood. There life is in danger (both from memory).`
      )
    },
    name_a_country: ({ line }, format) => `To count standard drinks, name a country: ${format.call(line)}`,
  },

  cautions: {
    dangerous_glass: () =>
      `Never drink that in one go: it can kill, and far less can kill a child. ${ifDrunk()} Don’t leave them to sleep it off.`,
    heavy_glass: () => 'That’s heavy drinking in one glass. Share it out, or pour much less.',
    neat_spirit: () => 'Spirit this strong burns mouth and throat and poisons fast: never drink or serve it undiluted.',
    law_and_doctor: () =>
      'Not if you’re pregnant or trying for a baby, under age, or about to drive, swim or use machines.' +
      ' On medicines, with liver disease or a past dependence? Ask a doctor or pharmacist. Your local law comes first.',
  },

  actions: {
    count_in: ({ country }) => `Count it in ${countryNames[country]}`,
  },
} satisfies Feature<ServingMessages>
