import { expect, test } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import { countries } from '../../../core/label/countries.ts'
import { countryCodes, parseCountryCode } from '../../../core/label/parse-country-code.ts'

const problemOf = (text: string) => {
  try {
    return parseCountryCode(text)
  } catch (error) {
    if (error instanceof DomainError) return { problem: error.problem, ...error.values }
    throw error
  }
}

// ISO 3166-1 has 249 codes (from memory); XK is in use beside them.
test('knows every code of ISO 3166-1, as Intl names it, by code and by name', () => {
  expect(new Set(countryCodes).size).toBe(250)
  for (const language of ['en', 'it']) {
    const names = new Intl.DisplayNames([language], { type: 'region', fallback: 'none' })
    for (const code of countryCodes) {
      // A code that another has replaced would come back as that one.
      expect(new Intl.Locale(`und-${code}`).region).toBe(code)
      const name = names.of(code)
      expect(name, code).toBeDefined()
      expect(parseCountryCode(name!), name).toBe(code)
      expect(parseCountryCode(code.toLowerCase())).toBe(code)
    }
  }
})

test('gives a code by which every country with a standard drink is found again', () => {
  for (const { id, names } of countries.filter((country) => country.id !== 'who')) {
    const codes = new Set(names.map(parseCountryCode))
    expect([id, codes.size]).toEqual([id, 1])
    const [code = ''] = codes
    expect(names).toContain(code.toLowerCase())
  }
})

test.each([
  ['England', 'GB'],
  ['uk', 'GB'],
  ['U.S.A.', 'US'],
  ['the Netherlands', 'NL'],
  ['Bosnia and Herzegovina', 'BA'],
  ['Trinidad e Tobago', 'TT'],
  ['saint lucia', 'LC'],
  ['burma', 'MM'],
  ['Turkey', 'TR'],
  ['Côte d’Ivoire', 'CI'],
  ['Czech Republic', 'CZ'],
])('%s is %s', (typed, code) => {
  expect(parseCountryCode(typed)).toBe(code)
})

test.each([
  ['Itly', 'IT'],
  ['Germny', 'DE'],
  ['Shangri-La-La', null],
  ['WHO', null],
  ['EU', null],
  ['zz', null],
  ['', null],
  ['🍋', null],
  ['constructor', null],
])('%j is no country; the nearest is %s', (typed, nearest) => {
  expect(problemOf(typed)).toEqual({ problem: 'unknown_country_code', typed, nearest })
})

// The longest name has 36 letters, and no name of more than 40 is near to one.
test.each([
  [40, 'GS'],
  [41, null],
])('of a name of %i letters the nearest is %s', (letters, nearest) => {
  expect(problemOf('south georgia south sandwich islands'.padEnd(letters, 'x'))).toMatchObject({ nearest })
})
