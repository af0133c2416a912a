import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import type { ShakeRhythm } from './duty.ts'

const RHYTHMS: ReadonlyMap<string, ShakeRhythm> = new Map([
  ['daily', 'daily'],
  ['every day', 'daily'],
  ['each day', 'daily'],
  ['ogni giorno', 'daily'],
  ['every other day', 'every_other_day'],
  ['every second day', 'every_other_day'],
  ['every 2 days', 'every_other_day'],
  ['every two days', 'every_other_day'],
  ['a giorni alterni', 'every_other_day'],
  ['off', 'off'],
  ['no', 'off'],
  ['never', 'off'],
  ['mai', 'off'],
])

/** How often somebody wants to be reminded to shake; throws `no_rhythm`. */
export function parseRhythm(text: string): ShakeRhythm {
  const rhythm = RHYTHMS.get(text.trim().replace(/\s+/g, ' ').toLowerCase())
  if (rhythm === undefined) throw new DomainError('bad_value', 'no_rhythm', { typed: shown(text) })
  return rhythm
}
