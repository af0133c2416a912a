/** For a printer: black on white, in millimetres. */
export const DOTS_PER_INCH = 300
export const BLACK = '#000000'
export const WHITE = '#ffffff'

const MM_PER_INCH = 25.4

/** Pixels. */
export const mm = (length: number): number => Math.round((length * DOTS_PER_INCH) / MM_PER_INCH)
