import { countryNamed } from '../../../../core/label/parse-country.ts'
import { countryNames } from './country-names.ts'

/** Besides those in `country-names.ts`. */
const WITH_ARTICLE = new Set('AE BS CC CF CK DO FK FO GM IM IO KM KY MH MP MV PH SB SC TC TF UM VG VI'.split(' '))

/** What English calls the country of two letters (ISO 3166), standing alone: `Netherlands`. */
export const countryByCode = (code: string): string =>
  new Intl.DisplayNames(['en'], { type: 'region', fallback: 'code' }).of(code) ?? code

/** The same within a sentence: `the Netherlands`. */
export const countryInSentence = (code: string): string => {
  const known = countryNamed(code)
  if (known !== null) return countryNames[known.id]
  return `${WITH_ARTICLE.has(code) ? 'the ' : ''}${countryByCode(code)}`
}
