/** One zone of nearly every offset that people live at, west to east. */
const EVERYWHERE = [
  'Pacific/Honolulu',
  'America/Anchorage',
  'America/Los_Angeles',
  'America/Denver',
  'America/Mexico_City',
  'America/New_York',
  'America/Halifax',
  'America/Sao_Paulo',
  'Atlantic/Azores',
  'Europe/London',
  'Europe/Rome',
  'Europe/Athens',
  'Europe/Istanbul',
  'Asia/Dubai',
  'Asia/Karachi',
  'Asia/Kolkata',
  'Asia/Dhaka',
  'Asia/Bangkok',
  'Asia/Shanghai',
  'Asia/Tokyo',
  'Australia/Brisbane',
  'Australia/Sydney',
  'Pacific/Auckland',
] as const

/** Where most who speak it live, by what Discord calls a language or its first part. */
const BY_LOCALE: Readonly<Record<string, readonly string[]>> = {
  'en-US': ['America/New_York', 'America/Chicago', 'America/Denver', 'America/Los_Angeles', 'America/Phoenix'],
  'en-GB': ['Europe/London', 'Europe/Dublin'],
  'es-ES': ['Europe/Madrid', 'Atlantic/Canary'],
  'es-419': ['America/Mexico_City', 'America/Bogota', 'America/Argentina/Buenos_Aires', 'America/Santiago'],
  'pt-BR': ['America/Sao_Paulo', 'America/Manaus'],
  it: ['Europe/Rome'],
  de: ['Europe/Berlin', 'Europe/Vienna', 'Europe/Zurich'],
  fr: ['Europe/Paris', 'Europe/Brussels', 'America/Toronto'],
  nl: ['Europe/Amsterdam', 'Europe/Brussels'],
  pl: ['Europe/Warsaw'],
  cs: ['Europe/Prague'],
  hu: ['Europe/Budapest'],
  da: ['Europe/Copenhagen'],
  no: ['Europe/Oslo'],
  'sv-SE': ['Europe/Stockholm'],
  fi: ['Europe/Helsinki'],
  lt: ['Europe/Vilnius'],
  ro: ['Europe/Bucharest'],
  bg: ['Europe/Sofia'],
  el: ['Europe/Athens'],
  hr: ['Europe/Zagreb'],
  tr: ['Europe/Istanbul'],
  uk: ['Europe/Kiev'],
  ru: ['Europe/Moscow', 'Asia/Yekaterinburg', 'Asia/Novosibirsk'],
  hi: ['Asia/Kolkata'],
  th: ['Asia/Bangkok'],
  vi: ['Asia/Ho_Chi_Minh'],
  id: ['Asia/Jakarta', 'Asia/Makassar'],
  'zh-CN': ['Asia/Shanghai'],
  'zh-TW': ['Asia/Taipei'],
  ja: ['Asia/Tokyo'],
  ko: ['Asia/Seoul'],
}

/** Of a choice in Discord. */
export const MOST_ZONES = 25

/** Zones (IANA names) to choose from, those of the language first, then one of every offset. */
export const likelyZones = (locale: string): readonly string[] =>
  [...new Set([...(BY_LOCALE[locale] ?? []), ...EVERYWHERE])].slice(0, MOST_ZONES)

const somewhereLikely: ReadonlySet<string> = new Set([...EVERYWHERE, ...Object.values(BY_LOCALE).flat()])

/** How likely somebody of that language lives in a zone, the most likely with 0. */
export const unlikeliness = (zone: string, locale: string): 0 | 1 | 2 =>
  BY_LOCALE[locale]?.includes(zone) ? 0 : somewhereLikely.has(zone) ? 1 : 2
