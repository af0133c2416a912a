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

export function readStored(text: string): Stored {
  const raw = parsed(text)
  if (!isRecord(raw)) return { kind: 'unreadable', where: 'not a JSON object' }
  const version = raw.version
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { kind: 'unreadable', where: 'version' }
  }
  if (version > KNOWN_VERSION) return { kind: 'newer', version }
  const read = personSchema.safeParse(migrate(raw, version, MIGRATIONS))
  return read.success
    ? { kind: 'person', person: read.data }
    : { kind: 'unreadable', where: read.error.issues[0]?.path.join('.') || 'keys' }
}
