import { createHash } from 'node:crypto'
import { crc32 } from 'node:zlib'
import { once } from '../../core/once.ts'
import { nextDueMs } from '../due.ts'
import type { Jar, Person } from '../person.ts'
import { KNOWN_VERSION, readUnchecked } from '../schema/read-stored.ts'
import { isBelieved, latestMs } from '../told-ahead.ts'

/**
 * A person as one line of JSON. It begins with a checksum of all that follows and with when to look at the person again, so
 * that a start reads every file but parses only those whose stamp does not hold.
 */
export interface PersonTexts {
  /** The whole file. */
  bytesOf(person: Person): Buffer
  /** When to look again at a person; null where there is nothing to wait for, undefined where the rules fail. */
  dueMsOf(person: Person, nowMs: number): number | null | undefined
  /**
   * When to look again at the person in a file; null where there is nothing to wait for, undefined where the file has to be
   * read with more care.
   */
  dueMsIn(file: Buffer, nowMs: number): number | null | undefined
  /** Whether a file need not be written anew to be believed; its check is not looked at. */
  isOfTheseRules(file: Buffer): boolean
}

export interface TextRules {
  /** Names the program's rules of reminders: another name, another answer. Null where they have none; then no stamp holds. */
  readonly rules: string | null
  /** IANA name of the zone of who has not chosen one. */
  readonly assumedZone: string
}

/** Where the checksum stands, and how many bytes come before those it is of: `{"check":"89abcdef",`. */
const CHECK_AT = 10
const CHECK_BYTES = 20

/** At least as long as the checksum and the stamp. */
const HEAD_BYTES = 160

const HEAD = /^\{"check":"([\da-f]{8})","due":\{"rules":"([\da-f]{16})","nextMs":([^,]+),"latestMs":([^}]+)\},/

const checkOf = (file: Buffer): string => crc32(file.subarray(CHECK_BYTES)).toString(16).padStart(8, '0')

/** Whatever else decides when a reminder falls due: the zones' offsets come with the engine. */
const fingerprint = ({ rules, assumedZone }: TextRules): string | null => {
  if (rules === null) return null
  const { tz, icu } = process.versions
  const all = [rules, KNOWN_VERSION, assumedZone, tz, icu]
  return createHash('sha256').update(JSON.stringify(all)).digest('hex').slice(0, 16)
}

/** A jar is never changed, only replaced: most of those that are written again were written before. */
const jarTexts = new WeakMap<Jar, string>()

function jarText(jar: Jar): string {
  const known = jarTexts.get(jar)
  if (known !== undefined) return known
  const text = JSON.stringify(jar)
  jarTexts.set(jar, text)
  return text
}

/** Undefined where the rules fail, as they may on a file that somebody else wrote. */
export function dueOf(person: Person, assumedZone: string, nowMs?: number): number | null | undefined {
  try {
    const dueMs = nextDueMs(person, assumedZone, nowMs)
    return dueMs === null || Number.isFinite(dueMs) ? dueMs : undefined
  } catch {
    return undefined
  }
}

/** By the whole file, unchecked; undefined where that fails. */
function dueMsParsed(text: string, assumedZone: string, nowMs: number): number | null | undefined {
  try {
    const person = readUnchecked(text)
    return person === null ? undefined : dueOf(person, assumedZone, nowMs)
  } catch {
    return undefined
  }
}

export function personTexts(rules: TextRules): PersonTexts {
  const { assumedZone } = rules
  const ours = fingerprint(rules)

  // Computed by no clock: whoever takes it judges by their own whether it holds. Whoever is written is asked for it twice.
  const dueByNoClock = once((person: Person) => dueOf(person, assumedZone))

  const stampOf = (person: Person): string => {
    const nextMs = ours === null ? undefined : dueByNoClock(person)
    return JSON.stringify(nextMs === undefined ? null : { rules: ours, nextMs, latestMs: latestMs(person.jars) })
  }

  const headOf = (file: Buffer) => HEAD.exec(file.toString('latin1', 0, HEAD_BYTES)) ?? []

  const dueMsStamped = (file: Buffer, nowMs: number): number | null | undefined => {
    const [, check, theirs, nextMs, latest] = headOf(file)
    if (theirs === undefined || theirs !== ours || !isBelieved(Number(latest), nowMs)) return undefined
    if (checkOf(file) !== check) return undefined
    return JSON.parse(nextMs!)
  }

  return {
    isOfTheseRules: (file) => ours === null || headOf(file)[2] === ours,
    bytesOf(person) {
      const { jars, ...others } = person
      const fields = JSON.stringify(others).slice(1, -1)
      const jarsText = jars.map(jarText).join(',')
      const file = Buffer.from(`{"check":"........","due":${stampOf(person)},${fields},"jars":[${jarsText}]}\n`)
      file.write(checkOf(file), CHECK_AT, 'latin1')
      return file
    },
    dueMsOf: (person, nowMs) =>
      isBelieved(latestMs(person.jars), nowMs) ? dueByNoClock(person) : dueOf(person, assumedZone, nowMs),
    dueMsIn(file, nowMs) {
      const stamped = dueMsStamped(file, nowMs)
      return stamped === undefined ? dueMsParsed(String(file), assumedZone, nowMs) : stamped
    },
  }
}
