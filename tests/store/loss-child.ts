import { truncateSync } from 'node:fs'
import { join } from 'node:path'
import { NOW_MS, restoreCopy, storeIn } from './some-store.ts'

/**
 * Tears a person's file, begins anew as the next start does, copies, and puts the copy back, over and over; prints a line
 * after each of it, and never ends by itself.
 */
const [, , folder = '', who = '', day = ''] = process.argv
for (let round = 0; ; round++) {
  truncateSync(join(folder, 'users', `${who}.json`), 40)
  const store = storeIn(folder)
  await store.read(who)
  console.log(`${round} anew`)
  await store.nightly()
  await store.close()
  console.log(`${round} copied`)
  await restoreCopy({ folder, nowMs: NOW_MS + round }, who, day)
  console.log(`${round} restored`)
}
