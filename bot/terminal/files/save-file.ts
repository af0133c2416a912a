import { chmod, mkdir, open, readdir, rm, rmdir } from 'node:fs/promises'
import { extname, join } from 'node:path'
import type { ForgetFiles } from '../../chat/command.ts'

const FOLDER_MODE = 0o700
const FILE_MODE = 0o600

/** Keeps a file that a reply came with, under a name of ours, and says where. Throws what the disk throws. */
export type SaveFile = (name: string, bytes: Uint8Array) => Promise<string>

/** `larderbell.ics`, `larderbell-2.ics`, `larderbell-3.ics` … */
const numbered = (name: string, count: number): string => {
  const ending = extname(name)
  return count === 1 ? name : `${name.slice(0, name.length - ending.length)}-${count}${ending}`
}

const isThere = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'EEXIST'

/** What `numbered` makes of the names that replies give their files. */
const OURS = /^larderbell[a-z0-9-]*\.[a-z]+$/

/** Removes what was saved in a folder, and the folder where nothing else is in it; the number of files. */
export const forgetFilesIn =
  (folder: string): ForgetFiles =>
  async () => {
    const names = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return []
      throw error
    })
    const ours = names.filter((name) => OURS.test(name))
    for (const name of ours) await rm(join(folder, name), { force: true })
    if (names.length > 0 && ours.length === names.length) await rmdir(folder)
    return ours.length
  }

/** Saves in a folder that is made when it is first needed, for its owner alone; what is there is never written over. */
export const saveFileIn =
  (folder: string): SaveFile =>
  async (name, bytes) => {
    await mkdir(folder, { recursive: true, mode: FOLDER_MODE })
    await chmod(folder, FOLDER_MODE)
    for (let count = 1; ; count++) {
      const path = join(folder, numbered(name, count))
      try {
        const file = await open(path, 'wx', FILE_MODE)
        try {
          await file.writeFile(bytes)
        } catch (error) {
          await rm(path, { force: true })
          throw error
        } finally {
          await file.close()
        }
        return path
      } catch (error) {
        if (!isThere(error)) throw error
      }
    }
  }
