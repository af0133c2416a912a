import { StorageError } from '../storage-error.ts'

const NO_RIGHTS: readonly string[] = ['EACCES', 'EPERM', 'EROFS']
const FULL: readonly string[] = ['ENOSPC', 'EDQUOT']

/** The system's name of what failed, or null for anything but a failed call of the system. */
export const systemCode = (error: unknown): string | null =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : null

function storageError(error: unknown, path: string): unknown {
  const code = systemCode(error)
  if (error instanceof StorageError || code === null) return error
  if (NO_RIGHTS.includes(code)) return new StorageError('no_rights', { path }, error)
  if (FULL.includes(code)) return new StorageError('disk_full', { path }, error)
  return new StorageError('disk_failed', { path, code }, error)
}

/** Does `work` on `path`, and throws its failure as a `StorageError`. */
export async function onDisk<Result>(path: string, work: () => Promise<Result>): Promise<Result> {
  try {
    return await work()
  } catch (error) {
    throw storageError(error, path)
  }
}

/** The same, but null where there is no such file or folder. */
export const ifThere = <Result>(path: string, work: () => Promise<Result>): Promise<Result | null> =>
  onDisk(path, async () => {
    try {
      return await work()
    } catch (error) {
      if (systemCode(error) === 'ENOENT') return null
      throw error
    }
  })
