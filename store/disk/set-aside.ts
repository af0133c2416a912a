import { join } from 'node:path'
import { type AsideReason, setAsideName } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { systemCode } from './disk-failure.ts'
import { type Folders, personPath } from './folders.ts'
import { realPath } from './real-path.ts'

/** `2026-11-25T10-30-00-000Z`: an instant that may stand in the name of a file everywhere. */
const stampOf = (nowMs: number): string => new Date(nowMs).toISOString().replace(/[:.]/g, '-')

/** Codes of file systems that know no second names; none reaches from one file system to another (`EXDEV`). */
const NO_LINK: readonly string[] = ['EPERM', 'ENOTSUP', 'ENOSYS', 'EOPNOTSUPP']

async function giveName(disk: Disk, real: string, aside: string): Promise<void> {
  try {
    await disk.link(real, aside)
  } catch (error) {
    const code = systemCode(error) ?? ''
    if (code === 'EXDEV') return disk.copy(real, aside)
    if (!NO_LINK.includes(code)) throw error
    await disk.rename(real, aside)
  }
}

/**
 * Gives a person's file a second name and answers with that name. The file keeps its first name until a new file takes it,
 * so that a crash in between only means that it is set aside once more. Fails as the disk does.
 */
export async function setAside(
  disk: Disk,
  folders: Folders,
  { userId, reason, nowMs }: { readonly userId: string; readonly reason: AsideReason; readonly nowMs: number },
): Promise<string> {
  const taken = await disk.readdir(folders.users)
  let count = 0
  while (taken.includes(setAsideName(userId, reason, stampOf(nowMs), count))) count += 1
  const name = setAsideName(userId, reason, stampOf(nowMs), count)
  await giveName(disk, await realPath(disk, personPath(folders, userId)), join(folders.users, name))
  await disk.syncFolder(folders.users)
  return name
}
