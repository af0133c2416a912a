import type { Invocation } from './invocation.ts'
import { type Given, givenFor } from './option.ts'
import { type InputOf, type Path, signatures } from './signatures.ts'

type ValueOf<Input> = Input extends Given<infer Value> ? Value : never

/** Values by the names of a command's options; one that was read before keeps its text. */
export type CallValues<Called extends Path> = {
  readonly [Name in keyof InputOf<Called>]?:
    | ValueOf<InputOf<Called>[Name]>
    | Given<ValueOf<InputOf<Called>[Name]>>
    | undefined
}

/** A command with what it is given: what a reply offers, and what is run without being read again. */
export interface Call {
  readonly command: Path
  /** In the order in which they are written. */
  readonly values: Readonly<Record<string, Given<unknown>>>
}

const isGiven = (value: unknown): value is Given<unknown> =>
  typeof value === 'object' && value !== null && 'typed' in value && 'is' in value

const optionsOf = (command: Path): Readonly<Record<string, unknown>> => signatures[command].shape

/** A call of a command. An option may be left out also where the command asks for it: then it asks. */
export function call<Called extends Path>(command: Called, values: CallValues<Called> = {}): Call {
  const options = optionsOf(command)
  const given = Object.entries(values).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, isGiven(value) ? value : givenFor(options[name], value)] as const],
  )
  return { command, values: Object.fromEntries(given) }
}

/** A call from texts that were typed once; null where one of them cannot be read any more. */
export function callOfTexts(command: Path, texts: readonly (readonly [option: string, text: string])[]): Call | null {
  const values: Record<string, Given<unknown>> = {}
  for (const [name, text] of texts) {
    const read = (optionsOf(command) as Readonly<Record<string, { safeParse(text: string): { data?: unknown } }>>)[name]
    const given = read?.safeParse(text).data
    if (given === undefined) return null
    values[name] = given as Given<unknown>
  }
  return { command, values }
}

/** A call as it is typed. */
export const invocationOf = ({ command, values }: Call): Invocation => ({
  path: command,
  options: Object.fromEntries(Object.entries(values).map(([name, { typed }]) => [name, typed])),
})

/** Texts by the names of a command's options. */
export type TextsOf<Called extends Path> = { readonly [Name in keyof InputOf<Called>]?: string }

/** A call as somebody might type it: an example. Only the names of options are checked. */
export const typedCall = <Called extends Path>(path: Called, options: TextsOf<Called> = {}): Invocation => ({
  path,
  options: options as Invocation['options'],
})
