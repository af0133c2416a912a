import { closeSync, constants, fstatSync, openSync, readFileSync, type Stats } from 'node:fs'
import { chmod, copyFile, link, mkdir, open, readdir, readlink, rename, rmdir, unlink } from 'node:fs/promises'

/** The calls that are made to an open file. */
export interface WritableFile {
  writeFile(content: string | Uint8Array): Promise<void>
  sync(): Promise<void>
  close(): Promise<void>
}

/** Every call that reaches the folder of data; they fail as those of Node do. */
export interface Disk {
  /** With the folders above it that are missing; answers with the topmost that was made, or null. */
  mkdir(path: string, mode: number): Promise<string | null>
  chmod(path: string, mode: number): Promise<void>
  readdir(path: string): Promise<readonly string[]>
  /** `EFTYPE` where it is no file, `EFBIG` above `MOST_BYTES`: neither is waited for or read. */
  readFile(path: string): Promise<string>
  /** Likewise; holds everything else up, but costs a tenth of `readFile` where thousands of small files are read. */
  readBytesNow(path: string): Buffer
  /** Where a symbolic link leads. */
  readlink(path: string): Promise<string>
  /** A file that was not there before. */
  create(path: string, mode: number): Promise<WritableFile>
  /** Durably, to a name that nothing had. */
  copy(from: string, to: string): Promise<void>
  rename(from: string, to: string): Promise<void>
  link(from: string, to: string): Promise<void>
  unlink(path: string): Promise<void>
  /** An empty folder. */
  rmdir(path: string): Promise<void>
  /** Makes the names in a folder durable. */
  syncFolder(path: string): Promise<void>
}

/** Of a file that is read: a hundred jars of a thousand entries, each with the longest plain note, come to 230 MB. */
export const MOST_BYTES = 256 * 1024 * 1024

/** Opening a pipe that nobody writes to would wait for ever. Windows has neither. */
const READ = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0)

const failed = (code: string): Error => Object.assign(new Error(code), { code })

function expectText(stats: Stats): void {
  if (!stats.isFile()) throw failed('EFTYPE')
  if (stats.size > MOST_BYTES) throw failed('EFBIG')
}

async function readFile(path: string): Promise<string> {
  const file = await open(path, READ)
  try {
    expectText(await file.stat())
    return await file.readFile('utf8')
  } finally {
    await file.close()
  }
}

function readBytesNow(path: string): Buffer {
  const file = openSync(path, READ)
  try {
    expectText(fstatSync(file))
    return readFileSync(file)
  } finally {
    closeSync(file)
  }
}

async function copy(from: string, to: string): Promise<void> {
  await copyFile(from, to, constants.COPYFILE_EXCL)
  const file = await open(to, 'r+')
  try {
    await file.sync()
  } finally {
    await file.close()
  }
}

async function syncFolder(path: string): Promise<void> {
  // Windows opens no folder; its own journal keeps the names.
  if (process.platform === 'win32') return
  const folder = await open(path, 'r')
  try {
    await folder.sync()
  } finally {
    // Nothing waits for it: the names are durable, and whatever closing says changes nothing.
    folder.close().catch(() => {})
  }
}

export const nodeDisk: Disk = {
  mkdir: async (path, mode) => (await mkdir(path, { recursive: true, mode })) ?? null,
  chmod,
  readdir: (path) => readdir(path),
  readFile,
  readBytesNow,
  readlink: (path) => readlink(path),
  create: (path, mode) => open(path, 'wx', mode),
  copy,
  rename,
  link,
  unlink,
  rmdir: (path) => rmdir(path),
  syncFolder,
}
