import { DomainError } from '../domain-error.ts'
import { lazily } from '../once.ts'
import { shown } from '../quantity/read/tokens.ts'
import { editDistance } from '../spelling/edit-distance.ts'
import { countryNamed, plainName } from './parse-country.ts'

/** ISO 3166-1, the 249 of it, and the XK that is in use for Kosovo; from memory, checked against the names of Intl. */
const CODES =
  'AD AE AF AG AI AL AM AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ BR BS BT BV BW BY BZ CA CC ' +
  'CD CF CG CH CI CK CL CM CN CO CR CU CV CW CX CY CZ DE DJ DK DM DO DZ EC EE EG EH ER ES ET FI FJ FK FM FO FR GA GB GD ' +
  'GE GF GG GH GI GL GM GN GP GQ GR GS GT GU GW GY HK HM HN HR HT HU ID IE IL IM IN IO IQ IR IS IT JE JM JO JP KE KG KH ' +
  'KI KM KN KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK ML MM MN MO MP MQ MR MS MT MU MV MW ' +
  'MX MY MZ NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM PN PR PS PT PW PY QA RE RO RS RU RW SA SB SC ' +
  'SD SE SG SH SI SJ SK SL SM SN SO SR SS ST SV SX SY SZ TC TD TF TG TH TJ TK TL TM TN TO TR TT TV TW TZ UA UG UM US UY ' +
  'UZ VA VC VE VG VI VN VU WF WS XK YE YT ZA ZM ZW'

export const countryCodes: readonly string[] = CODES.split(' ')

/** What people call a country besides its name in English and Italian. */
const OTHER_NAMES: readonly (readonly [name: string, code: string])[] = [
  ['turkey', 'TR'],
  ['czech republic', 'CZ'],
  ['repubblica ceca', 'CZ'],
  ['ivory coast', 'CI'],
  ['macau', 'MO'],
  ['macao', 'MO'],
  ['cabo verde', 'CV'],
  ['swaziland', 'SZ'],
  ['palestine', 'PS'],
  ['palestina', 'PS'],
  ['east timor', 'TL'],
  ['vatican', 'VA'],
  ['uae', 'AE'],
  ['macedonia', 'MK'],
  ['bosnia', 'BA'],
  ['congo kinshasa', 'CD'],
  ['dr congo', 'CD'],
  ['congo brazzaville', 'CG'],
]

/** Longer ones have no near relative. */
const LONGEST = 40

/** `Bosnia & Herzegovina` and `bosnia and herzegovina` are one. */
const keyOf = (name: string): string =>
  plainName(name)
    .replace(/ (?:and|e) /g, ' ')
    .replace(/^saint /, 'st ')

/** `Myanmar (Burma)` goes by both names. */
const keysOf = (name: string): readonly string[] =>
  [name, ...name.split(/[()]/)].map(keyOf).filter((key) => key !== '' && key !== 'keeling')

/** Names in lower case without accents, and codes. Asking for 500 names takes a while, so only once they are needed. */
const codesByName = lazily((): ReadonlyMap<string, string> => {
  const languages = ['it', 'en'].map((language) => new Intl.DisplayNames([language], { type: 'region' }))
  return new Map([
    ...languages.flatMap((names) =>
      countryCodes.flatMap((code) => keysOf(names.of(code) ?? code).map((key): [string, string] => [key, code])),
    ),
    ...OTHER_NAMES,
    ...countryCodes.map((code): [string, string] => [code.toLowerCase(), code]),
  ])
})

/** By a name on record with the standard drinks: `England`, `regno unito`, `USA`. */
const recorded = (text: string): string | null => {
  const code = countryNamed(text)?.names.find((name) => countryCodes.includes(name.toUpperCase()))
  return code?.toUpperCase() ?? null
}

const nearestName = (key: string): string | null => {
  if (key.length < 4 || key.length > LONGEST) return null
  const most = Math.floor(key.length / 3)
  const [closest] = [...codesByName().keys()]
    .map((name) => ({ name, steps: editDistance(key, name) }))
    .filter(({ name, steps }) => name.length > 3 && steps <= most)
    .sort((one, other) => one.steps - other.steps)
  return closest === undefined ? null : (codesByName().get(closest.name) ?? null)
}

/**
 * The two letters (ISO 3166-1) of the country that a name in English or Italian or a code means, whatever is on record
 * of it. Throws `unknown_country_code`, with the letters of the nearest name.
 */
export const parseCountryCode = (text: string): string => {
  const key = keyOf(text)
  const code = recorded(text) ?? codesByName().get(key)
  if (code !== undefined) return code
  throw new DomainError('bad_value', 'unknown_country_code', { typed: shown(text), nearest: nearestName(key) })
}
