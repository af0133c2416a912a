import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import type { Jar } from '../../../store/person.ts'
import type { ReplyFile } from '../../chat/reply.ts'
import { batchData } from '../jar/known/batch-data.ts'
import { entryCells } from './entry-cells.ts'
import type { Cell, Line } from './line.ts'

/**
 * What a spreadsheet may take for a formula, and a leading apostrophe, so that taking one away always gives what was there.
 * As OWASP advises against CSV injection (from memory); also the wide forms of the signs.
 */
const TAKEN_FOR_MORE = /^[=+\-@\t\r\n'＝＋－＠]/u

/** A text that no spreadsheet reckons with: behind an apostrophe where it would. */
const harmless = (text: string): string => (TAKEN_FOR_MORE.test(text) ? `'${text}` : text)

const cellOf = (value: unknown): Cell => {
  if (value === null || typeof value === 'number' || typeof value === 'string') return value
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : JSON.stringify(value)
}

/** A batch in one line, as `/notebook` gives it; what has parts of its own as JSON. */
const batchLine = (view: JarView): Line =>
  Object.fromEntries(Object.entries(batchData(view)).map(([name, value]) => [name, cellOf(value)]))

const guarded = (line: Line): Line =>
  Object.fromEntries(
    Object.entries(line).map(([name, cell]) => [name, typeof cell === 'string' ? harmless(cell) : cell]),
  )

/** RFC 4180, with the mark by which spreadsheets know UTF-8. */
export async function csvText(lines: readonly Line[]): Promise<string> {
  // Loaded here, so that no other command waits for it.
  const { stringify } = await import('csv-stringify/sync')
  return stringify(lines.map(guarded), { header: true, bom: true, record_delimiter: 'windows' })
}

const csvFile = (name: string, alt: ReplyFile['alt'], lines: readonly Line[]): ReplyFile => ({
  name,
  mime: 'text/csv',
  alt,
  draw: async () => new TextEncoder().encode(await csvText(lines)),
})

/** A line for each batch, to compare; and a line for each entry, which lacks nothing that was recorded. */
export const csvFiles = (jars: readonly Jar[], views: readonly JarView[]): readonly ReplyFile[] => {
  const batches = views.map(batchLine)
  const entries = jars.flatMap(entryCells)
  const altOf = (key: 'csv_batches' | 'csv_entries', { length }: readonly Line[]) =>
    ({ group: 'files', key, values: { count: length } }) as const
  return [
    csvFile('larderbell-batches.csv', altOf('csv_batches', batches), batches),
    csvFile('larderbell-entries.csv', altOf('csv_entries', entries), entries),
  ]
}
