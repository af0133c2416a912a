import type { PoisonCentre } from '../../../talk/emergency/contacts.ts'
import type { StepKey } from '../../../talk/emergency/first-aid.ts'
import type { HarmId } from '../../../talk/emergency/harm.ts'
import { stepWords } from './step-words.ts'

/** When to call, around the number. */
const callWords: Readonly<Record<HarmId, (number: string) => string>> = {
  swallowed_spirit_child: (number) =>
    `Call ${number} if they’re drowsy, having a fit, breathing badly or won’t wake up.`,
  swallowed_spirit_adult: (number) =>
    `Call ${number} if they’re confused, pale or blue, keep vomiting, breathe slowly, have a fit or won’t wake up.`,
  swallowed_plant: (number) => `Call ${number} if they’re very ill, having a fit, breathing badly or won’t wake up.`,
  unconscious_after_drinking: (number) => `Call ${number} now.`,
  spirit_in_eye: (number) => `Rinse the eye first. Call ${number} if pain, redness or poor sight stays.`,
  burn: (number) =>
    `Call ${number} if the burn is deep, bigger than their hand, or on the face, hands, feet or genitals.`,
  clothes_on_fire: (number) => `Down on the floor and roll. Call ${number} once the flames are out.`,
  spirit_fire: (number) => `Get out and call ${number} now, unless a lid puts it out at once.`,
  methanol: (number) => `Call ${number} now, or go to a hospital.`,
  pet: (number) => `Call ${number} if a person is hurt too.`,
  glass_burst: (number) => `Call ${number} if it bleeds heavily, or glass is in an eye.`,
  self_harm: (number) => `Call ${number} now and say how you feel. You needn’t be alone with this.`,
  someone_hurt: (number) => `Call ${number} now.`,
}

/** Who swallowed something is asked about at a poison centre, and its number comes of the country. */
const SWALLOWED: readonly HarmId[] = ['swallowed_spirit_child', 'swallowed_spirit_adult', 'swallowed_plant']

/** `112 or 144`; in a country that is not known, `your emergency number`. */
const numberWords = (numbers: readonly string[], isCountryKnown: boolean): string => {
  if (numbers.length > 0) return numbers.join(' or ')
  return isCountryKnown ? 'your emergency number (112 from many mobiles)' : 'your emergency number (112 in the EU)'
}

const insteadWords = {
  gp_nl: 'Ask your GP. At night and weekends, the out-of-hours GP post.',
  doctor: 'Ask your own doctor or the one on duty.',
  nhs_111: 'Call NHS 111, day and night.',
}

/** `day and night`, `8:00 to 22:00 every day`. */
const hoursWords = (hours: PoisonCentre['hours']): string =>
  hours === '24 h'
    ? 'day and night'
    : `${hours
        .split('-')
        .map((hour) => hour.replace(/^0/, ''))
        .join(' to ')} every day`

/** What is said where somebody was harmed. */
export const emergencySentences = {
  headlines: {
    emergency: (values: {
      readonly harm: HarmId
      readonly numbers: readonly string[]
      readonly isCountryKnown: boolean
    }) => {
      const { harm, numbers, isCountryKnown } = values
      const number = numberWords(numbers, isCountryKnown)
      return !isCountryKnown && SWALLOWED.includes(harm)
        ? `Call ${number} now and ask for the poison centre.`
        : callWords[harm](number)
    },
  },

  rows: {
    emergency_poison_centre: () => 'Poison centre',
    emergency_if_swallowed: () => 'If swallowed',
    emergency_vet: () => 'Vet',
    emergency_country: () => 'Your country?',
    emergency_step: ({ number }: { readonly number: number }) => `${number}`,
    emergency_numbers: () => 'Emergency',
  },

  cells: {
    emergency_poison_centre: (
      values: Omit<PoisonCentre, 'takesAnimals'> & { readonly harm: HarmId; readonly otherwise: string },
    ) => {
      const { number, name, hours, isForChildrenOnly, isDoubtful, otherwise } = values
      const who = isForChildrenOnly ? ', for children only' : ''
      const late = hours === '24 h' ? '' : ` At other times call ${otherwise}.`
      const doubt = isDoubtful ? ` If nobody answers, call ${otherwise}.` : ''
      return `${number}, ${hoursWords(hours)}${who} (${name}).${late}${doubt}`
    },
    emergency_no_centre: ({ instead }: { readonly instead: keyof typeof insteadWords | null }) =>
      instead === null ? 'I have no number for one. Ask the emergency line.' : insteadWords[instead],
    emergency_vet: ({ number }: { readonly number: string | null }) =>
      number === null ? 'Call your vet now.' : `Call your vet now, or the poison centre: ${number} takes animals too.`,
    emergency_country: ({ example }: { readonly example: string }) =>
      // The line begins the cell, so that it is never broken.
      `/settings country:${example} (or yours) and I’ll show its numbers.`,
    emergency_step: ({ step }: { readonly step: StepKey }) => stepWords[step],
    /** All numbers of a country, where somebody has just said that they live there. */
    emergency_numbers: ({
      numbers,
      centre,
    }: {
      readonly numbers: readonly string[]
      readonly centre: Pick<PoisonCentre, 'number' | 'hours'> | null
    }) =>
      centre === null
        ? numbers.join(' or ')
        : `${numbers.join(' or ')}; poison centre ${centre.number}, ${hoursWords(centre.hours)}`,
  },

  notes: {
    emergency_nothing_done: () => 'I’ve done nothing else with your line. If nobody’s hurt, put it another way.',
  },
}
