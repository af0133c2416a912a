import { lineTyped } from '../../calls/write-line.ts'
import type { AidId } from '../../talk/emergency/aid-words.ts'
import type { PoisonCentre } from '../../talk/emergency/contacts.ts'
import { POISONED } from '../../talk/emergency/drowsing.ts'
import type { StepKey } from '../../talk/emergency/first-aid.ts'
import type { HarmId } from '../../talk/emergency/harm.ts'
import type { Feature } from '../language.ts'
import type { EmergencyMessages, NumberOfZone } from '../messages/emergency.ts'

/** What to do first, as an order. */
const stepWords: Readonly<Record<StepKey, string>> = {
  no_waiting: 'Call even if they seem fine. A little alcohol can harm a small child.',
  no_vomiting: 'Don’t bring on vomiting.',
  nothing_by_mouth: 'Nothing to eat or drink unless the poison centre says so.',
  have_ready_child: 'Have the bottle by you. Say how strong it is, how much, when, and the child’s age and weight.',
  stay_with_them:
    'Stay with them. If it’s you, get somebody to stay. It’s easy to choke on vomit, and breathing can stop.',
  sit_them_up: 'Sit them up if they’re awake. Sips of water if they can swallow. Keep them warm.',
  no_home_cures: 'No more alcohol, no coffee, no cold shower, no walking about. Don’t bring on vomiting.',
  no_sleeping_off: 'Don’t leave them to sleep it off. It can get worse for 40 minutes after the last drink.',
  side_and_check: 'Drowsy or lying down? On their side, head tipped back a little, so that vomit can run out.',
  only_time: 'Nothing but time brings the alcohol down, and that takes many hours.',
  check_again: 'Wake them every few minutes and watch their breathing. Somebody stays all night.',
  rinse_mouth: 'Take what’s left out of the mouth. Rinse or wipe the mouth with water.',
  call_though_well: 'Call even if all seems well. Signs can take hours or days.',
  keep_plant: 'Keep a piece of the plant and all that’s left, with its label. Say what was eaten, how many and when.',
  check_breathing: 'Check their breathing. If it isn’t normal, call and start chest compressions.',
  on_their_side: 'If they’re breathing but won’t wake up, lay them on their side so that vomit can run out.',
  keep_checking: 'Stay, keep them warm, and keep checking their breathing until help comes.',
  give_nothing: 'Nothing by mouth, no coffee, no shower. Don’t put your hand in their mouth.',
  rinse_eye: 'Rinse now under gently running water for 20 minutes. Hold the lids open.',
  lenses_out: 'Take contact lenses out. Keep the water from running into the other eye.',
  only_water: 'Nothing in the eye but water. No rubbing.',
  no_rinsing_glass: 'If glass went in too, don’t rinse. Cover it lightly and go to hospital.',
  cool_burn: 'Keep it under cool running water for the full 20 minutes.',
  clothing_off: 'Take off clothes and jewellery near the burn, but nothing that sticks to the skin.',
  no_ice: 'No ice, butter, cream or toothpaste. Don’t burst blisters.',
  cover_burn:
    'Then lay cling film or a clean cloth on it, loosely. Keep the rest of the body warm, above all a small child’s.',
  stop_and_roll: 'Stop. Get down on the floor. Roll until the flames are out. Don’t run.',
  smother: 'Helping? Smother the flames with a heavy coat or blanket, wool if you can, not nylon.',
  then_cool: 'Then cool the burns under cool running water for 20 minutes.',
  heat_off_lid: 'If you can do it safely: heat off, lid or fire blanket on. Leave it covered to cool.',
  no_water_on_it: 'No water on it, and don’t carry it. Burning spirit spreads.',
  everyone_out: 'If it isn’t out at once: everyone out, doors shut, stay out.',
  pale_flame: 'You can hardly see burning alcohol in daylight. Act as if it’s still burning.',
  go_at_once: 'Go now, don’t wait for signs. It can blind or kill, and methanol’s antidote works best early.',
  late_signs: 'Feeling well proves nothing. Blurred sight, headache and vomiting often come 12 to 24 hours later.',
  keep_bottle: 'Keep the bottle. Drink no more of it. Tell everyone who drank from it.',
  watch_for_days:
    'Double vision, slurred speech or trouble swallowing in the next days: call the emergency number at once.',
  no_other_spirit: 'Don’t bring on vomiting. Don’t treat it at home with other spirits.',
  vet_at_once: 'Don’t wait for signs. They can come within 15 minutes.',
  no_vomiting_pet: 'Don’t make it vomit unless the vet says so. It may choke.',
  keep_warm_pet: 'Keep it warm, quiet and where it can’t fall.',
  tell_vet: 'Say what it had, how much and how strong, and what it weighs. Mention fruit stones, raisins and grapes.',
  leave_room: 'Keep people and animals out of the room. One bottle can set off the rest.',
  press_wound: 'Press hard on the bleeding with a clean cloth and keep pressing. Lie down, limb raised.',
  glass_stays_in: 'Leave glass that’s stuck in a wound. Press on both sides of it.',
  cover_eye: 'Glass in an eye: don’t rub, don’t rinse. Cover it lightly and go to hospital.',
  not_alone: 'Go to somebody, or ring somebody to come and stay.',
  out_of_reach: 'Give bottles, pills and blades to somebody else for now.',
  keep_what_it_was: 'Keep whatever did it and its label, to show a doctor.',
}

/** When to call, around the number. */
const callWords: Readonly<Record<Exclude<HarmId, 'pet'>, (number: string) => string>> = {
  swallowed_spirit_child: (number) =>
    `Call ${number} if they’re drowsy, having a fit, breathing badly or won’t wake up.`,
  swallowed_spirit_adult: (number) =>
    `Call ${number} if they’re confused, pale or blue, keep vomiting, breathe slowly, have a fit or won’t wake up.`,
  swallowed_plant: (number) => `Call ${number} for anyone who’s very ill, has a fit, breathes badly or won’t wake up.`,
  swallowed_undrinkable: (number) =>
    `Call ${number} for anyone who’s very ill, sees double, breathes badly or won’t wake up.`,
  unconscious_after_drinking: (number) => `Call ${number} now.`,
  spirit_in_eye: (number) => `Rinse the eye with water now. Call ${number} if pain, redness or poor sight stays.`,
  burn: (number) => `Cool it under running water now, for 20 minutes. ${burnCall(number)}`,
  clothes_on_fire: (number) => `Down on the floor and roll. Call ${number} once the flames are out.`,
  spirit_fire: (number) => `Get out and call ${number} now, unless a lid puts it out at once.`,
  methanol: (number) => `Call ${number} now, or go to a hospital.`,
  glass_burst: (number) => `Call ${number} if it bleeds heavily, or glass is in an eye.`,
  self_harm: (number) => `Call ${number} now and say how you feel. You needn’t be alone with this.`,
  someone_hurt: (number) => `Call ${number} now.`,
}

/** The short answer to what is asked of somebody who is harmed. */
const aidWords: Readonly<Record<AidId, string>> = {
  make_sick: 'No, never make them sick. They can choke on it.',
  sleep: 'Don’t leave them to sleep it off. Try to wake them now.',
  position: 'Not on their back, where vomit can choke them: on their side.',
  shower: 'No shower or bath. It sobers nobody up, and they can fall, faint or get too cold.',
  coffee: 'No coffee and no more alcohol. Neither sobers anybody up.',
  go_home: 'Not alone, and they don’t drive. Somebody who’s had nothing takes them, and somebody stays with them.',
  alone: 'Don’t leave them alone, not even asleep.',
  walk_about: 'No walking about. It sobers nobody up, and they can fall.',
  water_or_food: 'Sips of water, only if they’re wide awake and can swallow. No food, no tablets.',
  sober_up: 'Nothing sobers them up but time.',
  when_to_call: 'If you’re in doubt, call.',
  being_sick: 'Keep them sitting up, or on their side if they’re drowsy. Don’t leave them.',
  snoring: 'Snoring can mean that the breath is blocked. Try to wake them now.',
  asleep: 'Try to wake them now, by name and by the shoulder. Stay beside them.',
  can_wake: 'Good that they can be woken. Stay, it can still get worse.',
  breathes: 'Good, keep watching it. Can you wake them? Try now.',
  fine_now: 'Good, but don’t leave them alone yet. It can still get worse.',
  fire_out: 'Good that it’s out. Red or sore skin? Cool it under running water now, for 20 minutes.',
  on_burn: 'Only cool running water on a burn, for 20 minutes, then cling film.',
}

const answerWords = (asked: readonly AidId[], harm: HarmId): string =>
  asked
    .map((aid) =>
      aid === 'fine_now' && POISONED.includes(harm)
        ? // Of what was swallowed, that is no news.
          'Feeling well proves nothing yet.'
        : aidWords[aid],
    )
    .join(' ')

/** When to call for somebody who drank too much and is asked about. */
const ifWorse = (number: string): string =>
  `Call ${number} if they won’t wake up, keep vomiting, breathe slowly or unevenly, turn cold, pale or blue, or have a fit.`

const burnCall = (number: string): string =>
  `Call ${number} if it’s deep, bigger than the burnt person’s hand, or on the face, hands, feet or genitals.`

/** When to call, behind a short answer. */
function callBehind(harm: Exclude<HarmId, 'pet'>, number: string): string {
  if (harm === 'burn') return burnCall(number)
  return harm === 'swallowed_spirit_adult' ? ifWorse(number) : callWords[harm](number)
}

/** An animal is the vet's, and of some poison centres. */
const vetWords = (number: string | null): string =>
  number === null ? 'Call your vet now.' : `Call your vet now, or the poison centre: ${number} takes animals too.`

/** Who swallowed something is asked about at a poison centre, and its number comes of the country. */
const SWALLOWED: readonly HarmId[] = [
  'swallowed_spirit_child',
  'swallowed_spirit_adult',
  'swallowed_plant',
  'swallowed_undrinkable',
]

/** `112 or 144`; in a country that is not known, `your emergency number`. */
const numberWords = (numbers: readonly string[], isCountryKnown: boolean, zones: NumberOfZone | null): string => {
  if (numbers.length > 0) return `${numbers.join(' or ')}${isCountryKnown ? '' : ' (US assumed, 112 in the EU)'}`
  if (isCountryKnown) return 'your emergency number (112 from many mobiles)'
  return zones === null
    ? 'your emergency number (112 in the EU)'
    : `your emergency number (${zones.number} in ${placeWords(zones.country)}, 112 in the EU)`
}

const COUNTRY_NAMES = new Intl.DisplayNames(['en'], { type: 'region' })

/** Inside of a sentence. */
const placeWords = (country: string): string => (country === 'GB' ? 'the UK' : (COUNTRY_NAMES.of(country) ?? country))

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
    emergency: (values) => {
      const { harm, asked, numbers, isCountryKnown, zones, hasCentre, animals } = values
      if (harm === 'pet') return vetWords(animals)
      const number = numberWords(numbers, isCountryKnown, zones)
      if (asked.length > 0) return `${answerWords(asked, harm)} ${callBehind(harm, number)}`
      if (!SWALLOWED.includes(harm)) return callWords[harm](number)
      if (!isCountryKnown && !hasCentre) return `Call ${number} now and ask for the poison centre.`
      return `${callWords[harm](number)}${hasCentre ? ' If not, call the poison centre now.' : ''}`
    },
  },

  rows: {
    emergency_poison_centre: () => 'Poison centre',
    emergency_otherwise: () => 'If not',
    emergency_if_swallowed: () => 'Taken something?',
    emergency_person: () => 'Person hurt?',
    emergency_country: () => 'Your country?',
    emergency_step: ({ number }) => `${number}`,
    emergency_numbers: () => 'Emergency',
  },

  cells: {
    emergency_poison_centre: (values) => {
      const { number, name, hours, isForChildrenOnly, isDoubtful, otherwise } = values
      const who = isForChildrenOnly ? ', for children only' : ''
      const late = hours === '24 h' ? '' : ` At other times call ${otherwise}.`
      const doubt = isDoubtful ? ` If nobody answers, call ${otherwise}.` : ''
      return `${number}, ${hoursWords(hours)}${who} (${name}).${late}${doubt}`
    },
    emergency_no_centre: ({ instead }) =>
      instead === null ? 'I have no number for one. Ask the emergency line.' : insteadWords[instead],
    emergency_person: ({ numbers, isCountryKnown, zones }) => `Call ${numberWords(numbers, isCountryKnown, zones)}.`,
    emergency_country: ({ example }) =>
      // The line begins the cell, so that it is never broken.
      `${lineTyped('settings', { country: example })} (or yours) and I’ll show its numbers.`,
    emergency_step: ({ step }) => stepWords[step],
    /** All numbers of a country, where somebody has just said that they live there. */
    emergency_numbers: ({ numbers, centre }) =>
      centre === null
        ? numbers.join(' or ')
        : `${numbers.join(' or ')}. Poison centre ${centre.number}, ${hoursWords(centre.hours)}`,
  },

  notes: {
    emergency_nothing_done: () => 'I’ve written nothing down. If nobody’s hurt, put it another way.',
  },
} satisfies Feature<EmergencyMessages>
