import { z } from 'zod'
import type { Store } from '../../../store/store.ts'
import type { Callable } from '../../chat/callable.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { parseLine } from '../../chat/grammar/grammar.ts'
import { encodeCustomId } from '../buttons/custom-id.ts'
import { keepIn, keptReference, LONGEST_KEPT, lineKept, readReference } from '../buttons/long-button-lines.ts'
import type { SentForm } from './form.ts'

/** Begins what a button carries that opens a form again; a kept line's name follows. */
const AGAIN = '!again '

/** A form as it is kept: JSON holds what no line can, such as the end of one. Earlier versions kept more of it. */
const keptForm: z.ZodType<SentForm> = z.object({ line: z.string(), filled: z.record(z.string(), z.string()) })

interface Keeping {
  readonly userId: string
  readonly store: Pick<Store, 'update'>
  readonly commands: readonly Callable[]
}

/**
 * The id of the button that opens a form again as it was filled in, which is kept in its owner's file; null where it is
 * too long. A `StorageError` comes out.
 */
export async function againId(form: SentForm, { userId, store, commands }: Keeping): Promise<string | null> {
  const kept = JSON.stringify(form)
  if (kept.length > LONGEST_KEPT) return null
  const { path } = parseLine(form.line, commands)
  const id = await keepIn(store, userId, kept)
  return encodeCustomId({ owner: userId, line: AGAIN + keptReference(id, path), nudgeId: null })
}

/** Whether a button's line opens a form again. */
export const opensAgain = (line: string): boolean =>
  line.startsWith(AGAIN) && readReference(line.slice(AGAIN.length)) !== null

/** The form that such a button opens. Throws `ChatError` where it is no longer kept. */
export async function formAgain(
  line: string,
  { userId, store }: { readonly userId: string; readonly store: Pick<Store, 'read'> },
): Promise<SentForm> {
  const { id = '', path = '' } = readReference(line.slice(AGAIN.length)) ?? {}
  const kept = lineKept(await store.read(userId), id)
  if (kept === null) throw new ChatError('not_found', 'button_too_old', { path }, { command: path })
  return keptForm.parse(JSON.parse(kept))
}
