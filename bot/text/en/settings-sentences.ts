import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { isoTime } from '../../../core/quantity/time/calendar-day.ts'
import { weekdayOf } from '../../../core/quantity/time/weekday-date.ts'
import type { Kitchen } from '../kitchen.ts'
import { dayText, WEEKDAYS } from './day-text.ts'
import { countryByCode } from './label/country-by-code.ts'
import { listed } from './phrases.ts'

const unitNames: Readonly<Record<Kitchen, string>> = { metric: 'metric', us: 'US', imperial: 'imperial' }

const chosenUnits = (units: Kitchen | null): string => (units === null ? 'units as typed' : `${unitNames[units]} units`)

const chosenCountry = (country: string | null): string =>
  country === null ? 'no country' : `country ${countryByCode(country)}`

const chosenZone = (zone: string | null): string => (zone === null ? 'no time zone of your own' : `time zone ${zone}`)

/** What `/settings` says. */
export const settingsSentences = {
  headlines: {
    /** What was chosen just now; null where a choice was taken back. */
    settings: ({
      units,
      country,
      zone,
    }: {
      readonly units?: Kitchen | null
      readonly country?: string | null
      readonly zone?: string | null
    }) => {
      const chosen = [
        ...(units === undefined ? [] : [chosenUnits(units)]),
        ...(country === undefined ? [] : [chosenCountry(country)]),
        ...(zone === undefined ? [] : [chosenZone(zone)]),
      ]
      return chosen.length === 0 ? 'These are your settings.' : `Noted: ${listed(chosen)}.`
    },
  },

  rows: {
    settings_units: () => 'Units',
    settings_country: () => 'Country',
    settings_zone: () => 'Time zone',
  },

  cells: {
    settings_units: ({ units }: { readonly units: Kitchen | null }) => {
      if (units === null) return 'as you type them'
      return units === 'metric' ? unitNames.metric : `${unitNames[units]}, metric beside it`
    },
    settings_country: ({ country }: { readonly country: string | null }) =>
      country === null ? 'none' : countryByCode(country),
    settings_zone: (values: {
      readonly zone: string
      readonly isAssumed: boolean
      readonly day: CalendarDay
      readonly minutes: number
    }) =>
      `${values.zone}${values.isAssumed ? ' (assumed)' : ''}, where it is ${isoTime(values.minutes)} on ${WEEKDAYS[weekdayOf(values.day)]} ${dayText(values.day)}`,
  },

  notes: {
    settings_zone_assumed: () =>
      'You chose no time zone. To go by a city near you, type for example /settings zone:Rome',
    settings_no_country: () =>
      'country: decides how I read dates such as 6/7, whose standard drinks I count and whose law I look at.',
    settings_zone_ahead: () => 'What is written of your jars keeps its days; what is still to come goes by this zone.',
  },
}

/** Help for `/settings`. */
export const settingsText = {
  summary: 'Your units, country and time zone: shows them, or changes those you give',
  options: {
    units: 'Measures of every reply: metric, us or imperial; “as typed” follows what you type',
    country: 'Where you live, for dates, standard drinks and law: Italy, GB; none takes it back',
    zone: 'A city near you or a zone: Rome, Europe/Rome, UTC; default takes it back',
  },
  examples: ['/settings units:metric country:Italy zone:Rome', '/settings units:as typed'],
}
