import { dirname } from 'node:path'
import { type Disk, nodeDisk } from '../../store/disk/disk.ts'
import { failure } from './watched-disk.ts'

/** The disk of Node, and what would be found on it if the power failed now. */
export interface PowerCutDisk {
  readonly disk: Disk
  /** The text that a path has after a power cut; null where there is nothing, or nothing whole. */
  afterCut(path: string): string | null
}

/**
 * A text is there after a cut once it was synced and its name after that; a name is once its folder was synced since. What a
 * sync that failed was to bring is lost for good, as Linux may lose it, though everybody still sees it until the cut.
 */
export function powerCutDisk(fails: (call: string, path: string) => boolean): PowerCutDisk {
  const written = new Map<string, { text: string; isSynced: boolean }>()
  const durable = new Map<string, string | null>()
  const waiting = new Map<string, Map<string, string | null>>()
  const waitingIn = (path: string) => {
    const folder = dirname(path)
    const names = waiting.get(folder) ?? new Map<string, string | null>()
    waiting.set(folder, names)
    return names
  }
  const expectWell = (call: string, path: string): void => {
    if (fails(call, path)) throw failure('EIO')
  }
  const disk: Disk = {
    ...nodeDisk,
    async create(path, mode) {
      expectWell('create', path)
      const file = await nodeDisk.create(path, mode)
      return {
        async writeFile(content) {
          expectWell('writeFile', path)
          await file.writeFile(content)
          written.set(path, { text: String(content), isSynced: false })
        },
        async sync() {
          expectWell('sync', path)
          await file.sync()
          const known = written.get(path)
          if (known !== undefined) known.isSynced = true
        },
        close: () => file.close(),
      }
    },
    async rename(from, to) {
      expectWell('rename', to)
      await nodeDisk.rename(from, to)
      const known = written.get(from)
      waitingIn(to).set(to, known?.isSynced === true ? known.text : null)
    },
    async unlink(path) {
      expectWell('unlink', path)
      await nodeDisk.unlink(path)
      waitingIn(path).set(path, null)
    },
    async syncFolder(path) {
      const names = waiting.get(path) ?? new Map<string, string | null>()
      waiting.delete(path)
      expectWell('syncFolder', path)
      await nodeDisk.syncFolder(path)
      for (const [name, text] of names) durable.set(name, text)
    },
  }
  return { disk, afterCut: (path) => durable.get(path) ?? null }
}
