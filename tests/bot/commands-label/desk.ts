import { execute } from '../../../bot/chat/execute.ts'
import type { Reply } from '../../../bot/chat/reply.ts'
import { commands } from '../../../bot/commands/index.ts'
import { answer, showText } from '../../../bot/console/answer.ts'
import { showJson } from '../../../bot/console/show-json.ts'
import { en } from '../../../bot/text/en/index.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'

const logged: string[] = []
export const dispatch = { commands, nowMs: 0, log: (text: string) => logged.push(text) }
const speech = { words: wordsOf(en), commands: en.commands, console: en.console }

/** What went wrong on our side so far. */
export const faults = (): readonly string[] => logged

export const printed = (line: string): string =>
  answer(line, dispatch, speech, showText({ width: 80, colour: false })).text.replaceAll('\u00a0', ' ')

export const json = (line: string) => JSON.parse(answer(line, dispatch, speech, showJson).text)

export const reply = (line: string): Reply => {
  const outcome = execute(line, dispatch)
  if (!outcome.ok) throw new Error(`${line}: ${outcome.error.problem}`)
  return outcome.reply
}

export const noteKeys = (line: string): readonly string[] => reply(line).notes.map(({ key }) => key)
export const cautionKeys = (line: string): readonly string[] => reply(line).cautions.map(({ key }) => key)
