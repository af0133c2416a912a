import { createInterface } from 'node:readline'
import { answer, showText } from './answer.ts'
import { complete } from './complete.ts'
import type { Desk } from './desk.ts'
import { firstExample } from './speech.ts'
import { wrap } from './wrap.ts'

const QUIT = /^\/?(quit|exit)$/i

/** The chat: greets, then answers line after line until /quit, Ctrl-D or the end of the input. */
export const chat = async (desk: Desk): Promise<void> => {
  const { commands, speech, screen, log, terminal } = desk
  const greeting = speech.console.greeting({ example: firstExample(speech) })
  desk.out(`${greeting.flatMap((line) => wrap(line, screen.width)).join('\n')}\n\n`)
  const lines = createInterface({
    input: desk.input,
    ...(terminal === null ? {} : { output: terminal, removeHistoryDuplicates: true }),
    terminal: terminal !== null,
    prompt: speech.console.prompt(),
    completer: (line: string) => complete(line, commands),
    crlfDelay: Number.POSITIVE_INFINITY,
  })
  const prompt = () => {
    if (terminal !== null) lines.prompt()
  }
  // Ctrl-C forgets a line begun; on an empty one it leaves.
  lines.on('SIGINT', () => {
    if (lines.line === '') return lines.close()
    lines.write(null, { ctrl: true, name: 'e' })
    lines.write(null, { ctrl: true, name: 'u' })
  })
  prompt()
  let isQuit = false
  for await (const line of lines) {
    isQuit = QUIT.test(line.trim())
    if (isQuit || !desk.isHeard()) break
    if (line.trim() !== '') {
      const dispatch = { commands, nowMs: desk.now(), log }
      desk.out(`${answer(line, dispatch, speech, showText(screen)).text}\n\n`)
    }
    prompt()
  }
  lines.close()
  if (terminal !== null) desk.out(`${isQuit ? '' : '\n'}${speech.console.goodbye()}\n`)
}
