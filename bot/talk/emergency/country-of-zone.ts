/** Zones of the countries whose numbers are known, by the IANA list, from memory; of it come an example line and whose drinks are counted. */
const COUNTRIES: Readonly<Record<string, string>> = {
  'Europe/Vienna': 'AT',
  'Europe/Brussels': 'BE',
  'Europe/Sofia': 'BG',
  'Europe/Zagreb': 'HR',
  'Asia/Nicosia': 'CY',
  'Europe/Prague': 'CZ',
  'Europe/Copenhagen': 'DK',
  'Europe/Tallinn': 'EE',
  'Europe/Helsinki': 'FI',
  'Europe/Paris': 'FR',
  'Europe/Berlin': 'DE',
  'Europe/Athens': 'GR',
  'Europe/Budapest': 'HU',
  'Europe/Dublin': 'IE',
  'Europe/Rome': 'IT',
  'Europe/Riga': 'LV',
  'Europe/Vilnius': 'LT',
  'Europe/Luxembourg': 'LU',
  'Europe/Malta': 'MT',
  'Europe/Amsterdam': 'NL',
  'Europe/Warsaw': 'PL',
  'Europe/Lisbon': 'PT',
  'Europe/Bucharest': 'RO',
  'Europe/Bratislava': 'SK',
  'Europe/Ljubljana': 'SI',
  'Europe/Madrid': 'ES',
  'Europe/Stockholm': 'SE',
  'Europe/London': 'GB',
  'Europe/Zurich': 'CH',
  'Europe/Oslo': 'NO',
  'Atlantic/Reykjavik': 'IS',
  'America/New_York': 'US',
  'America/Chicago': 'US',
  'America/Denver': 'US',
  'America/Los_Angeles': 'US',
  'America/Toronto': 'CA',
  'America/Vancouver': 'CA',
  'America/Mexico_City': 'MX',
  'Australia/Sydney': 'AU',
  'Australia/Melbourne': 'AU',
  'Australia/Brisbane': 'AU',
  'Pacific/Auckland': 'NZ',
  'Asia/Tokyo': 'JP',
  'Asia/Kolkata': 'IN',
  'Africa/Johannesburg': 'ZA',
  'America/Sao_Paulo': 'BR',
  'America/Argentina/Buenos_Aires': 'AR',
}

/** The country of a zone, two letters; null where it is not known. No reason to show a number to call as if it were sure. */
export const countryInZone = (zone: string): string | null => COUNTRIES[zone] ?? null

/** Whose numbers are shown, and said to be assumed, where nobody has named a country: the one whose 911 is nobody else's 112. */
export const countryAssumedInZone = (zone: string): 'US' | null => (COUNTRIES[zone] === 'US' ? 'US' : null)

/** A country to show in a line to type: the zone's, else Ireland. Never a reason to show a number. */
export const countryOfZone = (zone: string): string => COUNTRIES[zone] ?? 'IE'

/** A zone of a country, two letters, to show in a line to type; null where none is known. */
export const zoneInCountry = (country: string): string | null =>
  Object.entries(COUNTRIES).find(([, code]) => code === country)?.[0] ?? null
