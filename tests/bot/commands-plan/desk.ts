import type { Command } from '../../../bot/chat/command.ts'
import { execute } from '../../../bot/chat/execute.ts'
import { planCommand } from '../../../bot/commands/plan.ts'
import { answer, showText } from '../../../bot/console/answer.ts'
import { showJson } from '../../../bot/console/show-json.ts'
import { en } from '../../../bot/text/en/index.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'

const speech = { words: wordsOf(en), commands: en.commands, console: en.console }

/** Faults of ours. */
export const logged: string[] = []

/** 10 June 2026, at noon. */
const nowMs = Date.UTC(2026, 5, 10, 12)

const dispatch = {
  commands: [planCommand as unknown as Command],
  nowMs,
  log: (text: string) => {
    logged.push(text)
  },
}

/** One line of `ask --json`. */
export interface PlanJson {
  readonly data: {
    readonly [name: string]: unknown
    readonly bottles: readonly { readonly count: number; readonly volumeMl: number }[]
    readonly botanicals: readonly {
      readonly id: string | null
      readonly massG: number
      readonly massGPlusMinus: number
      readonly count: number | null
    }[]
    readonly dates: Readonly<Record<'start' | 'tasteFrom' | 'strainFrom' | 'strainBy' | 'ready', string | null>>
  }
  readonly notes: readonly { readonly key: string; readonly text: string }[]
  readonly cautions: readonly { readonly key: string; readonly text: string }[]
  readonly error?: { readonly code: string; readonly message: string; readonly option?: string }
}

export const askAny = (line: string): PlanJson => JSON.parse(answer(line, dispatch, speech, showJson).text) as PlanJson

/** The JSON of a line that has to be answered. */
export const ask = (line: string): PlanJson => {
  const json = askAny(line)
  if (json.error !== undefined) throw new Error(`${line} → ${json.error.code}: ${json.error.message}`)
  return json
}

export const textOf = (line: string): string =>
  answer(line, dispatch, speech, showText({ width: 100, colour: false })).text.replaceAll('\u00a0', ' ')

/** What `execute` makes of a line. */
export const run = (line: string) => execute(line, dispatch)

export const number = ({ data }: PlanJson, name: string): number => {
  const value = data[name]
  if (typeof value !== 'number') throw new Error(`no number ${name}`)
  return value
}
