import { constants } from 'node:fs'
import { access, stat } from 'node:fs/promises'
import { ifThere, systemCode } from './disk-failure.ts'

/**
 * What this process may do with a folder: `own`, and nobody else may look in; `shared`, others may; `read_only`. Null
 * where there is none. Throws `no_rights` where it may not even be looked into.
 */
export type Rights = 'own' | 'shared' | 'read_only'

const OTHERS = 0o077

const isWritable = async (path: string): Promise<boolean> => {
  try {
    await access(path, constants.W_OK)
    return true
  } catch (error) {
    if (['EACCES', 'EPERM', 'EROFS'].includes(systemCode(error) ?? '')) return false
    throw error
  }
}

export const rightsTo = (path: string): Promise<Rights | null> =>
  ifThere(path, async () => {
    await access(path, constants.R_OK | constants.X_OK)
    if (!(await isWritable(path))) return 'read_only'
    const { mode } = await stat(path)
    // Windows keeps rights elsewhere.
    return process.platform !== 'win32' && (mode & OTHERS) !== 0 ? 'shared' : 'own'
  })
