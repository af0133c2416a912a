import { z } from 'zod'
import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import { bytesOf, MOST_JAR_BYTES } from '../../../core/jar/record/bounds.ts'
import { MOST_SHARES } from '../../../core/jar/state/shares.ts'
import { shown } from '../../../core/quantity/read/tokens.ts'
import type { Jar } from '../../../store/person.ts'
import { entrySchema, jarSchema, settingsSchema, shareSchema } from '../../../store/schema/person-schema.ts'
import { entriesToVersion4 } from '../../../store/schema/to-version-4.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { GivenFile } from '../../chat/given-file.ts'
import type { LeftJar } from '../../text/messages/file-problems.ts'
import { withoutAttempt } from './attempts.ts'
import { KEPT_BYTES, MOST_IN_JAR, MOST_JARS } from './import-limits.ts'
import { MOST_SHARED_BYTES, NOTEBOOK_MARK, NOTEBOOK_VERSION, type Notebook } from './notebook-file.ts'
import { readJson } from './read-json.ts'

const markSchema = z.object({ larderbell: z.literal(NOTEBOOK_MARK), version: z.int().min(1) })

const notebookSchema = z.strictObject({
  ...markSchema.shape,
  exportedAt: z.iso.datetime(),
  settings: settingsSchema,
  shares: z.array(shareSchema).max(MOST_SHARES),
  jars: z.array(z.unknown()),
})

/** Of what is not known yet to be as it should. */
const { toldMs: _, ...carried } = jarSchema.shape
const looseJar = z.strictObject({ ...carried, entries: z.array(z.unknown()).min(1).max(MOST_IN_JAR) })

/** Which part is wrong, fit to be shown; null where it is the whole. */
const whereOf = ({ issues: [issue] }: z.ZodError): string | null => {
  if (issue === undefined) return null
  const keys = issue.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : []
  const where = shown([...issue.path, ...keys].join('.'))
  return where === '' ? null : where
}

/** Parts whose range is that of a kitchen. */
const RANGED = ['abvPercent', 'sugarGPerL', 'atC', 'abvAtC']

const isOutOfRange = ({ issues: [issue] }: z.ZodError): boolean =>
  (issue?.code === 'too_big' || issue?.code === 'too_small') && RANGED.some((part) => issue.path.includes(part))

const named = z.looseObject({ entries: z.array(z.unknown()) })
const startOf = z.looseObject({ name: z.string() })

/** What a jar seems to be called, for the sentence that says what is wrong with it. */
function nameOf(raw: unknown): string | null {
  const jar = named.safeParse(raw)
  const start = jar.success ? startOf.safeParse(jar.data.entries[0]) : null
  const name = start?.success ? shown(start.data.name) : ''
  return name === '' ? null : name
}

type JarRead = { readonly jar: Jar } | { readonly left: LeftJar }

/** A jar of a file of version 1 as it is written now. */
const fromVersion1 = (raw: unknown, country: string | null): unknown => {
  const jar = named.safeParse(raw)
  return jar.success ? { ...jar.data, entries: entriesToVersion4(jar.data.entries, country) } : raw
}

function readJar(raw: unknown, number: number): JarRead {
  const name = nameOf(raw)
  const wrong = (seq: number | null, error: z.ZodError): JarRead => {
    const isAmount = isOutOfRange(error)
    return {
      left: { jar: number, name, seq, why: isAmount ? 'amount' : 'part', where: isAmount ? null : whereOf(error) },
    }
  }
  const outer = looseJar.safeParse(raw)
  if (!outer.success) return wrong(null, outer.error)
  const entries: JarEntry[] = []
  for (const [index, entry] of outer.data.entries.entries()) {
    const read = entrySchema.safeParse(entry)
    if (!read.success) return wrong(index + 1, read.error)
    entries.push(withoutAttempt(read.data))
  }
  if (bytesOf(entries) > MOST_JAR_BYTES + KEPT_BYTES) {
    return { left: { jar: number, name, seq: null, why: 'long', where: null } }
  }
  return { jar: { ...outer.data, entries } }
}

/**
 * A notebook whose every part is one that the store can keep, and the jars that are left out because they are not; whether
 * what is in it could have happened is looked at later. Throws `import_no_notebook`, `import_newer`, `import_part`,
 * `import_too_many`, and `file_too_big` of a file that holds more than one jar.
 */
export function readNotebook(file: GivenFile): Notebook {
  const raw = readJson(file)
  const mark = markSchema.safeParse(raw)
  if (!mark.success) throw new ChatError('bad_value', 'import_no_notebook', { name: file.name, why: 'other' })
  const { version } = mark.data
  if (version > NOTEBOOK_VERSION) {
    throw new ChatError('bad_value', 'import_newer', { version, known: NOTEBOOK_VERSION })
  }
  const read = notebookSchema.safeParse(raw)
  if (!read.success) throw new ChatError('bad_value', 'import_part', { where: whereOf(read.error) ?? '?' })
  const { settings, shares, jars } = read.data
  if (jars.length > MOST_JARS) {
    throw new ChatError('limit', 'import_too_many', { jars: jars.length, most: MOST_JARS })
  }
  if (jars.length > 1 && file.bytes.length > MOST_SHARED_BYTES) {
    throw new ChatError('limit', 'file_too_big', { name: file.name, mostBytes: MOST_SHARED_BYTES })
  }
  const all = jars.map((jar, index) => {
    // Versions 3 to 5 only know more of what can happen to a jar.
    const isOld = version < 2
    return { number: index + 1, ...readJar(isOld ? fromVersion1(jar, settings.country) : jar, index + 1) }
  })
  return {
    settings,
    shares,
    jars: all.flatMap((each) => ('jar' in each ? [{ number: each.number, jar: each.jar }] : [])),
    left: all.flatMap((each) => ('left' in each ? [each.left] : [])),
  }
}
