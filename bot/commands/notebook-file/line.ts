/** One value of a table; null is an empty cell. */
export type Cell = string | number | null

/** Cells by the name of their column. */
export type Line = Readonly<Record<string, Cell>>
