import { readFileSync } from 'node:fs'
import { hostname } from 'node:os'
import { systemCode } from './disk-failure.ts'

/** A process that works on a folder of data. */
export interface Holder {
  readonly pid: number
  /** Tells two holders within one process apart. */
  readonly count: number
  /** When the process started, as its system counts; null where that cannot be asked. */
  readonly started: string | null
  /** Changes whenever the machine starts; null likewise. */
  readonly boot: string | null
  readonly host: string
}

const LONGEST_HOST = 100
const UNKNOWN = '-'

/** A holder as the name of a file: whole from the moment there is one. */
export const holderName = ({ pid, count, started, boot, host }: Holder): string =>
  [pid, count, started ?? UNKNOWN, boot ?? UNKNOWN, host].join('_')

const NAME = /^(\d{1,10})_(\d{1,10})_(\d+|-)_([\da-f-]+)_(.+)$/

export function holderOf(fileName: string): Holder | null {
  const [, pid, count, started, boot, host] = NAME.exec(fileName) ?? []
  if (host === undefined) return null
  const known = (text: string | undefined): string | null => (text === undefined || text === UNKNOWN ? null : text)
  return { pid: Number(pid), count: Number(count), started: known(started), boot: known(boot), host }
}

function readNow(path: string): string | null {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return null
  }
}

/** State and start of a process (fields 3 and 22 of proc(5)'s stat; the name before them may hold anything). */
function statOf(pid: number): { readonly state: string; readonly started: string } | null {
  const stat = readNow(`/proc/${pid}/stat`)
  const [state, ...fields] = stat?.slice(stat.lastIndexOf(')') + 2).split(' ') ?? []
  const started = fields[18]
  return state === undefined || started === undefined ? null : { state, started }
}

const bootId = (): string | null => readNow('/proc/sys/kernel/random/boot_id')?.trim() ?? null

let holders = 0

export function thisHolder(): Holder {
  holders += 1
  return {
    pid: process.pid,
    count: holders,
    started: statOf(process.pid)?.started ?? null,
    boot: bootId(),
    host: encodeURIComponent(hostname()).slice(0, LONGEST_HOST),
  }
}

function isThere(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return systemCode(error) === 'EPERM'
  }
}

const differ = (one: string | null, other: string | null): boolean => one !== null && other !== null && one !== other

/** False where this host has started anew since, or no such process runs; of another host nothing is known: true. */
export function mayStillRun({ host, boot, pid, started }: Holder, here: Holder): boolean {
  if (host !== here.host) return true
  if (differ(boot, here.boot) || !isThere(pid)) return false
  const stat = statOf(pid)
  if (stat === null) return true
  const isDead = stat.state === 'Z' || stat.state === 'X'
  return !isDead && !differ(started, stat.started)
}
