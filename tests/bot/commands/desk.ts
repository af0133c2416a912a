import type { Command } from '../../../bot/chat/command.ts'
import { execute } from '../../../bot/chat/execute.ts'
import { commands as listed } from '../../../bot/commands/index.ts'
import { answer, showText } from '../../../bot/console/answer.ts'
import { showJson } from '../../../bot/console/show-json.ts'
import { en } from '../../../bot/text/en/index.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'

export const speech = { words: wordsOf(en), commands: en.commands, console: en.console }
export const commands = listed as unknown as readonly Command[]

const logged: string[] = []
/** Faults of ours since the last call. */
export const faults = (): readonly string[] => logged.splice(0)

const dispatch = { commands, nowMs: 0, log: (text: string) => logged.push(text) }

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

export const textOf = (line: string): string =>
  answer(line, dispatch, speech, showText({ width: 100, colour: false })).text

export const jsonTextOf = (line: string): string => answer(line, dispatch, speech, showJson).text

/** The JSON of a line that may be refused. */
export const askAny = (line: string): Json => JSON.parse(jsonTextOf(line)) as Json

/** The JSON of a line that has to be answered. */
export const ask = (line: string): Json => {
  const json = askAny(line)
  if (json.error !== undefined) throw new Error(`${line} → ${json.error.code}: ${json.error.message}`)
  return json
}

/** What `execute` makes of a line, and nothing about how it is shown. */
export const run = (line: string) => execute(line, dispatch)

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
