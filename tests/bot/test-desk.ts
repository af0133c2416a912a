import type { Invocation } from '../../bot/calls/invocation.ts'
import type { Command } from '../../bot/chat/command.ts'
import type { DepthShown } from '../../bot/chat/depth.ts'
import { execute } from '../../bot/chat/run/execute.ts'
import { commands as listed } from '../../bot/commands/index.ts'
import { showJson } from '../../bot/terminal/ask/show-json.ts'
import { answer, type Show, showText } from '../../bot/terminal/chat/answer-line.ts'
import type { SaveFile } from '../../bot/terminal/files/save-file.ts'
import { terminalLanguage } from '../../bot/terminal/show/language-for-terminal.ts'
import { en } from '../../bot/text/en/index.ts'
import { newAsker, type TestAsker } from './asker.ts'

export const speech = terminalLanguage(en)
export const commands = listed as unknown as readonly Command[]

interface Setting {
  readonly nowMs?: number
  /** Columns of the terminal. */
  readonly width?: number
  readonly commands?: readonly Command[]
  readonly asker?: TestAsker
}

/** Where no reply has a file. */
export const noFiles: SaveFile = async (name) => {
  throw new Error(`nobody expects ${name}`)
}

/** All of the bot but its process: what a line prints, its JSON and what `execute` makes of it. */
export const testDesk = ({
  nowMs = 0,
  width = 100,
  commands: known = commands,
  asker: given = newAsker(),
}: Setting = {}) => {
  const asker = { language: en, ...given }
  const logged: string[] = []
  const saved: { readonly name: string; readonly bytes: Uint8Array }[] = []
  const saveFile: SaveFile = async (name, bytes) => {
    saved.push({ name, bytes })
    return `files/${name}`
  }
  const dispatch = { ...asker, commands: known, nowMs, log: (text: string) => logged.push(text) }
  const shownBy = async (line: string, show: Show): Promise<string> =>
    (await answer(line, dispatch, speech, show, saveFile)).text
  const screen = (shown: DepthShown, columns = width): Show => {
    const show = showText({ width: columns, colour: false }, shown)
    return (...said) => show(...said).replaceAll('\u00a0', ' ')
  }
  const firstAt = async <Width extends number>(line: string, widths: readonly Width[]) => {
    let screens: { readonly width: Width; readonly text: string }[] = []
    await shownBy(line, (...said) => {
      screens = widths.map((each) => ({ width: each, text: screen('first', each)(...said) }))
      return ''
    })
    return screens
  }
  const toldOf = async (line: string, shown: DepthShown = 'whole') => {
    const outcomes: Parameters<Show>[0]['outcome'][] = []
    const text = await shownBy(line, (answering, ...more) => {
      outcomes.push(answering.outcome)
      return screen(shown)(answering, ...more)
    })
    return { outcome: outcomes.at(-1)!, text }
  }
  const jsonTextOf = (line: string): Promise<string> => shownBy(line, showJson)
  return {
    asker,
    /** Faults of ours since the last call. */
    faults: (): readonly string[] => logged.splice(0),
    /** What was written since the last call. */
    files: () => saved.splice(0),
    run: (line: string | Invocation) => execute(line, dispatch),
    /** Both depths of a reply. */
    textOf: (line: string): Promise<string> => shownBy(line, screen('whole')),
    /** Both depths, or the first alone, and the outcome that they show. */
    toldOf,
    /** The first screen alone. */
    firstOf: (line: string): Promise<string> => shownBy(line, screen('first')),
    /** The same on screens of several widths, the line being run once. */
    firstAt,
    jsonTextOf,
    jsonOf: async (line: string) => JSON.parse(await jsonTextOf(line)),
  }
}
