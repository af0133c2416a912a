import { readFileSync } from 'node:fs'

type Row = readonly (number | null)[]

/** A printed table: where it stands, how far each column can be trusted, and cells known to be misprinted. */
export interface Table {
  readonly source: string
  readonly locator: string
  readonly columns: readonly string[]
  /** Half interval by column, null for the columns that a row is looked up by. */
  readonly tolerance: readonly (number | null)[]
  readonly reason: string
  /** How many rows were copied, so that a lost one is noticed. */
  readonly count: number
  readonly misprints?: readonly { readonly row: number; readonly column: number; readonly reason: string }[]
  readonly rows: readonly Row[]
}

export const readTable = (name: string): Table => {
  const table = JSON.parse(readFileSync(new URL(`./${name}.json`, import.meta.url), 'utf8')) as Table
  if (table.rows.length !== table.count) throw new Error(`${name}: ${table.rows.length} rows of ${table.count}`)
  return table
}

interface Comparison {
  /** Cells beyond their tolerance, as text; only the misprints should be here. */
  readonly off: readonly string[]
  readonly rms: number
  readonly max: number
  readonly compared: number
}

interface Options {
  readonly relative?: boolean
  /** Instead of the table's own half interval, where it changes along the table. */
  readonly tolerance?: (row: readonly number[]) => number
}

/** Compares every printed cell of a column with what `compute` makes of its row; empty cells were never printed. */
export const compare = (
  table: Table,
  column: number,
  compute: (row: readonly number[]) => number,
  { relative = false, tolerance = () => table.tolerance[column]! }: Options = {},
): Comparison => {
  const off: string[] = []
  const deviations: number[] = []
  table.rows.forEach((row, index) => {
    const printed = row[column]
    if (printed === null || printed === undefined) return
    const numbers = row as readonly number[]
    const computed = compute(numbers)
    const deviation = Math.abs(computed - printed) / (relative ? Math.abs(printed) : 1)
    const misprinted = table.misprints?.some((cell) => cell.row === index && cell.column === column) ?? false
    if (!misprinted) deviations.push(deviation)
    if (!(deviation <= tolerance(numbers) + 1e-12)) off.push(`row ${index}, column ${column}`)
  })
  const squares = deviations.reduce((sum, deviation) => sum + deviation * deviation, 0)
  const result = {
    off,
    rms: Math.sqrt(squares / deviations.length),
    max: Math.max(...deviations),
    compared: deviations.length,
  }
  if (process.env.LARDERBELL_DEVIATIONS) {
    console.log(
      `${table.source} | ${table.columns[column]} | n ${result.compared} | max ${result.max} | rms ${result.rms}`,
    )
  }
  return result
}

/** What `compare` must find off: every misprint of the column, so that their list cannot rot, and nothing else. */
export const misprintsOf = (table: Table, column: number): readonly string[] =>
  (table.misprints ?? []).filter((cell) => cell.column === column).map((cell) => `row ${cell.row}, column ${column}`)
