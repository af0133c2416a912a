import { countryNamed, plainName } from '../../../core/label/parse-country.ts'
import { countryCodes } from '../../../core/label/parse-country-code.ts'
import { zonesWith } from '../../../core/quantity/time/parse-zone.ts'
import { minutesAt } from '../../../core/quantity/time/zone.ts'
import type { SuggestionText } from '../../text/discord-forms-text.ts'
import { unlikeliness } from './likely-zones.ts'
import type { Offer } from './offer.ts'
import { ranked, rankOf } from './rank.ts'

/** One for about every hour, where many people live; offered until something is typed. */
const WELL_KNOWN = [
  'UTC',
  'Europe/London',
  'Europe/Rome',
  'Europe/Paris',
  'Europe/Berlin',
  'Europe/Madrid',
  'Europe/Athens',
  'Europe/Istanbul',
  'Africa/Lagos',
  'Africa/Nairobi',
  'Asia/Dubai',
  'Asia/Kolkata',
  'Asia/Bangkok',
  'Asia/Shanghai',
  'Asia/Tokyo',
  'Australia/Sydney',
  'Pacific/Auckland',
  'America/Sao_Paulo',
  'America/Halifax',
  'America/New_York',
  'America/Chicago',
  'America/Denver',
  'America/Phoenix',
  'America/Los_Angeles',
  'Pacific/Honolulu',
] as const

const plainZone = (text: string): string => text.trim().toLowerCase().replaceAll('_', ' ')

/** Of the zones whose city or whole name begins so, those first where most people live who may be asking. */
const zonesBegun = (typed: string, locale: string): readonly string[] => {
  const key = plainZone(typed)
  const begins = (zone: string): boolean =>
    [zone, zone.slice(zone.lastIndexOf('/') + 1)].some((name) => plainZone(name).startsWith(key))
  const rank = (zone: string): number => (begins(zone) ? unlikeliness(zone, locale) : 2)
  return zonesWith(typed).toSorted((one, other) => rank(one) - rank(other))
}

interface ZonesAsked {
  readonly nowMs: number
  /** What Discord calls the person's language: `en-GB`. */
  readonly locale: string
  readonly most: number
}

/** Zones by their city, with what the clocks show there. */
export const suggestZones = (
  typed: string,
  { nowMs, locale, most }: ZonesAsked,
  text: SuggestionText,
): readonly Offer[] => {
  const zones = typed.trim() === '' ? WELL_KNOWN : zonesBegun(typed, locale)
  return zones.slice(0, most).map((zone) => ({
    name: text.zone({ zone, minutes: minutesAt(zone, nowMs) }),
    value: zone,
  }))
}

interface Country {
  readonly name: string
  readonly code: string
  readonly key: string
  readonly isOnRecord: boolean
}

const countryOf = (code: string, nameOf: SuggestionText['country']): Country => {
  const name = nameOf(code)
  return { name, code, key: plainName(name), isOnRecord: countryNamed(code) !== null }
}

/** By language; asking for 250 names takes a while. */
const memo = new WeakMap<SuggestionText, readonly Country[]>()

const countriesOf = (text: SuggestionText): readonly Country[] => {
  const known = memo.get(text)
  if (known !== undefined) return known
  const inOrder = (one: Country, other: Country): number =>
    Number(other.isOnRecord) - Number(one.isOnRecord) || one.name.localeCompare(other.name, 'en')
  const all = countryCodes.map((code) => countryOf(code, text.country)).sort(inOrder)
  memo.set(text, all)
  return all
}

/** Countries by name or by their two letters, those with a standard drink on record first. */
export const suggestCountries = (typed: string, text: SuggestionText): readonly Offer[] => {
  const key = plainName(typed)
  if (key === '' && typed.trim() !== '') return []
  const fits = (each: Country): number | null => (each.code.toLowerCase() === key ? 0 : rankOf(each.key, key))
  // Both readers of countries take the letters of those on record, and the name of any other.
  return ranked(countriesOf(text), fits).map(({ name, code, isOnRecord }) => ({
    name,
    value: isOnRecord ? code : name,
  }))
}
