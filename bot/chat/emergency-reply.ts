import type { UnitSystem } from '../../core/quantity/read/parse-units.ts'
import type { AidId } from '../talk/emergency/aid-words.ts'
import { ANYWHERE, type Contact, contactOf } from '../talk/emergency/contacts.ts'
import { countryAssumedInZone, countryInZone, countryOfZone } from '../talk/emergency/country-of-zone.ts'
import { isPoisoning, type StepKey, stepsFor, stepsForAid } from '../talk/emergency/first-aid.ts'
import type { HarmId } from '../talk/emergency/harm.ts'
import type { NumberOfZone, WhomToCall } from '../text/messages/emergency.ts'
import type { Message } from '../text/words.ts'
import type { Reply, Row } from './reply.ts'

/** Whoever asks, as far as it is known. */
export interface Whereabouts {
  /** Two letters, or null where nobody has said. */
  readonly country: string | null
  /** IANA name; of it comes the country in the line to type. */
  readonly zone: string
  /** As chosen; who measures in cups cooks in the United States. */
  readonly units?: UnitSystem | null
}

const FIRES: readonly HarmId[] = ['clothes_on_fire', 'spirit_fire']

/** A centre for children is none for grown people. */
const GROWN: readonly HarmId[] = ['swallowed_spirit_adult']

/** The numbers to call, the first first; none where the country is not known or not on record. */
function numbersFor(harm: HarmId, contact: Contact | null): readonly string[] {
  if (contact === null) return []
  const { emergency, ambulance, fire } = contact
  const own = FIRES.includes(harm) ? fire : ambulance
  const numbers = FIRES.includes(harm) ? [own, emergency] : [emergency, own]
  return [...new Set(numbers.filter((number) => number !== null))]
}

/** Of these the emergency number is for the bad ones, somebody else for the rest. */
const MILD_TOO: readonly HarmId[] = [
  'swallowed_spirit_child',
  'swallowed_spirit_adult',
  'swallowed_plant',
  'swallowed_undrinkable',
  'spirit_in_eye',
]

const cellOf = (cell: Message<'cells'>, label: Message<'rows'>): Row => ({ label, cell })

type LabelKey = 'emergency_poison_centre' | 'emergency_otherwise' | 'emergency_if_swallowed' | 'emergency_person'

const labelled = (key: LabelKey): Message<'rows'> => ({
  group: 'rows',
  key,
  values: undefined,
})

/** Who besides the emergency number is called. */
function secondRow(harm: HarmId, contact: Contact | null, { country, zone }: Whereabouts): readonly Row[] {
  const centre = centreFor(harm, contact)
  const asked: Row[] =
    country === null
      ? [
          cellOf(
            { group: 'cells', key: 'emergency_country', values: { example: countryOfZone(zone) } },
            { group: 'rows', key: 'emergency_country', values: undefined },
          ),
        ]
      : []
  if (harm === 'pet') {
    const values = {
      numbers: numbersFor(harm, contact),
      isCountryKnown: country !== null,
      zones: numberOfZone(harm, zone),
    }
    return [cellOf({ group: 'cells', key: 'emergency_person', values }, labelled('emergency_person')), ...asked]
  }
  if (!isPoisoning(harm)) return asked
  const label = labelled(harm === 'self_harm' ? 'emergency_if_swallowed' : 'emergency_poison_centre')
  if (centre !== null)
    return [cellOf({ group: 'cells', key: 'emergency_poison_centre', values: centre }, label), ...asked]
  if (country === null) return asked
  const instead = contact?.instead ?? null
  const isOther = instead !== null && MILD_TOO.includes(harm)
  return [
    cellOf(
      { group: 'cells', key: 'emergency_no_centre', values: { instead } },
      isOther ? labelled('emergency_otherwise') : label,
    ),
  ]
}

function centreFor(harm: HarmId, contact: Contact | null) {
  const centre = contact?.poisonCentre ?? null
  if (centre === null || contact === null || (centre.isForChildrenOnly && GROWN.includes(harm))) return null
  const { ambulance, emergency } = contact
  return { ...centre, harm, otherwise: ambulance ?? emergency }
}

/** The country that was named, else the one that a zone or units tell; null where nothing does. */
const countryIn = ({ country, zone, units }: Whereabouts): string | null =>
  country ?? (units === 'us' && countryInZone(zone) === null ? 'US' : countryAssumedInZone(zone))

/** Said beside 112 where nobody named a country: that of the zone’s, where another number stands on record. */
function numberOfZone(harm: HarmId, zone: string): NumberOfZone | null {
  const country = countryInZone(zone)
  const [number = ANYWHERE] = numbersFor(harm, contactOf(country))
  return country === null || number === ANYWHERE ? null : { country, number }
}

/** Its numbers. */
const contactIn = (whereabouts: Whereabouts): Contact | null => contactOf(countryIn(whereabouts))

/** Who is called where somebody is, if a poison was swallowed. */
export function whomToCall(whereabouts: Whereabouts): WhomToCall {
  const contact = contactIn(whereabouts)
  return {
    isAssumed: whereabouts.country === null && contact !== null,
    numbers: numbersFor('methanol', contact),
    poisonCentre: centreFor('methanol', contact)?.number ?? null,
  }
}

/** A drunk person, a fire that is out and a burn have steps for what is asked; whoever is worse off has their own. */
const STEPS_BY_AID: readonly HarmId[] = ['swallowed_spirit_adult', 'burn']

const MOST_STEPS = 4

function stepsOf(harm: HarmId, asked: readonly AidId[]): readonly StepKey[] {
  // Whoever breathes needs no compressions.
  if (asked[0] === 'breathes' && !STEPS_BY_AID.includes(harm))
    return stepsFor[harm].filter((step) => step !== 'check_breathing')
  if (asked.length === 0 || !STEPS_BY_AID.includes(harm)) return stepsFor[harm]
  return [...new Set(asked.flatMap((aid) => stepsForAid[aid]))].slice(0, MOST_STEPS)
}

/**
 * The answer where somebody was harmed: the emergency number, then the poison centre where anything was swallowed or went
 * in, then at most four steps; of an animal the vet first, then the number for people. Of a country without a number on record it shows
 * none. What is asked of somebody of whom that was said (`asked`) is answered before it, and has steps of its own.
 */
export function emergencyReply(harm: HarmId, whereabouts: Whereabouts, asked: readonly AidId[] = []): Reply {
  const { country } = whereabouts
  const contact = contactIn(whereabouts)
  const steps = stepsOf(harm, asked)
  const second = secondRow(harm, contact, whereabouts)
  const doing = steps.map((step, index) =>
    cellOf(
      { group: 'cells', key: 'emergency_step', values: { step } },
      { group: 'rows', key: 'emergency_step', values: { number: index + 1 } },
    ),
  )
  const isAnimals = harm === 'pet'
  const centre = isAnimals && contact?.poisonCentre?.takesAnimals !== true ? null : centreFor(harm, contact)
  return {
    headline: {
      group: 'headlines',
      key: 'emergency',
      values: {
        harm,
        asked,
        numbers: numbersFor(harm, contact),
        isCountryKnown: country !== null,
        zones: numberOfZone(harm, whereabouts.zone),
        hasCentre: centre !== null,
        animals: contact?.poisonCentre?.takesAnimals === true ? contact.poisonCentre.number : null,
      },
    },
    // Fire and blood do not wait for a question.
    table: isPoisoning(harm) && asked.length === 0 ? [...second, ...doing] : [...doing, ...second],
    sure: [],
    notes: [{ group: 'notes', key: 'emergency_nothing_done', values: undefined }],
    cautions: [],
    actions: [],
    data: {
      id: harm,
      country,
      emergency: contact?.emergency ?? ANYWHERE,
      ambulance: contact?.ambulance ?? null,
      fire: contact?.fire ?? null,
      poisonCentre: centre === null ? null : { number: centre.number, name: centre.name, hours: centre.hours },
      vet: isAnimals,
      asked,
      steps,
    },
    // It has no amounts: only the words are those of a country.
    kitchen: countryIn(whereabouts) === 'US' ? 'us' : 'metric',
  }
}
