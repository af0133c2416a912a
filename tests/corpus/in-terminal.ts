import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Clock, RunningBot, StartBot } from './bot-loaded.ts'
import type { Session } from './sessions.ts'

/** Relative to the folder of the process, so that no path in an answer is another one in another place. */
export const DATA = 'data'

export const ZONE = 'Europe/London'

export const START_MS = Date.UTC(2026, 10, 25, 9)

/** Between two lines, so that nobody types too many a minute. */
export const STEP_MS = 3000

/** What one surface said to each step of a session, by the number of its line. */
export type Said = Readonly<Record<number, unknown>>

const calm = (): Promise<void> => new Promise((resolve) => setImmediate(() => setImmediate(resolve)))

const MOST_ANSWERING_MS = 60_000

const inTime = async (printed: Promise<void>, line: string): Promise<void> => {
  let late: NodeJS.Timeout | undefined
  const isLate = new Promise<never>((_, reject) => {
    late = setTimeout(() => reject(new Error(`no answer to ${line}`)), MOST_ANSWERING_MS)
  })
  await Promise.race([printed, isLate]).finally(() => clearTimeout(late))
}

/** JSON, or the text where it is none. */
const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}

/** The person as kept, and what else is in the folder. */
export const keptIn = (data: string): unknown => {
  const users = join(data, 'users')
  const people = existsSync(users) ? readdirSync(users).filter((name) => name.endsWith('.json')) : []
  const files = existsSync(join(data, 'files')) ? readdirSync(join(data, 'files')) : []
  return {
    people: Object.fromEntries(people.map((name) => [name, JSON.parse(readFileSync(join(users, name), 'utf8'))])),
    files: Object.fromEntries(
      files.toSorted().map((name) => [
        name,
        createHash('sha256')
          .update(readFileSync(join(data, 'files', name)))
          .digest('hex'),
      ]),
    ),
  }
}

/** Answered at the end of what the chat says when it starts. */
const FIRST_LINE = '/help forget'
const FIRST_ANSWER = /\/forget:[\s\S]*\n\n$/

type Mode = 'chat' | 'ask' | 'json'

const ARGV: Readonly<Record<Mode, readonly string[]>> = { chat: [], ask: ['ask', '-'], json: ['ask', '--json', '-'] }

/** Plays a session through the chat, which says what is due when it starts, or through `ask -`. */
export const playInTerminal = async (
  { steps }: Session,
  startBot: StartBot,
  { width, mode }: { readonly width: number; readonly mode: Mode },
): Promise<Said> => {
  rmSync(DATA, { recursive: true, force: true })
  const clock: Clock = { nowMs: START_MS, ids: 0 }
  const env = { LARDERBELL_DATA: DATA, LARDERBELL_ZONE: ZONE, LARDERBELL_WIDTH: String(width) }
  const said: Record<number, unknown> = {}
  const answerTo = async (bot: RunningBot, line: string, isWhole: (text: string) => boolean): Promise<string> => {
    let text = ''
    let printed = bot.prints()
    bot.type(line)
    while (!isWhole(text)) {
      await inTime(printed, line)
      printed = bot.prints()
      await calm()
      text += bot.printed()
    }
    return text
  }
  const start = async (): Promise<{ readonly bot: RunningBot; readonly text: string }> => {
    const bot = startBot({ clock, argv: ARGV[mode], env })
    const text = mode === 'chat' ? await answerTo(bot, FIRST_LINE, (all) => FIRST_ANSWER.test(all)) : ''
    return { bot, text }
  }
  const stop = async (bot: RunningBot): Promise<void> => {
    bot.endInput()
    await bot.ended
    await calm()
  }
  let { bot } = await start()
  for (const { step, lineNumber } of steps) {
    if (step.kind === 'clock') clock.nowMs = step.nowMs
    else if (step.kind === 'remind' && mode === 'chat') {
      await stop(bot)
      const started = await start()
      bot = started.bot
      said[lineNumber] = started.text
    } else if (step.kind === 'line') {
      clock.nowMs += STEP_MS
      const text = await answerTo(bot, step.line, (all) => all.trim() !== '')
      said[lineNumber] = mode === 'json' ? parsed(text) : text.replace(/^\n/, '').replace(/^Line \d+: /, '')
    }
  }
  await stop(bot)
  return said
}
