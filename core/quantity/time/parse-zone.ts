import { DomainError } from '../../domain-error.ts'
import { lazily } from '../../once.ts'
import { editDistance } from '../../spelling/edit-distance.ts'
import { shown } from '../read/tokens.ts'

/** IANA names that Intl still gives by the name they had before; from memory, checked against Intl. */
const RENAMED: ReadonlyMap<string, string> = new Map([
  ['Africa/Asmera', 'Africa/Asmara'],
  ['America/Buenos_Aires', 'America/Argentina/Buenos_Aires'],
  ['America/Catamarca', 'America/Argentina/Catamarca'],
  ['America/Cordoba', 'America/Argentina/Cordoba'],
  ['America/Jujuy', 'America/Argentina/Jujuy'],
  ['America/Mendoza', 'America/Argentina/Mendoza'],
  ['America/Coral_Harbour', 'America/Atikokan'],
  ['America/Indianapolis', 'America/Indiana/Indianapolis'],
  ['America/Louisville', 'America/Kentucky/Louisville'],
  ['America/Godthab', 'America/Nuuk'],
  ['Asia/Calcutta', 'Asia/Kolkata'],
  ['Asia/Katmandu', 'Asia/Kathmandu'],
  ['Asia/Rangoon', 'Asia/Yangon'],
  ['Asia/Saigon', 'Asia/Ho_Chi_Minh'],
  ['Atlantic/Faeroe', 'Atlantic/Faroe'],
  ['Europe/Kiev', 'Europe/Kyiv'],
  ['Pacific/Enderbury', 'Pacific/Kanton'],
  ['Pacific/Ponape', 'Pacific/Pohnpei'],
  ['Pacific/Truk', 'Pacific/Chuuk'],
])

const UTC_NAMES = ['utc', 'gmt', 'z', 'zulu', 'etc/utc', 'etc/gmt']
/** `+02:00`, `UTC+2`: no zone, since it knows no summer time. */
const OFFSET = /^(?:utc|gmt)? ?[-+−–]/
/** The longest name has 32 characters. */
const LONGEST = 60
/** Without a region, `EST`, `BST` and their like mean other places to Intl than to those who type them. */
const ABBREVIATION = /^[a-z]{1,4}$|[0-9]/
const MOST_SUGGESTED = 3
/** Further off it is another city: Munich is no Zurich. */
const MOST_SLIPS = 1

/** In lower case without accents, every run of spaces and low lines as one space. */
const keyOf = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[\s_]+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .trim()

/** `port-au-prince` is typed as `port au prince` too, `st johns` as `st. john’s`. */
const looseKeyOf = (text: string): string => keyOf(text).replace(/-/g, ' ').replace(/[.'’]/g, '')

interface Names {
  /** By the whole name. */
  readonly whole: ReadonlyMap<string, string>
  /** By the city, the last part of the name. */
  readonly cities: ReadonlyMap<string, readonly string[]>
}

/** Every zone with a place to its name, under its old name as well as its new one. */
const names = lazily((): Names => {
  const whole = new Map<string, string>()
  const cities = new Map<string, readonly string[]>()
  for (const listed of Intl.supportedValuesOf('timeZone')) {
    const zone = RENAMED.get(listed) ?? listed
    for (const name of new Set([listed, zone])) {
      const city = looseKeyOf(name.split('/').at(-1) ?? name)
      whole.set(looseKeyOf(name), zone)
      cities.set(city, [...new Set([...(cities.get(city) ?? []), zone])])
    }
  }
  return { whole, cities }
})

/** A name that is not listed but known, such as `US/Pacific`, by the one that stands for it; null where there is none. */
const standingFor = (name: string): string | null => {
  try {
    const zone = new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone
    return RENAMED.get(zone) ?? zone
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}

const suggestions = (text: string): readonly string[] => {
  const city = looseKeyOf(text.split('/').at(-1) ?? text)
  if (city.length < 3 || city.length > LONGEST) return []
  const candidates = [...names().cities].flatMap(([name, zones]) => {
    const steps = name.startsWith(city) ? 0 : editDistance(city, name)
    return steps <= MOST_SLIPS ? zones.map((zone) => ({ zone, steps })) : []
  })
  const closest = candidates.sort((one, other) => one.steps - other.steps).map(({ zone }) => zone)
  return [...new Set(closest)].slice(0, MOST_SUGGESTED)
}

const rankOf = (name: string, key: string): number => {
  const city = name.slice(name.lastIndexOf('/') + 1)
  if (city.startsWith(key)) return 0
  if ([' ', '/'].some((before) => ` ${name}`.includes(before + key))) return 1
  return name.includes(key) ? 2 : 3
}

/** Zones that a text may be part of: of the city's beginning, then of a word's, then anywhere. `parseZone` takes them. */
export const zonesWith = (text: string): readonly string[] => {
  const key = looseKeyOf(text.slice(0, LONGEST))
  const all = [['utc', 'UTC'] as const, ...names().whole].map(([name, zone]) => ({ zone, rank: rankOf(name, key) }))
  return [...new Set([0, 1, 2].flatMap((rank) => all.filter((each) => each.rank === rank).map(({ zone }) => zone)))]
}

/**
 * The IANA name of a zone in its own spelling, from the name in any case with spaces for low lines (`america/new york`),
 * from a city alone where one zone is named after it (`rome`), or `UTC`. Throws `offset_zone` for a bare offset, else
 * `unknown_zone` with the zones nearest.
 */
export const parseZone = (text: string): string => {
  const key = keyOf(text.slice(0, 2 * LONGEST))
  if (UTC_NAMES.includes(key)) return 'UTC'
  if (OFFSET.test(key)) throw new DomainError('bad_value', 'offset_zone', { typed: shown(text) })
  const { whole, cities } = names()
  const named = cities.get(looseKeyOf(key)) ?? []
  const isAbbreviation = ABBREVIATION.test(key) && !key.includes('/')
  const listed = whole.get(looseKeyOf(key)) ?? (named.length === 1 ? named[0] : undefined)
  const zone = listed ?? (isAbbreviation ? null : standingFor(key.replaceAll(' ', '_')))
  if (zone !== null) return zone
  const nearest = named.length > 1 ? named : suggestions(key)
  throw new DomainError('bad_value', 'unknown_zone', { typed: shown(text), nearest })
}
