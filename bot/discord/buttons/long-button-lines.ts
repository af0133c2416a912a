import { createHash } from 'node:crypto'
import type { Person } from '../../../store/person.ts'
import type { Store } from '../../../store/store.ts'

/** The last so many are kept, each of so many characters at most. */
const MOST_LINES = 100
export const LONGEST_KEPT = 4000

const ID_DIGITS = 12

/** The same for the same line, also after it was forgotten. */
const idOf = (line: string): string => createHash('sha256').update(line).digest('hex').slice(0, ID_DIGITS)

/** Keeps a line that is too long for a button; one that is kept already counts as used again. */
export function keepLine(person: Person, line: string): { readonly person: Person; readonly id: string } {
  const id = idOf(line)
  if (person.lines.at(-1)?.line === line) return { person, id }
  const others = person.lines.filter((kept) => kept.id !== id)
  return { person: { ...person, lines: [...others, { id, line }].slice(-MOST_LINES) }, id }
}

/** Keeps it in its owner's file, and gives its id. A `StorageError` comes out. */
export async function keepIn(store: Pick<Store, 'update'>, owner: string, line: string): Promise<string> {
  await store.update(owner, (person) => {
    const keeping = keepLine(person, line)
    return keeping.person === person ? null : keeping.person
  })
  return idOf(line)
}

/** The line of an id, null where it is no longer kept. */
export const lineKept = (person: Person, id: string): string | null =>
  person.lines.find((kept) => kept.id === id)?.line ?? null

/** A kept line as a button names it: `@0123456789ab /plan`, so that a lost one can still say which command it was. */
export const keptReference = (id: string, path: string): string => `@${id} /${path}`

const REFERENCE = /^@([0-9a-f]{12}) \/(\S.*)$/u

export interface KeptReference {
  readonly id: string
  /** The command that the line runs. */
  readonly path: string
}

/** What a button's line names, null where that is no kept line. */
export function readReference(line: string): KeptReference | null {
  const [, id, path] = REFERENCE.exec(line) ?? []
  return id === undefined || path === undefined ? null : { id, path }
}
