/** Whatever an entry could be from the first version on, in the order of the alphabet. */
export const ENTRY_KINDS: readonly string[] = [
  'added',
  'bottled',
  'corrected',
  'discarded',
  'emptied',
  'filtered',
  'opened',
  'put_off',
  'renamed',
  'shaken',
  'started',
  'strained',
  'sweetened',
  'tasted',
  'undone',
]

/** What liquid and plants can do besides, and words. */
export const NEWER_KINDS: readonly string[] = [
  'bottles_out',
  'fruit_sugared',
  'noted',
  'parted',
  'poured_in',
  'taken_out',
]
