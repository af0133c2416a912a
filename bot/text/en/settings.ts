import { isoTime } from '../../../core/quantity/time/calendar-day.ts'
import { weekdayOf } from '../../../core/quantity/time/weekday-date.ts'
import type { Format } from '../format.ts'
import type { Kitchen } from '../kitchen.ts'
import type { Feature } from '../language.ts'
import type { ForgetMessages, SettingsMessages, StoredCounts } from '../messages/settings.ts'
import { counted, dayText, listed, WEEKDAYS } from './phrases.ts'
import { countryByCode } from './words.ts'

const unitNames: Readonly<Record<Kitchen, string>> = { metric: 'metric', us: 'US', imperial: 'imperial' }

const chosenUnits = (units: Kitchen | null): string => (units === null ? 'units as typed' : `${unitNames[units]} units`)

const chosenCountry = (country: string | null): string =>
  country === null ? 'no country' : `country ${countryByCode(country)}`

const chosenZone = (zone: string | null): string => (zone === null ? 'no time zone of your own' : `time zone ${zone}`)

const chosenFreezer = (freezerC: number | null, format: Format): string =>
  freezerC === null ? 'a usual freezer' : `freezer at ${format.temperature({ value: freezerC, plusMinus: 0 })}`

/** What `/settings` says. */
export const settingsSentences = {
  headlines: {
    /** What was chosen just now; null where a choice was taken back. */
    settings: ({ units, country, zone, freezerC }, format) => {
      const chosen = [
        ...(units === undefined ? [] : [chosenUnits(units)]),
        ...(country === undefined ? [] : [chosenCountry(country)]),
        ...(zone === undefined ? [] : [chosenZone(zone)]),
        ...(freezerC === undefined ? [] : [chosenFreezer(freezerC, format)]),
      ]
      return chosen.length === 0 ? 'These are your settings.' : `Noted: ${listed(chosen)}.`
    },
  },

  rows: {
    settings_units: () => 'Units',
    settings_country: () => 'Country',
    settings_zone: () => 'Time zone',
    settings_freezer: () => 'Freezer',
  },

  cells: {
    settings_units: ({ units }) => {
      if (units === null) return 'as you type them'
      return units === 'metric' ? unitNames.metric : `${unitNames[units]}, metric beside it`
    },
    settings_freezer: ({ freezerC, isAssumed }, format) =>
      `${format.temperature({ value: freezerC, plusMinus: 0 })}${isAssumed ? ' (assumed)' : ''}`,
    settings_country: ({ country }) => (country === null ? 'none' : countryByCode(country)),
    settings_zone: (values) =>
      `${values.zone}${values.isAssumed ? ' (assumed)' : ''}, where it is ${isoTime(values.minutes)} on ${WEEKDAYS[weekdayOf(values.day)]} ${dayText(values.day)}`,
  },

  notes: {
    settings_zone_assumed: () =>
      'You chose no time zone. To go by a city near you, type for example /settings zone:Rome',
    settings_no_country: () =>
      'country: decides how I read dates such as 6/7, whose standard drinks I count and whose law I look at.',
    settings_zone_ahead: () => 'What is written of your jars keeps its days; what is still to come goes by this zone.',
  },
} satisfies Feature<SettingsMessages>

/** Help for `/settings`. */
export const settingsText = {
  summary: 'Your units, country, time zone and freezer: shows them, or changes those you give',
  options: {
    units: 'Measures of every reply: metric, us or imperial; “as typed” follows what you type',
    country: 'Where you live, for dates, standard drinks and law: Italy, GB; none takes it back',
    zone: 'A city near you or a zone: Rome, Europe/Rome, UTC; default takes it back',
    freezer: 'How cold your freezer is: -22 C, or -8 F; default is -18 C',
  },
  examples: ['/settings units:metric country:Italy zone:Rome', '/settings units:as typed'],
}

/** `2 jars (and 1 in the notebook, 1 taken back) with 14 entries`. */
function jarsText({ jars, finished, undone, entries }: StoredCounts): string {
  if (jars === 0) return 'no jar'
  const running = jars - finished - undone
  const others = [
    ...(finished > 0 ? [`${finished} in the notebook`] : []),
    ...(undone > 0 ? [`${undone} taken back`] : []),
  ].join(', ')
  const shown = running === 0 ? 'no running jar' : counted(running, 'jar', 'jars')
  const more = others === '' ? '' : ` (${running === 0 ? 'but' : 'and'} ${others})`
  return `${shown}${more} with ${counted(entries, 'entry', 'entries')}`
}

/** What `/forget` says. */
export const forgetSentences = {
  headlines: {
    forget_ask: (values) => {
      const parts = [
        jarsText(values),
        ...(values.settings > 0 ? [counted(values.settings, 'setting', 'settings')] : []),
        ...(values.reminders > 0 ? [counted(values.reminders, 'waiting reminder', 'waiting reminders')] : []),
        ...(values.shares > 0 ? [counted(values.shares, 'share', 'shares')] : []),
        'every copy of them, and every file that I made for you here',
      ]
      return `This would erase for good all that I keep about you: ${listed(parts)}. Nothing is erased yet.`
    },
    forgotten: (values) => {
      const copies = values.copies === 0 ? 'there were no copies' : `${counted(values.copies, 'copy', 'copies')} too`
      const files = values.files === 0 ? '' : `, and ${counted(values.files, 'file', 'files')} that I had saved for you`
      return `Erased: ${jarsText(values)}, and your settings; ${copies}${files}. I keep nothing about you any more.`
    },
    forget_one_jar: ({ name, line }) =>
      `${name} is one jar, and /forget is for everything: ${line} throws that one away. Nothing is erased.`,
    not_forgotten: () => 'Nothing was erased.',
  },
  notes: {
    forget_changed: () =>
      'That button named something else than you have now, so it erased nothing; this is what would go.',
    forget_in_full: ({ typed }) => `“${typed}” erases nothing. Only /forget confirm:yes, typed in full, erases.`,
    forget_not_one_jar: () => 'To be rid of one jar only, type /jar discard and its name; it stays in /notebook.',
  },
  actions: {
    forget_all: () => 'Erase everything',
  },
} satisfies Feature<ForgetMessages>
