/** Where text appears. */
export interface Screen {
  readonly width: number
  readonly colour: boolean
}
