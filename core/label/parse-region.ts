import { DomainError } from '../domain-error.ts'
import { shown } from '../quantity/read/tokens.ts'
import { plainName } from './parse-country.ts'

/** Where labelling law is on record. */
export type Region = 'eu' | 'us' | 'uk'

export const regions: readonly Region[] = ['eu', 'us', 'uk']

/** The law that holds in the United States and in Great Britain, by all their names; the rest are members of the EU. */
const OTHERS: ReadonlyMap<string, Region> = new Map([
  ...named('us', 'us', 'usa', 'united states', 'united states of america', 'america', 'stati uniti'),
  ...named('uk', 'uk', 'gb', 'gbr', 'united kingdom', 'great britain', 'britain', 'england', 'scotland', 'wales'),
  ...named('uk', 'regno unito', 'gran bretagna', 'inghilterra', 'scozia', 'galles'),
])

/** The Union, and its 27 members in English, Italian and by code. From memory. */
const MEMBERS: ReadonlySet<string> = new Set([
  ...['eu', 'ue', 'europe', 'europa', 'european union', 'unione europea'],
  ...[
    'austria',
    'at',
    'belgium',
    'belgio',
    'be',
    'bulgaria',
    'bg',
    'croatia',
    'croazia',
    'hr',
    'cyprus',
    'cipro',
    'cy',
  ],
  ...['czechia', 'czech republic', 'cechia', 'repubblica ceca', 'cz', 'denmark', 'danimarca', 'dk', 'estonia', 'ee'],
  ...['finland', 'finlandia', 'fi', 'france', 'francia', 'fr', 'germany', 'germania', 'de', 'greece', 'grecia', 'gr'],
  ...['hungary', 'ungheria', 'hu', 'ireland', 'irlanda', 'ie', 'italy', 'italia', 'it', 'latvia', 'lettonia', 'lv'],
  ...['lithuania', 'lituania', 'lt', 'luxembourg', 'lussemburgo', 'lu', 'malta', 'mt', 'netherlands', 'holland'],
  ...['paesi bassi', 'olanda', 'nl', 'poland', 'polonia', 'pl', 'portugal', 'portogallo', 'pt', 'romania', 'ro'],
  ...['slovakia', 'slovacchia', 'sk', 'slovenia', 'si', 'spain', 'spagna', 'es', 'sweden', 'svezia', 'se'],
])

function named(region: Region, ...names: readonly string[]): readonly [string, Region][] {
  return names.map((name) => [name, region])
}

/** The region of a name or a country's two letters; null where there is none on record. */
export const regionNamed = (text: string): Region | null => {
  const name = plainName(text)
  return MEMBERS.has(name) ? 'eu' : (OTHERS.get(name) ?? null)
}

/** `EU`, `US` or `UK`, or the name of a country in one of them. Throws `unknown_region`. */
export const parseRegion = (text: string): Region => {
  const region = regionNamed(text)
  if (region === null) throw new DomainError('bad_value', 'unknown_region', { typed: shown(text) })
  return region
}
