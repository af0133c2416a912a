/** Where text appears. */
export interface Screen {
  readonly width: number
  readonly colour: boolean
}

const USUAL_WIDTH = 80

/** Columns of an output: those that were set, else its own, else as many as a terminal usually has. */
export const widthOf = (set: number | null, out: { readonly columns?: number }): number =>
  set ?? (out.columns || USUAL_WIDTH)
