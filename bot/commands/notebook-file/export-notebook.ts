import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { entriesOf, type Person } from '../../../store/person.ts'
import type { ExportFormat } from '../../calls/export-format.ts'
import type { Context } from '../../chat/command.ts'
import type { Reply, ReplyFile } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { planActions } from '../jar/known/plan-one.ts'
import { viewOf } from '../jar/known/view-of.ts'
import { kitchenOf } from '../options/input-units.ts'
import { note } from '../reply/outcome-reply.ts'
import { csvFiles } from './csv-file.ts'
import { jsonFiles } from './json-file.ts'

const noteOf = (format: ExportFormat, { length }: readonly ReplyFile[]): readonly Message<'notes'>[] => {
  if (format === 'csv') return [note('export_csv')]
  return length === 1
    ? [note('export_json')]
    : [{ group: 'notes', key: 'export_json_parts', values: { files: length } }]
}

const viewsOf = ({ jars }: Person, context: Context): readonly JarView[] =>
  jars.map((jar) => viewOf(jar, context)).filter((view) => view !== null)

/** Everything of a person's as files. */
export async function exportNotebook(format: ExportFormat, context: Context): Promise<Reply> {
  const person = await context.store.read(context.userId)
  const { jars } = person
  const entries = entriesOf(person)
  const files = format === 'csv' ? csvFiles(jars, viewsOf(person, context)) : jsonFiles(person, context.nowMs)
  const isEmpty = jars.length === 0
  return {
    headline: isEmpty
      ? { group: 'headlines', key: 'notebook_empty', values: undefined }
      : { group: 'headlines', key: 'exported', values: { jars: jars.length, entries, files: files.length } },
    table: [],
    sure: [],
    notes: isEmpty ? [] : noteOf(format, files),
    cautions: [],
    actions: isEmpty ? planActions : [],
    data: { format, jars: jars.length, entries },
    kitchen: kitchenOf({}),
    ...(!isEmpty && { files }),
    visibility: 'confidential',
  }
}
