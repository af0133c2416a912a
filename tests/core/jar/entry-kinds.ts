/** Whatever an entry can be, in the order of the alphabet. */
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
