import type { PouredFor } from '../../talk/frames/reading.ts'
import type { Message } from '../../text/words.ts'
import type { CallOutcome } from '../run/call-outcome.ts'

const withNote = (outcome: CallOutcome, note: Message<'notes'>): CallOutcome =>
  outcome.ok ? { ...outcome, reply: { ...outcome.reply, notes: [note, ...outcome.reply.notes] } } : outcome

/** A reply that says which words were left out. */
export const leavingOut = (outcome: CallOutcome, words: readonly string[]): CallOutcome =>
  words.length === 0 ? outcome : withNote(outcome, { group: 'notes', key: 'left_out', values: { words } })

/** A reply that says for how many glasses it is. */
export const pouredFor = (outcome: CallOutcome, poured: PouredFor | undefined): CallOutcome =>
  poured === undefined ? outcome : withNote(outcome, { group: 'notes', key: 'poured_for', values: poured })

/** A reply that says which spirit was taken, where nobody said. */
export const takingSpirit = (outcome: CallOutcome, spirit: string | undefined): CallOutcome =>
  spirit === undefined ? outcome : withNote(outcome, { group: 'notes', key: 'spirit_taken', values: { spirit } })
