import { clearScreenDown, createInterface, cursorTo, type Interface, moveCursor } from 'node:readline'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { NOBODY } from '../../../store/person.ts'
import { recipesTyped } from '../../chat/hear/recipe-typed.ts'
import { inOwnLanguage } from '../../chat/own-language.ts'
import { wrap } from '../show/wrap.ts'
import { answer, showText } from './answer-line.ts'
import { complete } from './complete.ts'
import type { TerminalSession } from './terminal-session.ts'
import { typedTogether } from './typed-together.ts'

/** Prints above the prompt and puts the prompt, what was typed and the cursor back as they were. */
function sayAbove(lines: Interface, terminal: NodeJS.WritableStream, print: () => void): void {
  moveCursor(terminal, 0, -lines.getCursorPos().rows)
  cursorTo(terminal, 0)
  clearScreenDown(terminal)
  print()
  // Drawing the prompt anew goes up by these rows first; it begins in an empty one.
  Object.assign(lines, { prevRows: 0 })
  lines.prompt(true)
}

const QUIT = /^\/?(quit|exit)$/i

/** Names of jars, for Tab; none where the store cannot be read, which a command will say. */
async function jarNames({ store, userId }: TerminalSession['asker']): Promise<readonly string[]> {
  const { jars } = await store.read(userId).catch(() => NOBODY)
  return jars.flatMap(({ entries }) => jarStateOf(entries)?.name ?? [])
}

/** The chat: greets, then answers line after line until /quit, Ctrl-D or the end of the input. */
export const chat = async (desk: TerminalSession): Promise<void> => {
  const { commands, speech, screen, log, terminal } = desk
  const greeting = speech.console.greeting({ example: speech.help.first()[0]?.line ?? '/help' })
  desk.out(`${greeting.flatMap((line) => wrap(line, screen.width)).join('\n')}\n\n`)
  let names: readonly string[] = []
  const lines = createInterface({
    input: desk.input,
    ...(terminal === null ? {} : { output: terminal, removeHistoryDuplicates: true }),
    terminal: terminal !== null,
    prompt: speech.console.prompt(),
    completer: (line: string) => complete(line, commands, { jars: names }),
    crlfDelay: Number.POSITIVE_INFINITY,
  })
  let isPrompting = false
  const prompt = () => {
    if (terminal === null) return
    isPrompting = true
    lines.prompt()
  }
  const say = (text: string) => {
    const print = () => desk.out(`${text}\n\n`)
    if (terminal !== null && isPrompting) sayAbove(lines, terminal, print)
    else print()
  }
  // Ctrl-C forgets a line begun; on an empty one it leaves.
  lines.on('SIGINT', () => {
    if (lines.line === '') return lines.close()
    lines.write(null, { ctrl: true, name: 'e' })
    lines.write(null, { ctrl: true, name: 'u' })
  })
  // From here on no line is lost, however long it takes until the first is asked for.
  const typed = typedTogether(lines, recipesTyped)
  desk.ended.addEventListener('abort', () => lines.close(), { once: true })
  const stopReminding = await desk.remind(say)
  names = await jarNames(desk.asker)
  prompt()
  let isQuit = false
  for await (const { text: line } of typed) {
    isPrompting = false
    isQuit = QUIT.test(line.trim())
    if (isQuit || !desk.isHeard()) break
    if (line.trim() !== '') {
      const dispatch = { ...(await inOwnLanguage(desk.asker)), commands, nowMs: desk.now(), log }
      const { text } = await answer(line, dispatch, desk.speechIn(dispatch.language), showText(screen), desk.saveFile)
      desk.out(`${text}\n\n`)
    }
    names = await jarNames(desk.asker)
    prompt()
  }
  isPrompting = false
  lines.close()
  await stopReminding()
  if (terminal !== null) desk.out(`${isQuit ? '' : '\n'}${speech.console.goodbye()}\n`)
}
