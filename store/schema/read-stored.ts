import type { Person } from '../person.ts'
import { MIGRATIONS, migrate } from './migrations.ts'
import { personSchema } from './person-schema.ts'

export const KNOWN_VERSION = MIGRATIONS.length + 1

/** What a file holds. `where` names the part that is wrong, without what stands there. */
export type Stored =
  | { readonly kind: 'person'; readonly person: Person }
  | { readonly kind: 'newer'; readonly version: number }
  | { readonly kind: 'unreadable'; readonly where: string }

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** A whole number from 1, or null. */
const versionOf = ({ version }: Readonly<Record<string, unknown>>): number | null =>
  typeof version === 'number' && Number.isInteger(version) && version >= 1 ? version : null

/** Brought to the newest version, without what is in a file only to find it again quickly. */
const upToDate = (raw: Readonly<Record<string, unknown>>, version: number) => {
  const { check: _check, due: _due, ...person } = migrate(raw, version, MIGRATIONS)
  return person
}

/** A person as a file of ours holds it, unchecked, which costs half; null for what only `readStored` can judge. */
export function readUnchecked(text: string): Person | null {
  const raw = parsed(text)
  const version = isRecord(raw) ? versionOf(raw) : null
  if (!isRecord(raw) || version === null || version > KNOWN_VERSION) return null
  return upToDate(raw, version) as unknown as Person
}

export function readStored(text: string): Stored {
  const raw = parsed(text)
  if (!isRecord(raw)) return { kind: 'unreadable', where: 'not a JSON object' }
  const version = versionOf(raw)
  if (version === null) return { kind: 'unreadable', where: 'version' }
  if (version > KNOWN_VERSION) return { kind: 'newer', version }
  const read = personSchema.safeParse(upToDate(raw, version))
  return read.success
    ? { kind: 'person', person: read.data }
    : { kind: 'unreadable', where: read.error.issues[0]?.path.join('.') || 'keys' }
}
