import { resolve } from 'node:path'
import packageFile from '../../package.json' with { type: 'json' }
import type { Maintenance } from '../../store/maintenance.ts'
import { StorageError, type StorageProblems } from '../../store/storage-error.ts'
import { widthOf } from '../terminal/show/screen.ts'
import { clean } from '../text/clean.ts'
import type { DoctorText } from '../text/doctor-text.ts'
import type { Words } from '../text/words.ts'
import { doctor } from './doctor-report.ts'

export interface CheckupDesk {
  /** The folder of data. */
  readonly data: string
  readonly store: Pick<Maintenance, 'inspect'>
  /** IANA name of the zone in which times are shown, which is also that of who has chosen none. */
  readonly zone: string
  readonly nowMs: number
  /** Whether others may read the token in `.env`. */
  readonly isTokenShown: boolean
  readonly words: Words
  readonly text: DoctorText
  /** Columns, or null: the output's own. */
  readonly width: number | null
  readonly out: { readonly columns?: number; write(text: string): unknown }
  readonly err: (text: string) => void
}

/** `npm run doctor`: looks, changes nothing, says how it is; the exit code is 1 where something has to be done. */
export async function checkUp(desk: CheckupDesk): Promise<0 | 1> {
  const { data, store, zone, nowMs, isTokenShown, words, text, width, out, err } = desk
  try {
    const facts = await store.inspect()
    const { version } = packageFile
    const checkup = { version, node: process.version, folder: resolve(data), facts, zone, nowMs, isTokenShown }
    const found = doctor(checkup, text, widthOf(width, out))
    out.write(found.text)
    return found.code
  } catch (error) {
    if (!(error instanceof StorageError)) throw error
    const { problem, values } = error as StorageError<'no_rights'>
    err(`${clean(words.problem(problem, values as StorageProblems['no_rights'], 'metric'))}\n`)
    return 1
  }
}
