import type { Store } from '../../../store/store.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { decodeCustomId } from '../buttons/custom-id.ts'
import { lineKept, readReference } from '../buttons/long-button-lines.ts'
import { marked } from '../buttons/marked-lines.ts'
import { opensAgain } from '../forms/reopen-form.ts'
import { retyped, TYPED_LINE } from '../forms/retype.ts'
import { SHOW_LINE } from '../show/to-messages.ts'

/** What a press of a button means for whoever pressed it. */
export type Pressed =
  /** To be run, once `keptLine` has found it where it is kept. */
  | { readonly kind: 'line'; readonly line: string }
  | { readonly kind: 'show' }
  /** To open a form again, once `formAgain` has found it. */
  | { readonly kind: 'again'; readonly line: string }
  /** To open a line to be changed, once `keptLine` has found it. */
  | { readonly kind: 'retype'; readonly line: string }
  /** To say the rest of what a line was answered, once `keptLine` has found it. */
  | { readonly kind: 'more'; readonly line: string }
  /** The form that such a line was sent with. */
  | { readonly kind: 'typed' }
  /** Made for somebody else. */
  | { readonly kind: 'not_yours' }
  /** Nothing of what I make today. */
  | { readonly kind: 'unknown' }

/** Reads the id of a button or a form. */
export function pressed(customId: string, userId: string): Pressed {
  const read = decodeCustomId(customId)
  if (read === null) return { kind: 'unknown' }
  const { owner, line } = read
  if (owner !== null && owner !== userId) return { kind: 'not_yours' }
  if (line === SHOW_LINE) return { kind: 'show' }
  if (opensAgain(line)) return { kind: 'again', line }
  const typed = retyped(line)
  if (typed !== null) return { kind: 'retype', line: typed }
  const more = marked('!more ', line)
  if (more !== null) return { kind: 'more', line: more }
  if (line === TYPED_LINE) return { kind: 'typed' }
  if (line.startsWith('/') || readReference(line) !== null) return { kind: 'line', line }
  return { kind: 'unknown' }
}

/** The line of a button, looked up where it was too long for one. Throws `ChatError` where it is no longer kept. */
export async function keptLine(
  line: string,
  { userId, store }: { readonly userId: string; readonly store: Pick<Store, 'read'> },
): Promise<string> {
  const reference = readReference(line)
  if (reference === null) return line
  const { id, path } = reference
  const kept = lineKept(await store.read(userId), id)
  if (kept === null) throw new ChatError('not_found', 'button_too_old', { path }, { command: path })
  return kept
}
