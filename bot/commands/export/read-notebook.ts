import { z } from 'zod'
import { shown } from '../../../core/quantity/typed-text.ts'
import type { Jar } from '../../../store/person.ts'
import { entrySchema, jarSchema, settingsSchema, shareSchema } from '../../../store/schema/person-schema.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { GivenFile } from '../../chat/given-file.ts'
import { MOST_SHARES } from '../share/new-share.ts'
import { wrongEntry } from './import-error.ts'
import { MOST_IN_JAR, MOST_JARS } from './import-limits.ts'
import { NOTEBOOK_MARK, NOTEBOOK_VERSION, type Notebook } from './notebook-file.ts'
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
const looseJar = z.strictObject({ ...jarSchema.shape, entries: z.array(z.unknown()).min(1).max(MOST_IN_JAR) })

/** Which part is wrong, fit to be shown; null where it is the whole. */
const whereOf = ({ issues: [issue] }: z.ZodError): string | null => {
  if (issue === undefined) return null
  const keys = issue.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : []
  const where = shown([...issue.path, ...keys].join('.'))
  return where === '' ? null : where
}

const named = z.looseObject({ entries: z.array(z.unknown()) })
const startOf = z.looseObject({ name: z.string() })

/** What a jar seems to be called, for the sentence that says what is wrong with it. */
function nameOf(raw: unknown): string | null {
  const jar = named.safeParse(raw)
  const start = jar.success ? startOf.safeParse(jar.data.entries[0]) : null
  const name = start?.success ? shown(start.data.name) : ''
  return name === '' ? null : name
}

function readJar(raw: unknown, jar: number): Jar {
  const name = nameOf(raw)
  const outer = looseJar.safeParse(raw)
  if (!outer.success) throw wrongEntry({ jar, name, seq: null, why: 'part', where: whereOf(outer.error) })
  const entries = outer.data.entries.map((entry, index) => {
    const read = entrySchema.safeParse(entry)
    if (!read.success) throw wrongEntry({ jar, name, seq: index + 1, why: 'part', where: whereOf(read.error) })
    return read.data
  })
  return { ...outer.data, entries }
}

/**
 * A notebook whose every part is one that the store can keep; whether it could have happened is looked at later. Throws
 * `import_no_notebook`, `import_newer`, `import_part`, `import_too_many` and `import_jar`.
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
  return { settings, shares, jars: jars.map((jar, index) => readJar(jar, index + 1)) }
}
