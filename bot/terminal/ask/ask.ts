import { createInterface } from 'node:readline'
import { ChatError } from '../../chat/chat-error.ts'
import { recipesTyped } from '../../chat/hear/recipe-typed.ts'
import { inOwnLanguage } from '../../chat/own-language.ts'
import type { Failure } from '../../chat/run/call-outcome.ts'
import { emergencyIn } from '../../chat/run/emergency.ts'
import { attempt } from '../../chat/run/execute.ts'
import { answer, showText } from '../chat/answer-line.ts'
import type { TerminalSession } from '../chat/terminal-session.ts'
import { typedTogether } from '../chat/typed-together.ts'
import { firstExample } from '../show/language-for-terminal.ts'
import { type AskOptions, readAskOptions } from './ask-options.ts'
import { showJson } from './show-json.ts'

export type ExitCode = 0 | 1 | 2

const exitCodeOf = (failure: Failure | null): ExitCode => {
  if (failure === null) return 0
  return failure.error.code === 'internal' ? 1 : 2
}

/** 1 before 2 before 0. */
const worse = (one: ExitCode, other: ExitCode): ExitCode => {
  if (one === 1 || other === 1) return 1
  return one === 2 ? one : other
}

const usage = ({ speech }: TerminalSession): string =>
  speech.console.usage({ example: firstExample(speech) }).join('\n')

/** Prints the answer to one line: the reply to the output, a problem to the errors, as JSON both to the output. */
const askLine = async (
  line: string,
  number: number | null,
  options: AskOptions,
  desk: TerminalSession,
): Promise<ExitCode> => {
  const asker = await inOwnLanguage(desk.asker)
  const dispatch = { ...asker, commands: desk.commands, nowMs: options.nowMs ?? desk.now(), log: desk.log }
  const speech = desk.speechIn(dispatch.language)
  const show = options.json ? showJson : showText(desk.screen, options.full ? 'whole' : 'first')
  const { text, failure } = await answer(line, dispatch, speech, show, desk.saveFile)
  if (failure === null || options.json) desk.out(`${text}\n`)
  else desk.err(`${number === null ? text : speech.console.atLine(number, text)}\n`)
  return exitCodeOf(failure)
}

const askEveryLine = async (options: AskOptions, desk: TerminalSession): Promise<ExitCode> => {
  let worst: ExitCode = 0
  let isFirst = true
  const lines = createInterface({ input: desk.input, crlfDelay: Number.POSITIVE_INFINITY })
  for await (const { text, line: number } of typedTogether(lines, recipesTyped)) {
    if (!desk.isHeard()) break
    const typed = text.trim()
    if (typed === '' || typed.startsWith('#')) continue
    if (!isFirst && !options.json) desk.out('\n')
    isFirst = false
    worst = worse(worst, await askLine(typed, number, options, desk))
  }
  return worst
}

/** `ask '/mix …'`, `ask -`, with --json, --full and --now: answers and ends. */
export const ask = async (argv: readonly string[], desk: TerminalSession): Promise<ExitCode> => {
  const read = await attempt(
    () => {
      const options = readAskOptions(argv)
      if (options.line === null && !options.help) throw new ChatError('missing_option', 'no_line', {})
      return options
    },
    () => null,
    desk.log,
  )
  if (!read.ok) {
    const isJson = argv.includes('--json')
    const typed = argv.filter((argument) => argument !== '--json').join(' ')
    if ((await emergencyIn(typed, desk.asker)) !== null) {
      return askLine(typed, null, { json: isJson, full: false, help: false, nowMs: null, line: typed }, desk)
    }
    const text = (isJson ? showJson : showText(desk.screen))({ outcome: read }, desk.speech, [])
    if (isJson) desk.out(`${text}\n`)
    else desk.err(argv.length === 0 ? `${text}\n\n${usage(desk)}\n` : `${text}\n`)
    return exitCodeOf(read)
  }
  if (read.result.help) {
    desk.out(`${usage(desk)}\n`)
    return 0
  }
  return read.result.line === '-'
    ? askEveryLine(read.result, desk)
    : askLine(read.result.line ?? '', null, read.result, desk)
}
