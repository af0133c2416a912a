import type { HappeningKind } from '../../../../core/jar/entry/entry.ts'

/** What was done to a jar. */
export const didWords: Readonly<Record<HappeningKind, string>> = {
  started: 'started',
  shaken: 'shaken',
  tasted: 'tasted',
  added: 'added to',
  strained: 'strained',
  filtered: 'filtered',
  sweetened: 'sweetened',
  bottled: 'bottled',
  opened: 'opened',
  emptied: 'emptied',
  discarded: 'thrown away',
  renamed: 'renamed',
  put_off: 'put off',
}
