import { truncate } from 'node:fs/promises'
import { join } from 'node:path'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { storeIn } from './some-store.ts'

export const [A, B] = [userId(1), userId(2)] as const
export const FULL = personWith({ jars: [jarOf('k7f2a', 3), jarOf('b2b2b', 2)] })
/** What the lost file is called once it was set aside. */
export const ASIDE = `${A}.unreadable-2026-11-25T10-30-00-000Z.json`

/** A folder in which A had two jars, was copied, and then lost the file. */
export const afterLoss = (work: (folder: string) => Promise<void>): Promise<void> =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.update(A, () => FULL)
    await store.update(B, () => personWith({ nudges: [nudgeAt(5)] }))
    await store.nightly()
    await store.close()
    await truncate(join(folder, 'users', `${A}.json`), 40)
    await work(folder)
  })
