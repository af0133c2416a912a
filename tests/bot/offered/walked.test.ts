import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { linesIn } from './lines-in.ts'
import { copyOf, press, printed, type Talker, talkerAt, written } from './walk.ts'

const FOLDER = join(import.meta.dirname, 'walks')
const walks = readdirSync(FOLDER).filter((name) => name.endsWith('.txt'))

const MINUTE_MS = 60_000
const DAY_MS = 24 * 60 * MINUTE_MS
const START_MS = Date.parse('2026-09-05T10:00:00Z')

/** What only its maker knows is asked for. */
const ASKS: readonly (string | null)[] = [null, 'missing_option']

/** What makers write, in order: each with who it is that writes it, by then. */
async function* walkOf(name: string, kind: 'console' | 'private') {
  let talker = talkerAt(kind, START_MS)
  for (const line of readFileSync(join(FOLDER, name), 'utf8').split('\n')) {
    const days = /^later (\d+)d$/.exec(line)?.[1]
    talker = { ...talker, nowMs: talker.nowMs + (days === undefined ? MINUTE_MS : Number(days) * DAY_MS) }
    if (days === undefined && line !== '') yield { talker, line }
  }
}

/** Lines in a text that do not do what is said of them, each typed by a copy of whoever was told. */
async function faultsIn(text: string, talker: Talker): Promise<readonly string[]> {
  const faults: string[] = []
  for (const { text: line, ends } of linesIn(text.replace(/^read as .*/gm, ''))) {
    const tried = []
    for (const end of ends) {
      const typed = line.slice(0, end)
      const { code, text: answer } = await printed(await copyOf(talker), typed)
      tried.push(`${typed}: ${answer}`)
      if (ASKS.includes(code)) break
      if (end === ends.at(-1)) faults.push(tried[0]!)
    }
    if (ends.length === 0) faults.push(`no command: ${line}`)
  }
  return faults
}

describe('whatever is offered over a batch does what it says', () => {
  it.each(walks)('%s: every button, pressed', async (name) => {
    const faults: string[] = []
    let buttonsPressed = 0
    for await (const { talker, line } of walkOf(name, 'private')) {
      const { text, buttons } = await written(talker, line)
      for (const { label, customId } of buttons) {
        const pressed = await press(await copyOf(talker), customId)
        buttonsPressed += 1
        if (!ASKS.includes(pressed.code)) faults.push(`${line} [${label}]: ${pressed.code} ${pressed.text}`)
      }
      faults.push(...(await faultsIn(text, talker)).map((fault) => `${line} → ${fault}`))
      expect(talker.logged).toEqual([])
    }
    expect(faults).toEqual([])
    expect(buttonsPressed).toBeGreaterThan(20)
  })

  it.each(walks)('%s: every line, typed at the terminal', async (name) => {
    const faults: string[] = []
    for await (const { talker, line } of walkOf(name, 'console')) {
      const { text } = await printed(talker, line, 100_000)
      const more = await printed(await copyOf(talker), 'more', 100_000)
      for (const each of [text, more.text])
        faults.push(...(await faultsIn(each, talker)).map((fault) => `${line} → ${fault}`))
    }
    expect(faults).toEqual([])
  })
})
