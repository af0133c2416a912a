import type { BitKind, Sentence } from '../bits/bit.ts'
import type { FrameTried } from '../frames/score.ts'
import type { EntryFound } from './entry-of-clause.ts'
import { isAsked } from './is-told.ts'

/** From here on an entry explains every word of what is asked, and no other does. */
const ALL = { share: 0.95, likelihood: 0.9 } as const

export const isAllExplained = ({ share, likelihood }: EntryFound): boolean =>
  share >= ALL.share && likelihood >= ALL.likelihood

const AMOUNTS: ReadonlySet<BitKind> = new Set(['volume', 'mass', 'strength', 'sweetness', 'bottles', 'spirit', 'style'])

/**
 * `What to do with the boozy raspberries left after straining`: asked, with no amount, so that an entry which explains all of it stands
 * before a plan of the plant alone, before what is known of any plant, and before a jar that is only named.
 */
export function isWhollyAsked({ frame, options }: FrameTried, sentence: Sentence): boolean {
  const { bits, has } = sentence
  const isPlain = !bits.some(({ kind, role }) => AMOUNTS.has(kind) && role !== 'gone')
  if (!isPlain || !(isAsked(sentence) || has('what_can_i_make'))) return false
  if (frame.command === 'plan') return options['ready-by'] === undefined
  if (frame.command === 'botanical')
    return options.month === undefined && !has('how_much', 'how_long', 'per_litre', 'when_take_out')
  return frame.does === 'record'
}
