import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'
import type { Context } from '../../chat/command.ts'
import { countryInZone, zoneInCountry } from '../../talk/emergency/country-of-zone.ts'
import { unitsIn } from '../../text/messages/kitchen.ts'

/** Where somebody may live of whom only the measures are known. */
const BY_MEASURES: { readonly [System in UnitSystem]: { readonly zone: string; readonly country: string } } = {
  metric: { zone: 'Rome', country: 'Italy' },
  imperial: { zone: 'London', country: 'UK' },
  us: { zone: 'America/New_York', country: 'US' },
}

/** Of a computer whose clock tells no place. */
const NOWHERE: ReadonlySet<string> = new Set(['UTC', 'Etc/UTC', 'GMT'])

/** `London` of `Europe/London`. */
const cityOf = (zone: string): string => zone.slice(zone.lastIndexOf('/') + 1).replaceAll('_', ' ')

/** A zone and a country to show in a line to type: their own as far as anything tells it. */
export function placeExamples({ settings, assumedZone, kitchen = 'metric' }: Context) {
  const usual = BY_MEASURES[unitsIn(settings.units ?? kitchen).volume]
  const own = NOWHERE.has(assumedZone) ? null : cityOf(assumedZone)
  const country = countryInZone(settings.zone ?? assumedZone) ?? usual.country
  return {
    zone: (settings.country === null ? null : zoneInCountry(settings.country)) ?? own ?? usual.zone,
    country: country === 'GB' ? 'UK' : country,
  }
}
