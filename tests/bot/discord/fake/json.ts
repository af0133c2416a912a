export type Json = Readonly<Record<string, unknown>>

export const isRecord = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** A file that came with a request, under the number of its `files[n]`. */
export interface Upload {
  readonly index: string
  readonly name: string
  readonly mime: string
  readonly bytes: Uint8Array
}
