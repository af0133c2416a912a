/** `no_font`: a font file is missing or damaged. `no_renderer`: it cannot be loaded here. `not_drawn`: it failed. */
export type PictureFault = 'no_font' | 'no_renderer' | 'not_drawn'

/** No picture came of it: whoever asked says it in text instead. */
export class PictureError extends Error {
  override readonly name = 'PictureError'
  readonly fault: PictureFault

  constructor(fault: PictureFault, cause: unknown) {
    super(fault, { cause })
    this.fault = fault
  }
}
