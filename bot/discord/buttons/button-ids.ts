import type { Store } from '../../../store/store.ts'
import { byPath, type Callable } from '../../chat/callable.ts'
import { encodeCustomId } from './custom-id.ts'
import { keepLine, keptReference, LONGEST_KEPT } from './long-button-lines.ts'

/** What each line's button carries. A line that is missing is to be typed. */
export type ButtonIds = ReadonlyMap<string, string>

interface Owned {
  readonly owner: string
  readonly nudgeId: string | null
}

/** The path of the command that a line runs, null where it runs none. */
export function pathOf(line: string, commands: readonly Callable[]): string | null {
  const [first = '', second = ''] = line.replace(/^\//, '').split(' ')
  return (byPath(`${first} ${second}`, commands) ?? byPath(first, commands))?.path ?? null
}

/**
 * The ids of the buttons that run `lines`. What is too long for one is kept in the owner's file, which is written only
 * then; a `StorageError` comes out.
 */
export async function buttonIds(
  lines: readonly string[],
  { owner, nudgeId }: Owned,
  { store, commands }: { readonly store: Pick<Store, 'update'>; readonly commands: readonly Callable[] },
): Promise<ButtonIds> {
  const ids = new Map<string, string>()
  const long: { readonly line: string; readonly path: string }[] = []
  for (const line of new Set(lines)) {
    const id = encodeCustomId({ owner, line, nudgeId })
    const path = id === null && line.length <= LONGEST_KEPT ? pathOf(line, commands) : null
    if (id !== null) ids.set(line, id)
    else if (path !== null) long.push({ line, path })
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
