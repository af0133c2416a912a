import type { Store } from '../../../store/store.ts'
import { encodeCustomId } from './custom-id.ts'
import { keepIn, keptReference, LONGEST_KEPT } from './long-button-lines.ts'

/** A line and the command that it runs, or meant to. */
export interface LineOfCommand {
  readonly line: string
  readonly path: string
}

/** Begins what a button carries that does something else with a line than run it; the line follows, or a kept one's name. */
export type LineMark = '!line ' | '!more '

/**
 * The id of such a button. A line that is too long for it is kept in its owner's file, which is written only then; a
 * `StorageError` comes out. Null where it is too long for that.
 */
export async function markedId(
  mark: LineMark,
  { line, path }: LineOfCommand,
  { userId: owner, store }: { readonly userId: string; readonly store: Pick<Store, 'update'> },
): Promise<string | null> {
  const short = encodeCustomId({ owner, line: mark + line, nudgeId: null })
  if (short !== null || line.length > LONGEST_KEPT) return short
  return encodeCustomId({ owner, line: mark + keptReference(await keepIn(store, owner, line), path), nudgeId: null })
}

/** The line that such a button carries, or a kept one's name; null for any other button. */
export const marked = (mark: LineMark, line: string): string | null =>
  line.startsWith(mark) ? line.slice(mark.length) : null
