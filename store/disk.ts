import { readFileSync } from 'node:fs'
import { chmod, link, mkdir, open, readdir, readFile, rename, rmdir, unlink } from 'node:fs/promises'

/** What is asked of an open file. */
export interface OpenFile {
  writeFile(text: string): Promise<void>
  sync(): Promise<void>
  close(): Promise<void>
}

/** Every call that reaches the folder of data; they fail as those of Node do. */
export interface Disk {
  mkdir(path: string, mode: number): Promise<void>
  chmod(path: string, mode: number): Promise<void>
  readdir(path: string): Promise<readonly string[]>
  readFile(path: string): Promise<string>
  /** Holds everything else up, but costs a tenth of `readFile` where thousands of small files are read. */
  readFileNow(path: string): string
  /** A file that was not there before. */
  create(path: string, mode: number): Promise<OpenFile>
  rename(from: string, to: string): Promise<void>
  link(from: string, to: string): Promise<void>
  unlink(path: string): Promise<void>
  /** An empty folder. */
  rmdir(path: string): Promise<void>
  /** Makes the names in a folder durable. */
  syncFolder(path: string): Promise<void>
}

async function syncFolder(path: string): Promise<void> {
  // Windows opens no folder; its own journal keeps the names.
  if (process.platform === 'win32') return
  const folder = await open(path, 'r')
  try {
    await folder.sync()
  } finally {
    await folder.close()
  }
}

export const nodeDisk: Disk = {
  async mkdir(path, mode) {
    await mkdir(path, { recursive: true, mode })
  },
  chmod,
  readdir: (path) => readdir(path),
  readFile: (path) => readFile(path, 'utf8'),
  readFileNow: (path) => readFileSync(path, 'utf8'),
  create: (path, mode) => open(path, 'wx', mode),
  rename,
  link,
  unlink,
  rmdir: (path) => rmdir(path),
  syncFolder,
}
