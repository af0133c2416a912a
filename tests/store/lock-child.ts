import { createInterface } from 'node:readline'
import { StorageError } from '../../store/storage-error.ts'
import { type StoreOnDisk, storeIn } from './some-store.ts'

/** `take FOLDER` answers `taken` or what is wrong and holds the folder; `close` answers `closed`. */
let store: StoreOnDisk | null = null

const answer = async (line: string): Promise<string> => {
  const [order, folder = ''] = line.split(' ')
  if (order === 'close') {
    await store?.close()
    return 'closed'
  }
  store = storeIn(folder)
  try {
    await store.update('local', (person) => person)
    return 'taken'
  } catch (error) {
    if (error instanceof StorageError) return error.problem
    throw error
  }
}

for await (const line of createInterface({ input: process.stdin })) console.log(await answer(line))
