import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Before any real message: 2020, in Discord's milliseconds. */
const BEGIN = BigInt(Date.UTC(2020, 0, 1) - 1_420_070_400_000) << 22n
const HASHED_BYTES = 6

/** The same id for the same name every time, so that jars are found again by a stand-in that is started later. */
export const idFor = (what: string): string =>
  String(BEGIN + BigInt(createHash('sha256').update(what).digest().readUIntBE(0, HASHED_BYTES)))

const pathIn = (folder: string): string => join(folder, 'clock.json')

/** How far the clock was ahead when the folder was last used. */
export const readAheadMs = (folder: string): number => {
  try {
    const { aheadMs } = JSON.parse(readFileSync(pathIn(folder), 'utf8'))
    return Number.isSafeInteger(aheadMs) && aheadMs > 0 ? aheadMs : 0
  } catch {
    return 0
  }
}

export const keepAheadMs = (folder: string, aheadMs: number): void =>
  writeFileSync(pathIn(folder), `${JSON.stringify({ aheadMs })}\n`)
