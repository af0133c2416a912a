import { join } from 'node:path'
import { z } from 'zod'
import type { Status, StatusRead } from '../maintenance.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk } from './disk-failure.ts'
import type { Folders } from './folders.ts'
import { noText } from './stored-at.ts'

const FILE_MODE = 0o600

/** Milliseconds since 1970; beyond 2199 the calendar of reminders ends. */
const instant = z
  .number()
  .min(0)
  .lt(Date.UTC(2200, 0, 1))

const told = { tickMs: instant, sentMs: instant.nullable() }

/** Version 1 had no `heardMs`. */
const statusSchema = z.discriminatedUnion('version', [
  z.strictObject({ version: z.literal(1), ...told }).transform((status) => ({ ...status, heardMs: null })),
  z.strictObject({ version: z.literal(2), ...told, heardMs: instant.nullable() }),
])

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

export async function readStatus(disk: Disk, { status: path }: Folders): Promise<StatusRead> {
  let text: string | null
  try {
    text = await ifThere(path, () => disk.readFile(path))
  } catch (error) {
    if (noText(error) !== null) return { kind: 'unreadable' }
    throw error
  }
  if (text === null) return { kind: 'none' }
  const read = statusSchema.safeParse(parsed(text))
  if (!read.success) return { kind: 'unreadable' }
  const { tickMs, sentMs, heardMs } = read.data
  return { kind: 'status', status: { tickMs, sentMs, heardMs } }
}

/**
 * Whole for every reader, but not durable: after a power cut it is written again within a minute. Where nothing was
 * sent yet, `sentMs` of the process before is kept. Calls have to come one at a time.
 */
export async function writeStatus(disk: Disk, folders: Folders, { tickMs, sentMs, heardMs }: Status): Promise<void> {
  const { data, status: path } = folders
  const before = sentMs === null ? await readStatus(disk, folders) : null
  const known = before?.kind === 'status' ? before.status.sentMs : null
  const temporary = join(data, '.status.tmp')
  await ifThere(temporary, () => disk.unlink(temporary))
  await onDisk(path, async () => {
    const file = await disk.create(temporary, FILE_MODE)
    try {
      await file.writeFile(`${JSON.stringify({ version: 2, tickMs, sentMs: sentMs ?? known, heardMs })}\n`)
    } finally {
      await file.close()
    }
    await disk.rename(temporary, path)
  })
}
