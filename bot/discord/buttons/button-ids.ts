import type { Store } from '../../../store/store.ts'
import type { Call } from '../../calls/call.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import { encodeCustomId } from './custom-id.ts'
import { keepLine, keptReference, LONGEST_KEPT } from './long-button-lines.ts'

/** What each call's button carries, by the call's line. A call that is missing is to be typed. */
export type ButtonIds = ReadonlyMap<string, string>

interface Owned {
  readonly owner: string
  readonly nudgeId: string | null
}

/**
 * The ids of the buttons that run `calls`. What is too long for one is kept in the owner's file, which is written only
 * then; a `StorageError` comes out.
 */
export async function buttonIds(
  calls: readonly (Call | Invocation)[],
  { owner, nudgeId }: Owned,
  store: Pick<Store, 'update'>,
): Promise<ButtonIds> {
  const ids = new Map<string, string>()
  const long: { readonly line: string; readonly path: string }[] = []
  for (const called of calls) {
    const line = lineOf(called)
    const id = encodeCustomId({ owner, line, nudgeId })
    if (id !== null) ids.set(line, id)
    else if (line.length <= LONGEST_KEPT) long.push({ line, path: 'command' in called ? called.command : called.path })
  }
  if (long.length === 0) return ids
  const kept = new Map<string, string>()
  await store.update(owner, (person) => {
    const keeping = long.reduce((now, { line, path }) => {
      const { person: next, id } = keepLine(now, line)
      kept.set(line, keptReference(id, path))
      return next
    }, person)
    return keeping === person ? null : keeping
  })
  for (const [line, reference] of kept) {
    const id = encodeCustomId({ owner, line: reference, nudgeId })
    if (id !== null) ids.set(line, id)
  }
  return ids
}
