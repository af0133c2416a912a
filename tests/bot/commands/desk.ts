import { testDesk } from '../test-desk.ts'

export { commands, speech } from '../test-desk.ts'

const { faults, jsonOf, jsonTextOf, run, textOf } = testDesk()

export { faults, jsonTextOf, run, textOf }

interface Sentence {
  readonly key: string
  readonly text: string
}

/** One line of `ask --json`. */
export interface Json {
  readonly command: string | null
  readonly data: Readonly<Record<string, number>> & {
    readonly styles?: readonly (Readonly<Record<string, number>> & { readonly key: string; readonly line: string })[]
  }
  readonly notes: readonly Sentence[]
  readonly cautions: readonly Sentence[]
  readonly error?: {
    readonly code: string
    readonly message: string
    readonly option?: string
    readonly nearest?: string
  }
}

/** The JSON of a line that may be refused. */
export const askAny = async (line: string): Promise<Json> => (await jsonOf(line)) as Json

/** The JSON of a line that has to be answered. */
export const ask = async (line: string): Promise<Json> => {
  const json = await askAny(line)
  if (json.error !== undefined) throw new Error(`${line} → ${json.error.code}: ${json.error.message}`)
  return json
}

export const number = (json: Json, name: string): number => {
  const value = json.data[name]
  if (typeof value !== 'number') throw new Error(`${json.command}: no number ${name}`)
  return value
}

export const keysOf = (sentences: readonly Sentence[]): readonly string[] => sentences.map(({ key }) => key)

/**
 * A double as a maker would have to type it to give it back whole: digits only, no exponent, and not exactly three
 * decimals, which could be a thousands sign.
 */
export const typed = (value: number): string => {
  const text = /e/.test(String(value)) ? value.toFixed(20) : String(value)
  return /\.\d{3}$/.test(text) ? `${text}0` : text
}

/** What must never be seen by anybody. */
export const UNSEEMLY = /undefined|NaN|Infinity|∞|\[object|null|[-−]\d+(\.\d+)? ?(g|kg|ml|l|cups?|oz|lb)\b/
