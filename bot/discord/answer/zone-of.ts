import { StorageError } from '../../../store/storage-error.ts'
import type { Asker } from '../../chat/command.ts'

/** The zone whose days the answer means, also where the store cannot be read. */
export const zoneOf = async ({ store, userId, assumedZone }: Asker): Promise<string> => {
  try {
    return (await store.read(userId)).settings.zone ?? assumedZone
  } catch (error) {
    if (error instanceof StorageError) return assumedZone
    throw error
  }
}
