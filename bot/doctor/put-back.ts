import type { Maintenance } from '../../store/maintenance.ts'
import { StorageError } from '../../store/storage-error.ts'
import { clean } from '../text/clean.ts'
import type { DoctorText } from '../text/doctor-text.ts'
import type { Words } from '../text/words.ts'

export interface PutBackDesk {
  readonly store: Pick<Maintenance, 'putBack'>
  readonly words: Words
  readonly text: DoctorText
  readonly out: (text: string) => void
  readonly err: (text: string) => void
}

/** `npm run doctor -- restore ID DAY`: puts a copy back, and says what it did; the exit code is 2 where it was not asked so. */
export async function putBack(argv: readonly string[], desk: PutBackDesk): Promise<0 | 1 | 2> {
  const { store, words, text, out, err } = desk
  const [userId, day, ...more] = argv
  if (userId === undefined || day === undefined || more.length > 0) {
    err(`${text.restoreHow()}\n`)
    return 2
  }
  try {
    const { jars, entries, keptAt: kept } = await store.putBack(userId, day)
    out(`${clean(text.restored({ userId, day, jars, entries, kept }))}\n`)
    return 0
  } catch (error) {
    if (!(error instanceof StorageError)) throw error
    const { problem, values } = error as StorageError<'no_copy'>
    err(`${clean(words.problem(problem, values, 'metric'))}\n`)
    return 1
  }
}
