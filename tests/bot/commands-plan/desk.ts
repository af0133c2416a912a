import type { Command } from '../../../bot/chat/command.ts'
import { planCommand } from '../../../bot/commands/plan/plan.ts'
import { testDesk } from '../test-desk.ts'

/** 10 June 2026, at noon. */
const nowMs = Date.UTC(2026, 5, 10, 12)

const { jsonOf, textOf, run, faults } = testDesk({ nowMs, commands: [planCommand as unknown as Command] })

export { faults, run, textOf }

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
  readonly cautions: readonly { readonly key: string; readonly text: string; readonly depth?: string }[]
  readonly error?: { readonly code: string; readonly message: string; readonly option?: string }
}

export const askAny = async (line: string): Promise<PlanJson> => (await jsonOf(line)) as PlanJson

/** The JSON of a line that has to be answered. */
export const ask = async (line: string): Promise<PlanJson> => {
  const json = await askAny(line)
  if (json.error !== undefined) throw new Error(`${line} → ${json.error.code}: ${json.error.message}`)
  return json
}

export const number = ({ data }: PlanJson, name: string): number => {
  const value = data[name]
  if (typeof value !== 'number') throw new Error(`no number ${name}`)
  return value
}
