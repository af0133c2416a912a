import { isoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt, minutesAt } from '../../../core/quantity/time/zone.ts'
import type { Settings } from '../../../store/person.ts'
import type { Given } from '../../calls/option.ts'
import { signature } from '../../calls/signatures.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Reply, Row } from '../../chat/reply.ts'
import { contactOf } from '../../talk/emergency/contacts.ts'
import { freezerOf, note, row } from '../reply/outcome-reply.ts'
import { changeSettings } from './change-settings.ts'
import { placeExamples } from './place-examples.ts'

interface Chosen {
  readonly units?: Given<Settings['units']> | undefined
  readonly country?: Given<string | null> | undefined
  readonly zone?: Given<string | null> | undefined
  readonly freezer?: Given<number | null> | undefined
}

/** Only what was given. */
const choicesOf = ({ units, country, zone, freezer }: Chosen): Partial<Settings> => ({
  ...(units && { units: units.is }),
  ...(country && { country: country.is }),
  ...(zone && { zone: zone.is }),
  ...(freezer && { freezerC: freezer.is }),
})

/** The numbers of a country that was chosen just now. */
const emergencyRows = (country: string | null | undefined): readonly Row[] => {
  const contact = contactOf(country ?? null)
  if (contact === null) return []
  const { emergency, ambulance, fire, poisonCentre } = contact
  const numbers = [...new Set([emergency, ambulance, fire].filter((number) => number !== null))]
  const values = { numbers, centre: poisonCentre?.isForChildrenOnly === true ? null : poisonCentre }
  return [row('emergency_numbers', { group: 'cells', key: 'emergency_numbers', values })]
}

const settingsReply = (choices: Partial<Settings>, settings: Settings, context: Context): Reply => {
  const { assumedZone, nowMs } = context
  const examples = placeExamples({ ...context, settings })
  const zone = settings.zone ?? assumedZone
  const [day, minutes] = [dayAt(zone, nowMs), minutesAt(zone, nowMs)]
  const isAssumed = settings.zone === null
  const { units, country, freezerC = null } = settings
  return {
    headline: { group: 'headlines', key: 'settings', values: choices },
    table: [
      row('settings_units', { group: 'cells', key: 'settings_units', values: { units } }),
      row('settings_country', { group: 'cells', key: 'settings_country', values: { country } }),
      row('settings_zone', { group: 'cells', key: 'settings_zone', values: { zone, isAssumed, day, minutes } }),
      row('settings_freezer', {
        group: 'cells',
        key: 'settings_freezer',
        values: { freezerC: freezerOf({ settings }), isAssumed: freezerC === null },
      }),
      ...emergencyRows(choices.country),
    ],
    sure: [],
    notes: [
      ...(isAssumed
        ? [{ group: 'notes', key: 'settings_zone_assumed', values: { example: examples.zone } } as const]
        : []),
      ...(country === null
        ? [{ group: 'notes', key: 'settings_no_country', values: { example: examples.country } } as const]
        : []),
      ...(choices.zone === undefined ? [] : [note('settings_zone_ahead')]),
    ],
    cautions: [],
    actions: [],
    data: {
      units,
      country,
      freezerC,
      zone,
      zoneAssumed: isAssumed,
      localTime: `${isoDay(day)}T${isoTime(minutes)}`,
    },
    kitchen: settings.units ?? context.kitchen ?? 'metric',
  }
}

export const settingsCommand = defineCommand({
  ...signature('settings'),
  topic: 'you',
  async run(input, context) {
    const choices = choicesOf(input)
    const { settings } = await changeSettings(context, choices)
    return settingsReply(choices, settings, context)
  },
})
