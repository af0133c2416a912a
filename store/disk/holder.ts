import { readFileSync, readlinkSync } from 'node:fs'
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
  /** Within which its number counts: a container has its own; null likewise. */
  readonly namespace: string | null
  readonly host: string
}

const LONGEST_HOST = 100
const UNKNOWN = '-'

/** A holder as the name of a file, which is whole from the moment it exists. Hosts are encoded, so none has an `@` in it. */
export const holderName = ({ pid, count, started, boot, namespace, host }: Holder): string =>
  [pid, count, started ?? UNKNOWN, boot ?? UNKNOWN, ...(namespace === null ? [] : [`@${namespace}`]), host].join('_')

/** Names from before namespaces were told apart have none. */
const NAME = /^(\d{1,10})_(\d{1,10})_(\d+|-)_([\da-f-]+)_(?:@(\d+)_)?(.+)$/

export function holderOf(fileName: string): Holder | null {
  const [, pid, count, started, boot, namespace, host] = NAME.exec(fileName) ?? []
  if (host === undefined) return null
  const known = (text: string | undefined): string | null => (text === undefined || text === UNKNOWN ? null : text)
  return {
    pid: Number(pid),
    count: Number(count),
    started: known(started),
    boot: known(boot),
    namespace: known(namespace),
    host,
  }
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

/** `pid:[4026531836]`, see pid_namespaces(7). */
function namespaceId(): string | null {
  try {
    return /\d+/.exec(readlinkSync('/proc/self/ns/pid'))?.[0] ?? null
  } catch {
    return null
  }
}

let holders = 0

export function thisHolder(): Holder {
  holders += 1
  return {
    pid: process.pid,
    count: holders,
    started: statOf(process.pid)?.started ?? null,
    boot: bootId(),
    namespace: namespaceId(),
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

/** Whether its process can be seen from here: it is of this host, and from before its last start or in our own namespace. */
export const isSeen = ({ host, boot, namespace }: Holder, here: Holder): boolean =>
  host === here.host && (differ(boot, here.boot) || !differ(namespace, here.namespace))

/**
 * False where this host has started anew since, or where no such process runs. True for another host and for another
 * container on this one, of which nothing is known.
 */
export function mayStillRun(holder: Holder, here: Holder): boolean {
  if (!isSeen(holder, here)) return true
  const { boot, pid, started } = holder
  if (differ(boot, here.boot) || !isThere(pid)) return false
  const stat = statOf(pid)
  if (stat === null) return true
  const isDead = stat.state === 'Z' || stat.state === 'X'
  return !isDead && !differ(started, stat.started)
}
