import type { Reply } from '../../../bot/chat/reply.ts'
import { testDesk } from '../test-desk.ts'

export const { textOf: printed, toldOf: told, jsonOf: json, faults, run } = testDesk({ width: 80 })

export const reply = async (line: string): Promise<Reply> => {
  const outcome = await run(line)
  if (!outcome.ok) throw new Error(`${line}: ${outcome.error.problem}`)
  return outcome.reply
}

const keysOf = (messages: readonly { readonly key: string }[]): readonly string[] => messages.map(({ key }) => key)

export const noteKeys = async (line: string): Promise<readonly string[]> => keysOf((await reply(line)).notes)
export const cautionKeys = async (line: string): Promise<readonly string[]> => keysOf((await reply(line)).cautions)
