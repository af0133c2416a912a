import { dirname, resolve } from 'node:path'
import type { Disk } from './disk.ts'
import { systemCode } from './disk-failure.ts'

/** As many links as Linux follows. */
const MOST_LINKS = 40

async function linkAt(disk: Disk, path: string): Promise<string | null> {
  try {
    return resolve(dirname(path), await disk.readlink(path))
  } catch (error) {
    // No link, or nothing at all; some file systems know no links.
    if (['EINVAL', 'ENOENT', 'UNKNOWN', 'ENOSYS', 'ENOTSUP'].includes(systemCode(error) ?? '')) return null
    throw error
  }
}

/**
 * Where a path leads in the end, whether anything stands there or not. What is written there leaves a link in place, as its
 * maker wanted it. Fails with `ELOOP` where links lead round in a circle.
 */
export async function realPath(disk: Disk, path: string): Promise<string> {
  let real = path
  for (let links = 0; links <= MOST_LINKS; links++) {
    const next = await linkAt(disk, real)
    if (next === null) return real
    real = next
  }
  throw Object.assign(new Error('ELOOP'), { code: 'ELOOP' })
}
