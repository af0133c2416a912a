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
