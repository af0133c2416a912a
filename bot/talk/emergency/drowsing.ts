import type { HarmId } from './harm.ts'

/** Of these a sleep may be no sleep. */
export const DROWSING: readonly HarmId[] = [
  'swallowed_spirit_child',
  'swallowed_spirit_adult',
  'swallowed_plant',
  'swallowed_undrinkable',
  'unconscious_after_drinking',
  'methanol',
  'someone_hurt',
]

/** What stays a danger when somebody is awake again: what was swallowed poisons, or they are small. */
export const POISONED: readonly HarmId[] = [
  'swallowed_spirit_child',
  'swallowed_plant',
  'swallowed_undrinkable',
  'methanol',
]

/** How somebody lies there. */
export const ASLEEP =
  /\b(?:asleep|sleeping|sleeps|dozing|dozed off|nodded off|dropped off|snor\w+|out of it|eyes (?:are )?(?:shut|closed)|dorm(?:e|ono|iva)|sta(?:nno)? dormendo|addormentat[oaie]|russa)\b/

export const AWAKE =
  /\b(?:(?:not|isnt|wasnt|arent|no longer|non(?: sta)?|stopped) (?:(?:really|even|yet|actually|just|all|si e|piu) )*(?:asleep|sleeping|snoring|dozing|dorm\w+|addormentat\w+|russ\w+)|woke|woken|awake|svegli[oa])\b/
