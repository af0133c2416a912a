import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'
import { isoTime } from '../../../core/quantity/time/calendar-day.ts'
import { weekdayOf } from '../../../core/quantity/time/weekday-date.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type { ForgetMessages, SettingsMessages, StoredCounts } from '../messages/settings.ts'
import { counted, dayText, listed, WEEKDAYS } from './phrases.ts'
import { countryByCode } from './words.ts'

const unitNames: Readonly<Record<UnitSystem, string>> = { metric: 'metric', us: 'US', imperial: 'imperial' }

const chosenUnits = (units: UnitSystem | null): string =>
  units === null ? 'units as typed' : `${unitNames[units]} units`

const chosenCountry = (country: string | null): string =>
  country === null ? 'no country' : `country ${countryByCode(country)}`

const chosenZone = (zone: string | null): string => (zone === null ? 'no time zone of your own' : `time zone ${zone}`)

const chosenFreezer = (freezerC: number | null, format: Format): string =>
  freezerC === null ? 'a usual freezer' : `freezer at ${format.round.temperature(freezerC)}`

/** What `/settings` says. */
export const settingsSentences = {
  headlines: {
    /** What was chosen just now; null where a choice was cleared. */
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
      return units === 'metric' ? unitNames.metric : `${unitNames[units]}, with metric in “more”`
    },
    settings_freezer: ({ freezerC, isAssumed }, format) =>
      `${format.round.temperature(freezerC)}${isAssumed ? ' (assumed)' : ''}`,
    settings_country: ({ country }) => (country === null ? 'none' : countryByCode(country)),
    settings_zone: (values) =>
      `${values.zone}${values.isAssumed ? ' (assumed)' : ''}, where it is ${isoTime(values.minutes)} on ${WEEKDAYS[weekdayOf(values.day)]} ${dayText(values.day)}`,
  },

  notes: {
    settings_zone_assumed: ({ example }) =>
      `I’ve assumed this time zone. To use a city near you: ${lineTyped('settings', { zone: example })}`,
    settings_no_country: ({ example }) =>
      `Tell me your country, for its emergency numbers, standard drinks, law and dates like 6/7: ${lineTyped('settings', { country: example })}`,
    settings_zone_ahead: () => 'Past entries keep their dates. New ones use this time zone.',
  },
} satisfies Feature<SettingsMessages>

/** Help for `/settings`. */
export const settingsText = {
  summary: 'Your units, country, time zone and freezer: see them, or change them',
  options: {
    units: 'Units in every reply: metric, us or imperial. “as typed” follows what you type',
    country: 'Where you live, for dates, standard drinks and law: Italy, GB. Type none to clear it',
    zone: 'A city near you or a zone: Rome, Europe/Rome, UTC. Type default to clear it',
    freezer: 'How cold your freezer is: -22 C, or -8 F. Type default for -18 C',
  },
  examples: ['/settings units:metric country:Italy zone:Rome', '/settings units:as typed'],
}

/** `2 jars (and 1 in the notebook, 1 undone) with 14 entries`. */
function jarsText({ jars, finished, undone, entries }: StoredCounts): string {
  if (jars === 0) return 'no jars'
  const running = jars - finished - undone
  const others = [
    ...(finished > 0 ? [`${finished} in the notebook`] : []),
    ...(undone > 0 ? [`${undone} undone`] : []),
  ].join(', ')
  const shown = running === 0 ? 'no running jars' : counted(running, 'jar', 'jars')
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
      ]
      return `This would delete everything I have about you: ${listed(parts)}. Copies and files I made for you go too. Nothing is deleted yet.`
    },
    forgotten: (values) => {
      const too = [
        ...(values.copies === 0 ? [] : [counted(values.copies, 'copy', 'copies')]),
        ...(values.files === 0 ? [] : [`${counted(values.files, 'file', 'files')} I’d saved for you`]),
      ]
      const also = too.length === 0 ? '' : ` Gone too: ${listed(too)}.`
      return `Deleted: ${jarsText(values)}, and your settings.${also} I have nothing left about you.`
    },
    forget_one_jar: ({ name, line }) =>
      `Nothing is deleted. /forget deletes everything. To throw away ${name} alone: ${line}`,
    not_forgotten: () => 'Nothing was deleted.',
  },
  notes: {
    forget_changed: () => 'You have something else now than when that button was made, so nothing was deleted.',
    forget_in_full: ({ typed }) =>
      `“${typed}” deletes nothing. To delete it all, type in full: ${lineTyped('forget', { confirm: 'yes' })}`,
    forget_not_one_jar: () => 'To throw away just one jar instead: /help jar discard',
  },
  actions: {
    forget_all: () => 'Delete everything',
  },
} satisfies Feature<ForgetMessages>
