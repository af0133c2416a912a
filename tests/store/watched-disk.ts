import { type Disk, nodeDisk, type WritableFile } from '../../store/disk/disk.ts'

/** A call as it reached the disk: its name and the last part of the paths it was about. */
export type Call = readonly [name: keyof Disk | keyof WritableFile, ...paths: string[]]

/** Called before each call, with its name and paths; what it throws is thrown instead of the call. */
export type Before = (...call: Call) => void

const shortOf = (path: string): string =>
  path
    .split('/')
    .at(-1)!
    .replace(/\.\d+-\d+\.tmp$/, '.tmp')

/** The disk of Node, watched. What cannot be written is written by half. */
export function watchedDisk(before: Before): Disk {
  const watched =
    <Args extends readonly unknown[], Result>(
      name: keyof Disk,
      call: (...args: Args) => Promise<Result>,
      paths: (...args: Args) => string[],
    ) =>
    async (...args: Args): Promise<Result> => {
      before(name, ...paths(...args).map(shortOf))
      return call(...args)
    }
  const one = (path: string): string[] => [path]
  const two = (from: string, to: string): string[] => [from, to]
  return {
    mkdir: watched('mkdir', nodeDisk.mkdir, one),
    chmod: watched('chmod', nodeDisk.chmod, one),
    readdir: watched('readdir', nodeDisk.readdir, one),
    readFile: watched('readFile', nodeDisk.readFile, one),
    readBytesNow(path) {
      before('readBytesNow', shortOf(path))
      return nodeDisk.readBytesNow(path)
    },
    readlink: watched('readlink', nodeDisk.readlink, one),
    copy: watched('copy', nodeDisk.copy, two),
    rename: watched('rename', nodeDisk.rename, two),
    link: watched('link', nodeDisk.link, two),
    unlink: watched('unlink', nodeDisk.unlink, one),
    rmdir: watched('rmdir', nodeDisk.rmdir, one),
    syncFolder: watched('syncFolder', nodeDisk.syncFolder, one),
    async create(path, mode) {
      before('create', shortOf(path))
      const file = await nodeDisk.create(path, mode)
      return {
        async writeFile(content) {
          try {
            before('writeFile', shortOf(path))
          } catch (error) {
            await file.writeFile(content.slice(0, content.length / 2))
            throw error
          }
          await file.writeFile(content)
        },
        async sync() {
          before('sync', shortOf(path))
          await file.sync()
        },
        async close() {
          await file.close()
          before('close', shortOf(path))
        },
      }
    },
  }
}

export const failure = (code: string): Error => Object.assign(new Error(code), { code })
