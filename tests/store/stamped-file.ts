import { join } from 'node:path'
import type { Person } from '../../store/person.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { type Setup, storeIn } from './some-store.ts'

export const A = userId(1)
/** Nothing but a note to try again at 100: whoever names it later than that believed a forged stamp. */
export const PERSON = personWith({ jars: [{ ...jarOf('k7f2a', 3), told: [] }], nudges: [nudgeAt(100)] })

export const withFile = (person: Person, work: (path: string, folder: string) => Promise<void>): Promise<void> =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.update(A, () => person)
    await store.close()
    await work(join(folder, 'users', `${A}.json`), folder)
  })

/** Who is named at an instant by a process that has just begun. */
export const namedAt = async (folder: string, untilMs: number, setup: Setup = {}): Promise<readonly string[]> => {
  const store = storeIn(folder, setup)
  const named = await store.claimDue(untilMs, 9, 1)
  await store.close()
  return named
}
